// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.design.actuator.Actuator;
import tipwright.design.joint.Support;
import tipwright.design.tank.CaseName;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.report.Direction;
import tipwright.report.Envelope;
import tipwright.report.FillSection;
import tipwright.report.Peak;
import tipwright.report.Scale;
import tipwright.time.Cycle;
import tipwright.time.DumpEvent;
import tipwright.time.Timing;

/** The load cases, what they do at each tilt, and the dump in time, as tables. */
final class LoadPages {
    private final Analysis analysis;
    private final UnitSystem units;
    private final Scale force;
    private final Scale length;
    private final Scale angle = Scale.angle();

    LoadPages(Analysis analysis, UnitSystem units) {
        this.analysis = analysis;
        this.units = units;
        this.force = Scale.force(units);
        this.length = Scale.length(units);
    }

    void cases(Markup page) {
        FixedTable grid = new FixedTable(
                "Load cases, friction included",
                FixedTable.Column.text("case", 16),
                FixedTable.Column.text("what it is", 38),
                FixedTable.Column.text("largest push", 17),
                FixedTable.Column.text("largest pull", 17),
                FixedTable.Column.number("stays in", 12));
        for (CaseResult c : analysis.cases()) {
            grid.row(
                    CaseName.shown(c.name(), analysis.design().tank()),
                    CaseName.about(c.name(), analysis.design().tank()),
                    peak(Peak.force(List.of(c), Peak.Tilts.ALL, true)),
                    peak(Peak.force(List.of(c), Peak.Tilts.ALL, false)),
                    stays(c.load().residual()));
        }
        grid.to(page);
        FixedTable bearings = new FixedTable(
                "Largest load on each pivot bearing",
                FixedTable.Column.text("bearing", 18),
                FixedTable.Column.number("at z", 14),
                FixedTable.Column.text("load", 30),
                FixedTable.Column.text("which way", 38));
        List<Support> all = analysis.design().pivot().bearings();
        for (int b = 0; b < all.size(); b++) {
            Peak.OnBearing worst = Peak.bearing(analysis.cases(), Peak.Tilts.ALL, b, b + 1);
            if (worst != null) {
                bearings.row(
                        analysis.design().pivot().name(b),
                        length.show(all.get(b).z()),
                        peak(worst.peak()) + " ("
                                + CaseName.shown(
                                        worst.peak().loadCase(),
                                        analysis.design().tank()) + ")",
                        Direction.of(worst.load(), all.get(b).base()).words());
            }
        }
        bearings.to(page);
    }

    private String stays(double volume) {
        double holds = analysis.vessel().solid().whole().volume();
        return FillSection.allOut(volume / holds) ? "all out" : Quantities.show(volume, Kind.VOLUME, units);
    }

    private String peak(@Nullable Peak peak) {
        return peak == null
                ? "none"
                : force.show(peak.value()) + " at " + angle.show(peak.tilt()) + ", " + peak.motion();
    }

    void envelope(Markup page) {
        FixedTable grid = new FixedTable(
                "Tilt by tilt: the worst load, with friction",
                FixedTable.Column.number("tilt, deg", 8),
                FixedTable.Column.number("length, " + length.unit(), 10),
                FixedTable.Column.number("stroke used", 9),
                FixedTable.Column.number("arm, " + length.unit(), 8),
                FixedTable.Column.number("angle, deg", 9),
                FixedTable.Column.number("push, " + force.unit(), 9),
                FixedTable.Column.text("case", 15),
                FixedTable.Column.number("pull, " + force.unit(), 8),
                FixedTable.Column.text("case", 14),
                FixedTable.Column.number("bearing, " + force.unit(), 10));
        Actuator actuator = analysis.design().drive().actuators().get(0).actuator();
        for (Envelope e : Envelope.shown(analysis)) {
            double used = (e.pose().length() - actuator.closed()) / actuator.stroke();
            grid.row(
                    angle.number(e.pose().tilt()),
                    length.number(e.pose().length()),
                    Math.round(100 * used) + " %",
                    length.number(e.pose().arm()),
                    Long.toString(Math.round(Math.toDegrees(e.pose().transmission()))),
                    e.push() == null ? "-" : force.number(e.push().value()),
                    e.push() == null
                            ? ""
                            : CaseName.shown(
                                    e.push().loadCase(), analysis.design().tank()),
                    e.pull() == null ? "-" : force.number(e.pull().value()),
                    e.pull() == null
                            ? ""
                            : CaseName.shown(
                                    e.pull().loadCase(), analysis.design().tank()),
                    e.bearing() == null ? "-" : force.number(e.bearing().peak().value()));
        }
        grid.to(page);
        page.line(
                "p class=\"caption\"",
                "Length: pin to pin. Arm: the lever arm, the square distance from the pivot to the line through the actuator;"
                        + " force times arm turns the tank. Angle: the pushing angle, between the actuator and the line from"
                        + " the pivot to its pin; 90 is best. Bearing: the one that carries most.");
    }

    void time(Markup page, Timing timing) {
        Cycle dump = timing.dump();
        if (dump == null) {
            return;
        }
        FixedTable loads = new FixedTable(
                "The dump with each load",
                FixedTable.Column.text("load", 22),
                FixedTable.Column.number("raise", 12),
                FixedTable.Column.number("run out", 12),
                FixedTable.Column.number("lower", 12),
                FixedTable.Column.number("in all", 12),
                FixedTable.Column.number("energy", 12),
                FixedTable.Column.text("remark", 18));
        for (Cycle c : timing.cycles()) {
            String remark = !Double.isNaN(c.stalledAt())
                    ? "stalls at " + angle.show(c.stalledAt())
                    : Double.isNaN(c.stuckAt()) ? "" : "does not come back from " + angle.show(c.stuckAt());
            loads.row(
                    CaseName.shown(c.load(), analysis.design().tank()),
                    Words.seconds(c.raise()),
                    Words.seconds(c.empty()),
                    Words.seconds(c.lower()),
                    Words.seconds(c.total()),
                    Double.isFinite(c.spent().energy())
                            ? Quantities.show(c.spent().energy(), Kind.ENERGY, units)
                            : "-",
                    remark);
        }
        loads.to(page);
        FixedTable line = new FixedTable(
                "What happens in a normal dump",
                FixedTable.Column.number("time", 15),
                FixedTable.Column.number("tilt", 15),
                FixedTable.Column.text("what", 70));
        for (DumpEvent h : dump.happenings()) {
            line.row(Words.seconds(h.time()), angle.show(h.tilt()), h.kind().words());
        }
        line.to(page);
    }
}
