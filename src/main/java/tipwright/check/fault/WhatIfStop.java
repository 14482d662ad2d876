// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.Row;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.design.Design;
import tipwright.design.actuator.Cylinder;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rope;
import tipwright.design.around.Frame;
import tipwright.design.around.SidePart;
import tipwright.design.around.WhatIf;
import tipwright.design.supply.HandWinch;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.Impact;
import tipwright.time.Cycle;
import tipwright.time.Moment;
import tipwright.time.Timing;

/**
 * What stops the moving tank: an electric drive or a winch that stops at once, anywhere; the end of the cylinder's stroke, with a
 * cushion or without; the saddle that the stowed tank lies on. Its energy goes into the springs behind the stop. A rope goes slack
 * where it would be pushed, and bears the tank that falls back into it as one that swings back. And a drive that goes on at the saddle,
 * because its switch fails, up to where it stalls or its relief valve opens.
 *
 * <p>Peak v sqrt(k m) beside the static force at the rod, a cushion's at most m v^2 / s (twice the even one of m v^2 / 2 s: common
 * practice, no source); F + sqrt(F^2 + k m v^2) on the saddle, with the weight going on to push; (Fdrive + F) r / a under a drive that goes on, by moments
 * about the pivot. Source: energy of the mass goes into
 * the springs (worked examples on public pages, read).
 */
final class WhatIfStop {
    static final String OFF = "drive stops on the way";
    static final String END = "end of the stroke";
    static final String SADDLE = "lands on the saddle";
    static final String PRESSED = "drive goes on when the tank is down";
    private static final double NEARLY = 1e-6;
    private static final double END_OF_STROKE = 0.001;

    private final Analysis analysis;
    private final Design design;
    private final MovingMass moving;
    private final int way;

    WhatIfStop(Analysis analysis) {
        this.analysis = analysis;
        design = analysis.design();
        moving = new MovingMass(analysis);
        way = analysis.poses().get(0).arm() > 0 ? 1 : -1;
    }

    static List<Finding> find(Findings make, Analysis analysis, Timing timing, List<Check> rules) {
        WhatIfStop stop = new WhatIfStop(analysis);
        List<Finding> all = new ArrayList<>();
        DrivePath path = new DrivePath(make, analysis, rules);
        if (stop.all(ElectricActuator.class) || stop.all(Rope.class)) {
            all.addAll(stop.off(make, path, timing));
        } else if (stop.all(Cylinder.class) && timing.missing() == null) {
            all.addAll(stop.end(make, path, timing));
        }
        Finding saddle = stop.saddle(make, timing);
        if (saddle != null) {
            all.add(saddle);
        }
        Finding pressed = stop.pressed(make);
        if (pressed != null) {
            all.add(pressed);
        }
        return all;
    }

    private boolean all(Class<?> kind) {
        return design.drive().actuators().stream().map(PlacedActuator::actuator).allMatch(kind::isInstance);
    }

    private List<Finding> off(Findings make, DrivePath path, Timing timing) {
        if (timing.missing() != null) {
            return List.of(make.untimed(OFF, timing));
        }
        // on a stiff rod alone it would be far more than any machine feels
        if (design.whatIf().structure() == null) {
            return List.of(make.missing(OFF, "what-if.structure missing"));
        }
        double[] down = new double[analysis.poses().size()];
        double[] up = new double[analysis.poses().size()];
        for (Cycle cycle : timing.cycles()) {
            for (Moment m : cycle.moments()) {
                Row row = m.draw().speed() > 0 ? moving.row(cycle.load(), m) : null;
                if (row != null) {
                    int i = moving.nearest(m.tilt());
                    boolean raising = m.phase() == Moment.Phase.RAISE;
                    double[] against = raising ? up : down;
                    double[] back = raising ? down : up;
                    against[i] = Math.max(against[i], peak(row, m));
                    back[i] = Math.max(back[i], rebound(row, m));
                }
            }
        }
        if (all(Rope.class)) {
            Arrays.fill(way > 0 ? down : up, 0);
        }
        return under(path, OFF, "stopped at once, the load", up, down);
    }

