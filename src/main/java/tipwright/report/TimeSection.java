// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tipwright.design.Design;
import tipwright.design.supply.Battery;
import tipwright.design.supply.HandPump;
import tipwright.design.supply.HandWinch;
import tipwright.design.tank.CaseName;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.time.Cycle;
import tipwright.time.Timing;

/** How long a dump takes, in a few sentences. */
public final class TimeSection {
    private static final double FEW = 5;

    private final Design design;
    private final Style style;

    /** For a design, in the units of a style. */
    public TimeSection(Design design, Style style) {
        this.design = design;
        this.style = style;
    }

    List<String> lines(Timing timing) {
        List<String> lines = new ArrayList<>();
        lines.add(style.heading("How long does a dump take?"));
        Cycle dump = timing.dump();
        for (String sentence : sentences(timing)) {
            lines.addAll(Prose.wrap("  ", sentence));
        }
        if (dump == null) {
            return lines;
        }
        for (Cycle other : timing.cycles()) {
            if (!other.load().equals(dump.load()) && !Double.isNaN(other.stalledAt())) {
                String where = Scale.angle().show(other.stalledAt());
                lines.addAll(Prose.wrap(
                        "  ! ",
                        "With the load '" + CaseName.shown(other.load(), design.tank()) + "' it stalls at " + where
                                + "."));
            }
        }
        return lines;
    }

    /** How long it takes and what it takes. */
    public List<String> sentences(Timing timing) {
        Cycle dump = timing.dump();
        if (dump == null) {
            return List.of("Not known: " + timing.missing() + ".");
        }
        return Stream.of(motion(dump), outflow(dump), takes(dump))
                .filter(s -> !s.isEmpty())
                .toList();
    }

    private String motion(Cycle c) {
        if (Double.isInfinite(c.raise())) {
            return "The drive stalls at " + Scale.angle().show(c.stalledAt()) + " and does not get up.";
        }
        String stall = Double.isNaN(c.stalledAt())
                ? ""
                : " (the actuator stalls at " + Scale.angle().show(c.stalledAt())
                        + " until enough has drained, then goes on)";
        boolean ends = c.shortOf(design.tilt().to());
        String up = (ends
                        ? "The actuator is fully out at " + Scale.angle().show(c.highest())
                                + " and the tank never reaches "
                                + Scale.angle().show(design.tilt().to()) + ". Up to there "
                        : "Up ")
                + time(c.raise()) + stall + ", ";
        if (Double.isInfinite(c.lower())) {
            return up + "and it does not come back down: it stops at "
                    + Scale.angle().show(c.stuckAt()) + ".";
        }
        String all = up + "down " + time(c.lower());
        return c.complete() && !ends
                ? all + ", " + time(c.total()) + " a dump: at most " + perHour(c.perHour()) + " an hour."
                : all + ".";
    }

    /** Whole dumps; a decimal where there are only a few. */
    private static String perHour(double dumps) {
        double shown = dumps < FEW ? Math.floor(dumps * 10) / 10 : Math.floor(dumps);
        return Quantities.number(shown) + (shown == 1 ? " dump" : " dumps");
    }

    private String outflow(Cycle c) {
        if (Double.isNaN(c.empty())) {
            return "Nothing drains by itself.";
        }
        if (Double.isInfinite(c.empty())) {
            return "It does not drain: no air gets in, or it stays shut.";
        }
        return "The tank is drained after " + time(c.empty()) + "; strongest flow "
                + outflow(c.peaks().discharge(), style) + ".";
    }

    /** A flow of slurry: too much for litres a minute. */
    static String outflow(double flow, Style style) {
        String unit = style.units() == UnitSystem.US ? "gpm" : "L/s";
        return Quantities.show(flow, Quantities.unit(Kind.FLOW, unit));
    }

    private String takes(Cycle c) {
        if (design.supply() instanceof HandWinch winch) {
            long turns = Math.round(c.spent().travel() / winch.travelPerTurn());
            return "Crank turns for one dump, up and down: " + turns + ".";
        }
        if (design.supply() instanceof HandPump pump) {
            if (Double.isInfinite(c.raise())) {
                return "";
            }
            return "One person pumps about " + Math.round(c.raise() / 60 * pump.strokesPerMinute())
                    + " strokes to bring it up.";
        }
        if (Double.isNaN(c.spent().energy())) {
            return "";
        }
        String energy = "One dump uses " + Quantities.show(c.spent().energy(), Kind.ENERGY, style.units());
        if (c.peaks().current() > 0) {
            energy += " and draws up to " + Quantities.show(c.peaks().current(), Kind.CURRENT, style.units());
        }
        if (c.peaks().pressure() > 0) {
            energy += ", at a pressure of up to " + Quantities.show(c.peaks().pressure(), Kind.PRESSURE, style.units());
        }
        if (design.supply() instanceof Battery battery && battery.capacity() != null) {
            double usable = battery.capacity() * battery.usable() * battery.voltage();
            energy += "; one charge is enough for about "
                    + (long) Math.floor(usable / c.spent().energy()) + " dumps";
        }
        return energy + ".";
    }

    private static String time(double seconds) {
        return Double.isFinite(seconds) ? Math.round(seconds) + " s" : "-";
    }
}
