// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
import tipwright.time.Cycle;

/** Tries listed actuators in a design whose pins stay where they are. */
public final class PartsBox {
    private PartsBox() {}

    /**
     * What came of one actuator.
     *
     * @param result with it in each place; null when it cannot be computed
     */
    public record Tried(ListedActuator actuator, @Nullable Result result) {
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

    /** Whether a part can take the place of the drawn one: it runs off the same sort of supply, at the same voltage. */
    public static boolean suits(Design design, Actuator part) {
        for (PlacedActuator placed : design.drive().actuators()) {
            boolean electric = placed.actuator() instanceof ElectricActuator;
            if (electric != (part instanceof ElectricActuator)) {
                return false;
            }
            if (placed.actuator() instanceof ElectricActuator drawn
                    && part instanceof ElectricActuator other
                    && design.supply() != null
                    && drawn.voltage() != null
                    && other.voltage() != null
                    && !drawn.voltage().equals(other.voltage())) {
                return false;
            }
        }
        return true;
    }

    /** Tries all: those that pass first, cheapest or else least used first; then those that fail the fewest checks. */
    public static List<Tried> tried(Design design, List<ListedActuator> parts) {
        List<Tried> all = new ArrayList<>();
        for (ListedActuator part : parts) {
            all.add(tried(design, part));
        }
        all.sort(Comparator.comparing((Tried t) -> t.verdict() == Verdict.FAIL)
                .thenComparing(t -> t.result() == null)
                .thenComparing(t -> t.failing().size())
                .thenComparing(t -> t.verdict() == Verdict.CLOSE)
                .thenComparingDouble(Tried::price)
                .thenComparingDouble(Tried::most));
        return all;
    }

    private static Tried tried(Design design, ListedActuator part) {
        try {
            return new Tried(
                    part, Checker.asFilled(design.withDrive(design.drive().with(part.actuator()))));
        } catch (CannotComputeException e) {
            return new Tried(part, null);
        }
    }
}