    /** Force at the rod when an electric drive stops at once, against the motion, N: 0 or more. */
    double peak(Row row, Moment m) {
        return Math.max(0, jolt(row, m) + with(m));
    }

    /** The same with the motion, when the mass swings back, N: nothing is taken off for what dampens it. */
    double rebound(Row row, Moment m) {
        return Math.max(0, jolt(row, m) - with(m));
    }

    private double jolt(Row row, Moment m) {
        return Impact.force(moving.atRod(row, m), m.draw().speed(), moving.onRods(m.length()));
    }

    /** Force at the rod with which the load goes on in the way that it moves, N; negative: it holds it back. */
    private double with(Moment m) {
        return m.phase() == Moment.Phase.RAISE ? -way * m.force() : way * m.force();
    }

    private List<Finding> end(Findings make, DrivePath path, Timing timing) {
        double[] up = new double[analysis.poses().size()];
        double[] down = new double[up.length];
        for (Cycle cycle : timing.cycles()) {
            for (Moment.Phase phase : List.of(Moment.Phase.RAISE, Moment.Phase.LOWER)) {
                Moment last = last(cycle, phase);
                boolean raising = phase == Moment.Phase.RAISE;
                Row row = last == null || !atEnd(last.length(), raising) ? null : moving.row(cycle.load(), last);
                if (last != null && row != null && last.draw().speed() > 0) {
                    double[] peaks = raising ? up : down;
                    int i = moving.nearest(last.tilt());
                    peaks[i] = Math.max(peaks[i], atEnd(row, last));
                }
            }
        }
        boolean none = Stream.of(up, down).flatMapToDouble(Arrays::stream).allMatch(f -> f == 0);
        if (!none && design.whatIf().structure() == null && design.whatIf().cushion() == null) {
            return List.of(make.missing(END, "what-if.cushion and what-if.structure missing"));
        }
        return none ? List.of() : under(path, END, "run against its end, the load", up, down);
    }

    /** Whether an actuator is at the end that it runs to; the stowed tank lies on its saddle where there is one. */
    private boolean atEnd(double length, boolean raising) {
        if (!raising && !rests().isEmpty()) {
            return false;
        }
        boolean out = way > 0 == raising;
        return design.drive().actuators().stream()
                .map(PlacedActuator::actuator)
                .anyMatch(a ->
                        out ? length > a.closed() + a.stroke() - END_OF_STROKE : length < a.closed() + END_OF_STROKE);
    }

    /** Force at the rod when the piston runs against its end, against the motion, N: 0 or more. */
    double atEnd(Row row, Moment m) {
        double mass = moving.atRod(row, m);
        double speed = m.draw().speed();
        double stiffness = moving.onRods(m.length());
        double jolt = Double.isFinite(stiffness) ? Impact.force(mass, speed, stiffness) : Double.MAX_VALUE;
        Double cushion = design.whatIf().cushion();
        double soft = cushion == null ? jolt : Math.min(jolt, mass * speed * speed / cushion);
        return Math.max(0, soft + with(m));
    }

    private List<Finding> under(DrivePath path, String part, String how, double[] up, double[] down) {
        return path.under(part, how, row -> (way > 0 ? down : up)[analysis.at(row.tilt())], row -> (way > 0 ? up : down)
                [analysis.at(row.tilt())]);
    }

