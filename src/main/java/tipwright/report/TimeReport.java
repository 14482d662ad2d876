// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.design.Design;
import tipwright.design.tank.CaseName;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.time.Cycle;
import tipwright.time.DumpEvent;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** The dump as a time line: what happens, a table and a small plot in plain characters. */
public final class TimeReport {
    private static final int ROWS = 24;
    /** Share of the load that is not worth a figure. */
    private static final double NOTHING = 1e-4;

    private final Analysis analysis;
    private final Style style;

    private TimeReport(Analysis analysis, Style style) {
        this.analysis = analysis;
        this.style = style;
    }

    /** The whole text, lines ended by a line feed. */
    public static String of(Analysis analysis, Timing timing, Style style) {
        return String.join("\n", new TimeReport(analysis, style).lines(timing)) + "\n";
    }

    private List<String> lines(Timing timing) {
        Design design = analysis.design();
        List<String> lines = new ArrayList<>();
        lines.add(style.heading(Prose.safe(design.name())));
        lines.addAll(new TimeSection(design, style).lines(timing));
        Cycle dump = timing.dump();
        if (dump == null) {
            return lines;
        }
        lines.add("");
        lines.add(style.heading("What happens, normal dump"));
        Table happenings = new Table("rrl");
        for (DumpEvent h : dump.happenings()) {
            happenings.row(
                    seconds(h.time()),
                    Scale.angle().number(h.tilt()) + " deg",
                    h.kind().words());
        }
        lines.addAll(happenings.lines("  "));
        lines.add("");
        lines.add(style.heading("Tilt and contents against time"));
        lines.addAll(new TimePlot(dump, style.units()).lines());
        lines.add("");
        lines.add(style.heading("Time line"));
        lines.addAll(table(dump));
        lines.add("");
        lines.add(style.heading("All loads"));
        lines.addAll(loads(timing));
        return lines;
    }

    private List<String> table(Cycle dump) {
        boolean electric = dump.peaks().current() > 0;
        boolean hydraulic = dump.peaks().pressure() > 0;
        Table table = new Table("rlrrrrrr");
        table.row(
                "time",
                "",
                "tilt",
                "speed",
                "in tank",
                "force",
                "flow out",
                electric ? "current" : hydraulic ? "pressure" : "");
        List<Moment> all = dump.moments();
        double next = 0;
        double step = all.get(all.size() - 1).time() / ROWS;
        for (int i = 0; i < all.size(); i++) {
            Moment m = all.get(i);
            boolean turns = i == all.size() - 1 || all.get(i + 1).phase() != m.phase();
            if (m.time() < next && !turns) {
                continue;
            }
            next = Math.max(next + step, m.time());
            table.row(
                    seconds(m.time()),
                    phase(m.phase()),
                    Scale.angle().number(m.tilt()) + " deg",
                    show(m.draw().speed(), Kind.SPEED),
                    show(m.volume() < NOTHING * all.get(0).volume() ? 0 : m.volume(), Kind.VOLUME),
                    force(m.force()),
                    TimeSection.outflow(rounded(m.discharge()), style),
                    electric
                            ? show(m.draw().current(), Kind.CURRENT)
                            : hydraulic ? show(m.draw().pressure(), Kind.PRESSURE) : "");
        }
        return table.lines("  ");
    }

    private List<String> loads(Timing timing) {
        Table table = new Table("lrrrrrl");
        table.row("load", "up", "drained", "down", "total", "energy", "");
        for (Cycle c : timing.cycles()) {
            String remark = "";
            if (!Double.isNaN(c.stalledAt())) {
                remark = "stalls at " + Scale.angle().show(c.stalledAt());
            } else if (!Double.isNaN(c.stuckAt())) {
                remark = "does not come back from " + Scale.angle().show(c.stuckAt());
            }
            table.row(
                    CaseName.shown(c.load(), analysis.design().tank()),
                    seconds(c.raise()),
                    seconds(c.empty()),
                    seconds(c.lower()),
                    seconds(c.total()),
                    Double.isNaN(c.spent().energy()) ? "-" : show(c.spent().energy(), Kind.ENERGY),
                    remark);
        }
        return table.lines("  ");
    }

    private static String phase(Moment.Phase phase) {
        return switch (phase) {
            case RAISE -> "up";
            case HOLD -> "hold";
            case LOWER -> "down";
        };
    }

    /** 'push 9.14 kN'; a sign would have to be explained. */
    private String force(double force) {
        String size = Scale.force(style.units()).show(Math.abs(force));
        return (force < 0 ? "pull " : "push ") + size;
    }

    private String show(double si, Kind kind) {
        return Quantities.show(rounded(si), kind, style.units());
    }

    /** Three figures are enough to read a table. */
    private static double rounded(double si) {
        if (Math.abs(si) < 1e-7) {
            return 0;
        }
        double size = Math.pow(10, Math.floor(Math.log10(Math.abs(si))) - 2);
        return Math.rint(si / size) * size;
    }

    private static String seconds(double time) {
        return Double.isFinite(time) ? Scale.time().number(time) + " s" : "-";
    }
}
