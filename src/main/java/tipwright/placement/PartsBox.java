// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rope;
import tipwright.design.around.Mounts;
import tipwright.design.supply.Battery;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.time.Cycle;

/** Tries listed actuators in a design whose pins stay where they are. */
public final class PartsBox {
    /** As {@link tipwright.design.around.Wants} has it where nothing is wanted, m. */
    private static final double USUAL_WELD = 0.005;

    private PartsBox() {}

    /**
     * What came of one actuator.
     *
     * @param result with it in each place; null when it cannot be computed
     * @param own whether it is the one that the design has
     * @param weldsOff largest utilisation of what depends on the mounts with every place off by the weld tolerance, the worst way;
     *     not a number where it fails anyway
     */
    public record Tried(ListedActuator actuator, @Nullable Result result, boolean own, double weldsOff) {
        public Verdict verdict() {
            return result == null ? Verdict.FAIL : result.verdict();
        }

        /** The checks that fail, those that are passed furthest first. */
        public List<Finding> failing() {
            return made().filter(f -> f.verdict() == Verdict.FAIL)
                    .sorted(Comparator.comparingDouble(f -> -used(f)))
                    .toList();
        }

        /** The check that is used most; null when none was made. */
        public @Nullable Finding governing() {
            return made().max(Comparator.comparingDouble(Tried::used)).orElse(null);
        }

        /** Time of a whole dump, s; not a number when it is not known or it does not get up and back. */
        public double dump() {
            if (result == null) {
                return Double.NaN;
            }
            Cycle dump = result.timing().dump();
            double to = result.analysis().design().tilt().to();
            return dump == null || !dump.complete() || dump.shortOf(to) ? Double.NaN : dump.total();
        }

        private Stream<Finding> made() {
            return result == null
                    ? Stream.of()
                    : result.findings().stream()
                            .filter(f -> f.verdict() != Verdict.NOT_CHECKED && !Double.isNaN(f.utilisation()));
        }

        private static double used(Finding f) {
            return Math.min(f.utilisation(), 1e9);
        }

        private double most() {
            Finding most = governing();
            return most == null ? 0 : used(most);
        }

        private double price() {
            Double price = actuator.actuator().price();
            return price == null ? Double.POSITIVE_INFINITY : price;
        }
    }

    /**
     * A box of parts gone through.
     *
     * @param suiting what may take the place of the drawn one
     * @param leftOut the others by name, and why not
     */
    public record Sorted(List<ListedActuator> suiting, Map<String, String> leftOut) {}

    /** Goes through a box of parts, in its order. */
    public static Sorted sorted(Design design, Map<String, Actuator> box) {
        Sorted sorted = new Sorted(new ArrayList<>(), new LinkedHashMap<>());
        box.forEach((name, part) -> {
            String why = misfit(design, part);
            if (why.isEmpty()) {
                sorted.suiting.add(new ListedActuator(name, part));
            } else {
                sorted.leftOut.put(name, why);
            }
        });
        return sorted;
    }

    /** Whether a part can take the place of the drawn one: it runs off the same sort of supply, at the same voltage. */
    public static boolean suits(Design design, Actuator part) {
        return misfit(design, part).isEmpty();
    }

    /** Why a part cannot take the place of the drawn one, in few words; empty when it can. */
    public static String misfit(Design design, Actuator part) {
        Double machine = design.supply() instanceof Battery battery ? Double.valueOf(battery.voltage()) : null;
        for (PlacedActuator placed : design.drive().actuators()) {
            if (placed.actuator() instanceof Rope || part instanceof Rope) {
                return "a rope and a rod do not take each other's place";
            }
            boolean electric = placed.actuator() instanceof ElectricActuator;
            if (electric != (part instanceof ElectricActuator)) {
                return electric ? "hydraulic, and this machine is electric" : "electric, and this machine is hydraulic";
            }
            if (placed.actuator() instanceof ElectricActuator drawn && part instanceof ElectricActuator other) {
                Double volt = machine == null ? drawn.voltage() : machine;
                Double needs = other.voltage();
                if (volt != null && needs != null && !volt.equals(needs)) {
                    return "for " + Quantities.show(needs, Kind.VOLTAGE, UnitSystem.METRIC) + ", and this machine has "
                            + Quantities.show(volt, Kind.VOLTAGE, UnitSystem.METRIC);
                }
            }
        }
        return "";
    }

    /**
     * Tries all, and the design's own: those that pass first, those with the most margin after the weld tolerance before others; then
     * those that fail the fewest checks.
     */
    public static List<Tried> tried(Design design, List<ListedActuator> parts) {
        List<Tried> all = new ArrayList<>();
        List<PlacedActuator> placed = design.drive().actuators();
        Actuator drawn = placed.get(0).actuator();
        boolean alike = placed.stream().allMatch(p -> p.actuator().equals(drawn));
        if (alike && parts.stream().noneMatch(p -> p.actuator().equals(drawn))) {
            all.add(tried(design, new ListedActuator("as drawn", drawn), true));
        }
        boolean found = false;
        for (ListedActuator part : parts) {
            boolean own = alike && !found && part.actuator().equals(drawn);
            found |= own;
            all.add(tried(design, part, own));
        }
        all.sort(Comparator.comparing((Tried t) -> t.verdict() == Verdict.FAIL)
                .thenComparing(t -> t.result() == null)
                .thenComparing(t -> t.failing().size())
                .thenComparing(t -> t.weldsOff() > 1)
                .thenComparing(t -> t.verdict() == Verdict.CLOSE)
                .thenComparingDouble(t -> Double.isNaN(t.weldsOff()) ? Double.POSITIVE_INFINITY : t.weldsOff())
                .thenComparingDouble(Tried::price)
                .thenComparingDouble(Tried::most));
        return all;
    }

    private static Tried tried(Design design, ListedActuator part, boolean own) {
        Design with = design.withDrive(design.drive().with(part.actuator()));
        try {
            Result result = Checker.asFilled(with);
            double off = result.verdict() == Verdict.FAIL ? Double.NaN : new Welder(with).worstCorner(weld(design));
            return new Tried(part, result, own, off);
        } catch (CannotComputeException e) {
            return new Tried(part, null, own, Double.NaN);
        }
    }

    /** The weld tolerance that is asked about, m. */
    public static double weld(Design design) {
        Mounts mounts = design.mounts();
        return mounts == null ? USUAL_WELD : mounts.wants().weld();
    }
}