    /** The stowed tank on what it lies on; null where nothing is there, so that the drive stops it. */
    private @Nullable Finding saddle(Findings make, Timing timing) {
        List<SidePart> rests = rests();
        WhatIf whatIf = design.whatIf();
        if (rests.isEmpty()) {
            return null;
        }
        if (timing.missing() != null) {
            return make.untimed(SADDLE, timing);
        }
        if (whatIf.saddleStiffness() == null || whatIf.saddleRating() == null) {
            String key = whatIf.saddleStiffness() == null ? "saddle-stiffness" : "saddle-rating";
            return make.missing(SADDLE, "what-if." + key + " missing");
        }
        Extreme.Search most = Extreme.Search.above(0);
        double fastest = 0;
        for (Cycle cycle : timing.cycles()) {
            Moment last = last(cycle, Moment.Phase.LOWER);
            Row row = last == null || last.tilt() > analysis.poses().get(0).tilt() + NEARLY
                    ? null
                    : moving.row(cycle.load(), last);
            for (SidePart rest : row == null ? List.<SidePart>of() : rests) {
                double force = onSaddle(Objects.requireNonNull(row), Objects.requireNonNull(last), contact(rest));
                if (most.offer(force, last.tilt(), null, null)) {
                    fastest = speed(row, last, contact(rest));
                }
            }
        }
        Extreme worst = most.found();
        if (Double.isNaN(worst.tilt())) {
            return make.cannot(SADDLE, "it does not come down in the dump in time");
        }
        Text note = Text.of("it lands with {}", Text.amount(fastest, Kind.SPEED));
        return make.compare(
                SADDLE, worst.value(), whatIf.saddleRating(), design.factors().service(), Kind.FORCE, worst, note);
    }

    /** What the stowed tank lies on under a drive that pushes it down as hard as it can; null where none can. */
    private @Nullable Finding pressed(Findings make) {
        double hardest = WhatIfJam.most(design, analysis.poses().get(0).length(), way < 0);
        if (rests().isEmpty() || !(hardest > 0)) {
            return null;
        }
        if (design.supply() instanceof HandWinch) {
            return make.cannot(PRESSED, "how hard the crank can be turned is not known");
        }
        Double rating = design.whatIf().saddleRating();
        if (rating == null) {
            return make.missing(PRESSED, "what-if.saddle-rating missing");
        }
        Extreme.Search most = Extreme.Search.above(0);
        for (CaseResult load : analysis.cases()) {
            Row row = load.rows().get(0);
            for (SidePart rest : rests()) {
                double ratio = Math.abs(row.pose().arm()) / moving.way(row, contact(rest));
                most.offer((hardest + way * row.rest().force()) * ratio, row.tilt(), load.name(), null);
            }
        }
        Text note = Text.of("the drive with {}, and the tank", Text.amount(hardest, Kind.FORCE));
        Extreme worst = most.found();
        return make.compare(PRESSED, worst.value(), rating, design.factors().service(), Kind.FORCE, worst, note);
    }

    private List<SidePart> rests() {
        Frame frame = design.frame();
        return Stream.concat(frame == null ? Stream.of() : frame.members().stream(), design.obstacles().stream())
                .filter(SidePart::rest)
                .toList();
    }

    private static Vec3 contact(SidePart rest) {
        Vec2 sum = Vec2.ZERO;
        for (Vec2 p : rest.outline()) {
            sum = sum.plus(p.times(1.0 / rest.outline().size()));
        }
        return new Vec3(sum.x(), sum.y(), 0);
    }

    private double speed(Row row, Moment m, Vec3 contact) {
        return m.draw().speed() * moving.way(row, contact) / Math.abs(row.pose().arm());
    }

    /** Greatest force on a saddle, N: the moving tank's energy and the weight that goes on pushing go into what gives there. */
    double onSaddle(Row row, Moment m, Vec3 contact) {
        double arm = moving.way(row, contact);
        double weight =
                Math.max(0, way * row.rest().force()) * Math.abs(row.pose().arm()) / arm;
        double stiffness = Objects.requireNonNull(design.whatIf().saddleStiffness(), "saddle-stiffness");
        return Impact.force(Impact.referred(moving.inertia(row, m), arm), speed(row, m, contact), stiffness, weight);
    }

    private static @Nullable Moment last(Cycle cycle, Moment.Phase phase) {
        Moment last = null;
        for (Moment m : cycle.moments()) {
            last = m.phase() == phase ? m : last;
        }
        return last;
    }
}
