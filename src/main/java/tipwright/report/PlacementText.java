// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tipwright.check.Finding;
import tipwright.check.Verdict;
import tipwright.design.Design;
import tipwright.design.Drive;
import tipwright.design.PlacedActuator;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;
import tipwright.placement.Aim;
import tipwright.placement.Answer;
import tipwright.placement.Placement;
import tipwright.placement.Spot;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/** Tells in plain words where the mounts may go. */
public final class PlacementText {
    private PlacementText() {}

    /** The text, lines ended by '\n'. */
    public static String of(Design design, Placement placement, Style style) {
        List<String> lines = new ArrayList<>();
        lines.add(style.heading(design.name() + ": where the mounts may go"));
        lines.add("  " + placement.candidates() + " candidates on a grid of "
                + show(placement.step(), Kind.LENGTH, style.units()) + "; " + placement.fitting() + " may do");
        for (String note : placement.notes()) {
            lines.add("  note: " + note);
        }
        if (placement.answers().isEmpty()) {
            nothing(placement, lines);
        } else {
            table(placement.answers(), style, lines);
            governing(placement.answers(), style, lines);
            paste(design, placement.answers().get(0), style, lines);
        }
        return String.join("\n", lines) + "\n";
    }

    private static void nothing(Placement placement, List<String> lines) {
        lines.add("");
        lines.add("Nothing fits." + (placement.misses().isEmpty() ? "" : " Any one of these would open it:"));
        for (String miss : placement.misses()) {
            lines.add("  " + miss);
        }
    }

    private static void table(List<Answer> answers, Style style, List<String> lines) {
        lines.add("");
        Table table = new Table("rlllrrrrl");
        table.row("", "frame pin", "tank pin", "actuator", "utilisation", "force", "up", "price", "best for");
        int number = 0;
        for (Answer answer : answers) {
            Spot spot = answer.spot();
            number++;
            table.row(
                    Integer.toString(number),
                    point(spot.place(Drive.FRAME_PIN), style.units()),
                    point(spot.place(Drive.TANK_PIN), style.units()),
                    spot.actuator().name(),
                    percent(spot.utilisation()),
                    show(spot.force(), Kind.FORCE, style.units()),
                    Double.isFinite(spot.time()) ? show(spot.time(), Kind.TIME, style.units()) : "-",
                    Double.isFinite(spot.price()) ? Quantities.number(spot.price()) : "-",
                    answer.aims().isEmpty()
                            ? "(compromise)"
                            : answer.aims().stream().map(Aim::words).collect(Collectors.joining(", ")));
        }
        lines.addAll(table.lines("  "));
        lines.add("  up: time to raise against the heaviest load at each tilt, at the actuator's own voltage or flow");
    }

    private static void governing(List<Answer> answers, Style style, List<String> lines) {
        lines.add("");
        lines.add(style.heading("What governs, after the full check of each"));
        int number = 0;
        for (Answer answer : answers) {
            number++;
            Finding f = answer.governing();
            String where = f == null || Double.isNaN(f.tilt())
                    ? ""
                    : " at " + show(f.tilt(), Kind.ANGLE, style.units())
                            + (f.loadCase() == null ? "" : ", " + f.loadCase());
            String what = f == null ? answer.spot().governing().words() : f.title();
            Verdict verdict = !answer.failed().isEmpty() ? Verdict.FAIL : f == null ? Verdict.PASS : f.verdict();
            String failed = answer.failed().isEmpty()
                    ? ""
                    : "; fails: " + answer.failed().stream().map(Finding::title).collect(Collectors.joining(", "));
            lines.add("  " + number + "  "
                    + style.verdict(verdict, what + " " + percent(answer.spot().utilisation())) + where + failed);
        }
    }

    private static void paste(Design design, Answer first, Style style, List<String> lines) {
        Spot spot = first.spot();
        lines.add("");
        lines.add(style.heading("To take number 1, put this into the design file"));
        if (!spot.place(Skeleton.PIVOT).equals(design.pivot().at())) {
            lines.add("pivot:");
            lines.add("  at: " + point(spot.place(Skeleton.PIVOT), style.units()));
        }
        lines.add("drive:");
        lines.add("  straight:");
        lines.add("    frame-pin: " + point(spot.place(Drive.FRAME_PIN), style.units()));
        lines.add("    tank-pin: " + point(spot.place(Drive.TANK_PIN), style.units()));
        lines.add("    actuators:");
        for (PlacedActuator placed : design.drive().actuators()) {
            lines.add("      - {z: " + length(placed.z(), style.units()) + ", actuator: "
                    + spot.actuator().name() + "}");
        }
    }

    private static String point(Vec2 p, UnitSystem units) {
        return "[" + length(p.x(), units) + ", " + length(p.y(), units) + "]";
    }

    /** To a tenth of a millimetre or a thousandth of an inch, in one unit whatever the size. */
    static String length(double m, UnitSystem units) {
        boolean metric = units == UnitSystem.METRIC;
        BigDecimal value = BigDecimal.valueOf(m / (metric ? 0.001 : 0.0254))
                .setScale(metric ? 1 : 3, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return value.toPlainString() + (metric ? " mm" : " in");
    }

    private static String show(double si, Kind kind, UnitSystem units) {
        return Quantities.show(si, kind, units);
    }

    private static String percent(double share) {
        return Math.round(1000 * share) / 10.0 + " %";
    }
}
