// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.tank.CaseName;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitLabel;
import tipwright.quantity.UnitSystem;
import tipwright.report.Scale;
import tipwright.time.Cycle;
import tipwright.time.Moment;

/** The plots of one design. */
final class Plots {
    private static final String TILT = "tilt, deg";

    private final Analysis analysis;
    private final Plot plot;
    private final Scale length;
    private final Scale force;
    private final UnitLabel volume;

    Plots(Analysis analysis, Plot plot, UnitSystem units) {
        this.analysis = analysis;
        this.plot = plot;
        this.length = Scale.length(units);
        this.force = Scale.force(units);
        this.volume = Quantities.unit(Kind.VOLUME, units);
    }

    /** Everything over the tilt. */
    List<Figure> overTilt() {
        List<Figure> all = new ArrayList<>();
        all.add(forces(actuators() + " while raising, by load case", Row::raise));
        all.add(forces(actuators() + " while lowering, by load case", Row::lower));
        all.add(lengths());
        double[] tilts = poses(p -> Math.toDegrees(p.tilt()));
        all.add(plot.of(
                "Lever arm of the actuator about the pivot",
                TILT,
                "lever arm, " + length.unit(),
                List.of(PlotCurve.of(
                        "lever arm", tilts, poses(p -> length.label().fromSi(p.arm()))))));
        all.add(bearings());
        all.add(perCase(
                "What is in the tank",
                "volume, " + volume.name(),
                r -> volume.fromSi(r.load().volume())));
        all.add(residue());
        return all;
    }

    /** The few that tell most. */
    List<Figure> fewOverTilt() {
        return List.of(
                forces(actuators() + " while raising, by load case", Row::raise),
                forces(actuators() + " while lowering, by load case", Row::lower),
                bearings());
    }

    private String actuators() {
        int n = analysis.design().drive().actuators().size();
        return n == 1 ? "Force of the actuator" : "Force of all " + n + " actuators together";
    }

    private Figure forces(String caption, java.util.function.Function<Row, Balance> motion) {
        List<PlotCurve> curves =
                new ArrayList<>(cases(r -> force.label().fromSi(motion.apply(r).force())));
        double push = 0;
        for (PlacedActuator a : analysis.design().drive().actuators()) {
            push += a.actuator().ratedPush() / analysis.design().factors().service();
        }
        double[] tilts = poses(p -> Math.toDegrees(p.tilt()));
        curves.add(PlotCurve.limit("rated push", tilts, force.label().fromSi(push)));
        return plot.of(caption, TILT, "force, " + force.unit() + " (push above 0, pull below)", curves);
    }

    private Figure lengths() {
        Actuator actuator = analysis.design().drive().actuators().get(0).actuator();
        double[] tilts = poses(p -> Math.toDegrees(p.tilt()));
        return plot.of(
                "Length of the actuator, pin to pin",
                TILT,
                "length, " + length.unit(),
                List.of(
                        PlotCurve.of("length", tilts, poses(p -> length.label().fromSi(p.length()))),
                        PlotCurve.limit("closed", tilts, length.label().fromSi(actuator.closed())),
                        PlotCurve.limit(
                                "fully out", tilts, length.label().fromSi(actuator.closed() + actuator.stroke()))));
    }

    private Figure bearings() {
        double[] tilts = poses(p -> Math.toDegrees(p.tilt()));
        List<PlotCurve> curves = new ArrayList<>();
        int n = analysis.design().pivot().bearings().size();
        for (int b = 0; b < n; b++) {
            double[] most = new double[tilts.length];
            for (CaseResult c : analysis.cases()) {
                for (int i = 0; i < Math.min(most.length, c.rows().size()); i++) {
                    Row row = c.rows().get(i);
                    for (Balance balance : List.of(row.rest(), row.raise(), row.lower())) {
                        most[i] = Math.max(most[i], balance.bearings().get(b).norm());
                    }
                }
            }
            for (int i = 0; i < most.length; i++) {
                most[i] = force.label().fromSi(most[i]);
            }
            curves.add(PlotCurve.of(analysis.design().pivot().name(b), tilts, most));
        }
        return plot.of("Load of each pivot bearing, worst of all load cases", TILT, "load, " + force.unit(), curves);
    }

    private Figure residue() {
        List<PlotCurve> curves = new ArrayList<>();
        for (CaseResult c : analysis.cases()) {
            double first = c.load().contents();
            boolean leaves = !c.rows().isEmpty()
                    && c.rows().get(c.rows().size() - 1).load().volume() < 0.999 * first;
            if (first > 0 && leaves) {
                curves.add(PlotCurve.of(
                        CaseName.shown(c.name(), analysis.design().tank()),
                        tilts(c.rows()),
                        rows(c, r -> 100 * r.load().volume() / first)));
            }
        }
        double[] tilts = poses(p -> Math.toDegrees(p.tilt()));
        curves.add(PlotCurve.limit(
                "allowed to stay", tilts, 100 * analysis.design().limits().residue()));
        return plot.of("What stays in if the tilt ends there", TILT, "share of the load, %", curves);
    }

    private Figure perCase(String caption, String axis, ToDoubleFunction<Row> value) {
        return plot.of(caption, TILT, axis, cases(value));
    }

    private List<PlotCurve> cases(ToDoubleFunction<Row> value) {
        return analysis.cases().stream()
                .filter(c -> !c.rows().isEmpty())
                .map(c -> PlotCurve.of(
                        CaseName.shown(c.name(), analysis.design().tank()), tilts(c.rows()), rows(c, value)))
                .toList();
    }

    private static double[] tilts(List<Row> rows) {
        return rows.stream().mapToDouble(r -> Math.toDegrees(r.tilt())).toArray();
    }

    private static double[] rows(CaseResult c, ToDoubleFunction<Row> value) {
        return c.rows().stream().mapToDouble(value).toArray();
    }

    private double[] poses(ToDoubleFunction<Pose> value) {
        return analysis.poses().stream().mapToDouble(value).toArray();
    }

    /** Tilt, contents and force over the time of a dump. */
    List<Figure> overTime(Cycle dump) {
        double[] times = moments(dump, Moment::time);
        String time = "time, s";
        return List.of(
                plot.of(
                        "Tilt during a dump",
                        time,
                        "tilt, deg",
                        List.of(PlotCurve.of("tilt", times, moments(dump, m -> Math.toDegrees(m.tilt()))))),
                plot.of(
                        "What is in the tank during a dump",
                        time,
                        "volume, " + volume.name(),
                        List.of(PlotCurve.of("volume", times, moments(dump, m -> volume.fromSi(m.volume()))))),
                plot.of(
                        "Force of the actuators during a dump",
                        time,
                        "force, " + force.unit() + " (+ push, - pull)",
                        List.of(PlotCurve.of(
                                "force", times, moments(dump, m -> force.label().fromSi(m.force()))))));
    }

    private static double[] moments(Cycle dump, ToDoubleFunction<Moment> value) {
        return dump.moments().stream().mapToDouble(value).toArray();
    }
}
