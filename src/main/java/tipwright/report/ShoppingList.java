// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.HydraulicActuator;
import tipwright.design.joint.Bearing;
import tipwright.design.joint.PlainBush;
import tipwright.design.joint.Shaft;
import tipwright.design.supply.Battery;
import tipwright.design.supply.Cable;
import tipwright.geometry.Range;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.remedy.SizeAnswer;

/** What to buy where a file asks with '?', each with the figures that the seller must state. */
final class ShoppingList {
    private static final double NOTHING = 1e-9;

    /** Share by which the loads of the two bearings differ before one of them is named. */
    private static final double UNLIKE = 0.005;

    private final Result result;
    private final Design design;

    ShoppingList(Result result) {
        this.result = result;
        this.design = result.analysis().design();
    }

    /** Which side of a figure is good. */
    enum Bound {
        LEAST("at least "),
        MOST("at most "),
        EXACT("");

        private final String word;

        Bound(String word) {
            this.word = word;
        }

        /** 'at least', 'at most' or 'exactly'. */
        String word() {
            return word.isEmpty() ? "exactly" : word.strip();
        }
    }

    /**
     * A figure that the seller must state.
     *
     * @param name as in a seller's list
     * @param si SI
     * @param kind what it measures
     * @param bound which side is good
     * @param side of the bearing that asks for it, where the two ask for unlike figures; else empty
     */
    record Figure(String name, double si, Kind kind, Bound bound, String side) {
        Figure(String name, double si, Kind kind, Bound bound) {
            this(name, si, kind, bound, "");
        }

        Text text() {
            return side.isEmpty() ? plain() : plain().plus(" for the " + side + " one");
        }

        private Text plain() {
            Text value = kind == Kind.LENGTH
                    ? Text.mark(si)
                    : kind == Kind.AREA ? Text.amount(si, kind, "mm2", 1) : Text.amount(si, kind);
            return Text.words(name + " " + bound.word).plus(value);
        }
    }

    /** How many are bought, and what: '2 pivot bearings'. */
    String what(SizeAnswer a) {
        int actuators = design.drive().actuators().size();
        return switch (a.series()) {
            case "actuators" -> actuators == 1 ? "actuator" : actuators + " actuators";
            case "cylinder" -> (actuators == 1 ? "cylinder" : actuators + " cylinders") + ", bore";
            case "bearings" -> "2 pivot bearings";
            case "bore" -> a.written().size() > 1 ? "bushes and pivot shaft" : "pivot shaft";
            case "pin" -> a.part().isEmpty() ? "pin" : "pin at the " + a.part();
            case "leg" -> a.part().isEmpty() ? "weld, leg" : "weld at the " + a.part() + ", leg";
            case "cable", "gauge" -> "cable";
            default -> "fuse";
        };
    }

    /** The figures that the seller must state; rounded to the safe side by no one: they are what the checks ask for. */
    List<Figure> figures(SizeAnswer a) {
        return switch (a.series()) {
            case "actuators", "cylinder" -> actuator();
            case "bearings", "bore" -> pivot(a);
            case "pin" -> List.of();
            case "leg" -> List.of();
            case "cable", "gauge" -> cable();
            default -> fuse();
        };
    }

    /** Each of them, since they share alike: what the checks ask for of the ratings that it has. */
    private List<Figure> actuator() {
        Actuator own = design.drive().actuators().get(0).actuator();
        int n = design.drive().actuators().size();
        List<Figure> all = new ArrayList<>();
        force(all, "push", "push", n);
        force(all, "pull", "pull", n);
        force(all, "hold", "holding load", n);
        double margin = design.limits().strokeMargin();
        Range lengths = result.analysis().lengths();
        all.add(new Figure("stroke", lengths.span() + 2 * margin, Kind.LENGTH, Bound.LEAST));
        all.add(new Figure("closed, pin to pin", lengths.low() - margin, Kind.LENGTH, Bound.MOST));
        all.add(new Figure("fully out, pin to pin", lengths.high() + margin, Kind.LENGTH, Bound.LEAST));
        if (own instanceof HydraulicActuator h) {
            all.add(new Figure("working pressure", h.reliefPressure(), Kind.PRESSURE, Bound.LEAST));
        }
        return all;
    }

    private void force(List<Figure> all, String id, String name, int n) {
        double most = 0;
        for (Finding f : result.findings()) {
            if (f.id().equals(id) && f.verdict() != Verdict.NOT_CHECKED) {
                most = Math.max(most, f.demand() * f.factor() / n);
            }
        }
        if (most > NOTHING) {
            all.add(new Figure(name, most, Kind.FORCE, Bound.LEAST));
        }
    }

    private List<Figure> pivot(SizeAnswer a) {
        Bearing bearing = design.pivot().bearings().get(0).bearing();
        List<Figure> all = new ArrayList<>();
        if (a.written().keySet().stream().anyMatch(path -> path.contains("bearing"))) {
            all.add(new Figure("bore", bearing.bore(), Kind.LENGTH, Bound.EXACT));
            all.addAll(ratings());
        }
        Shaft shaft = design.pivot().shaft();
        if (shaft != null && (bearing instanceof PlainBush || a.written().containsKey("pivot.shaft.diameter"))) {
            all.add(new Figure("shaft diameter", shaft.diameter(), Kind.LENGTH, Bound.EXACT));
            all.add(new Figure("yield strength of its steel", shaft.yield(), Kind.PRESSURE, Bound.LEAST));
        }
        return all;
    }

    /** What the bearings ask for: one figure where both ask for the same, else one for each, the larger first. */
    private List<Figure> ratings() {
        List<Figure> all = new ArrayList<>();
        for (int b = 0; b < design.pivot().bearings().size(); b++) {
            int bearing = b;
            double load = result.findings().stream()
                    .filter(f -> f.isOf("bearing-static") && f.verdict() != Verdict.NOT_CHECKED)
                    .filter(f -> Findings.bearing(f) == bearing)
                    .mapToDouble(f -> f.demand() * f.factor())
                    .max()
                    .orElse(0);
            if (load > NOTHING) {
                String side = design.pivot().side(b);
                all.add(new Figure("static load rating (C0)", load, Kind.FORCE, Bound.LEAST, side));
            }
        }
        all.sort(Comparator.comparingDouble(Figure::si).reversed());
        if (all.size() < 2 || all.get(0).si() > all.get(1).si() * (1 + UNLIKE)) {
            return all;
        }
        Figure most = all.get(0);
        return List.of(new Figure(most.name(), most.si(), most.kind(), most.bound()));
    }

    private List<Figure> cable() {
        List<Figure> all = new ArrayList<>();
        if (design.supply() instanceof Battery battery && battery.cable() != null) {
            Cable cable = Objects.requireNonNull(battery.cable());
            all.add(new Figure("section of one core", cable.area(), Kind.AREA, Bound.LEAST));
            Double fuse = battery.fuse();
            double carries = fuse == null ? current() : fuse;
            if (carries > NOTHING) {
                all.add(new Figure("rated current", carries, Kind.CURRENT, Bound.LEAST));
            }
        }
        return all;
    }

    private List<Figure> fuse() {
        double current = current();
        return current > NOTHING
                ? List.of(new Figure("current that it must carry", current, Kind.CURRENT, Bound.LEAST))
                : List.of();
    }

    private double current() {
        return result.findings().stream()
                .filter(f -> f.id().equals("electrical/current") && f.verdict() != Verdict.NOT_CHECKED)
                .mapToDouble(Finding::demand)
                .max()
                .orElse(0);
    }

    /** What the answer is, in a sentence. */
    Text says(SizeAnswer a) {
        Text why = a.because();
        if (a.normal() == null) {
            return Text.words(what(a) + ": none that is sold does. Nearest: " + a.taken() + " (")
                    .plus(why)
                    .plus(")");
        }
        Text head = Text.words(what(a) + ": " + a.taken());
        if (a.normal().equals(a.always())) {
            return head;
        }
        return a.always() == null
                ? head.plus(" does for the normal dump; none does if something goes wrong (")
                        .plus(why)
                        .plus(")")
                : head.plus("; " + a.normal() + " would do for the normal dump, but not if something goes wrong (")
                        .plus(why)
                        .plus(")");
    }

    /** The lines of the list; none when nothing was asked. */
    static List<String> lines(Checked checked, Style style) {
        if (checked.sizes().isEmpty()) {
            return List.of();
        }
        ShoppingList list = new ShoppingList(checked.result());
        List<String> lines = new ArrayList<>();
        lines.add(style.heading("To buy: what the file asks for with '?'"));
        for (SizeAnswer a : checked.sizes()) {
            List<Text> figures = list.figures(a).stream().map(Figure::text).toList();
            Text said = list.says(a);
            if (!figures.isEmpty()) {
                said = said.plus(". The seller must state: ").plus(Text.join("; ", figures));
            }
            if (!a.unknown().isEmpty()) {
                said = said.plus(". Cannot tell: " + String.join(", ", a.unknown()));
            }
            lines.addAll(Prose.wrap(
                    " " + (a.normal() == null ? "X" : "*") + " ",
                    Prose.safe(Text.capital(said.show(style.units()))) + "."));
        }
        return lines;
    }
}
