// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.ode.events.Action;
import tipwright.time.DumpEvent.Kind;

/** One dump: up, wait until drained, hold, and back. A workspace for one run. */
final class Run {
    /** Share of the load at which the tank counts as dry: a rim that reaches below the inside would drain it past nothing. */
    private static final double NOTHING = 1e-6;
    /** A break is stopped at when it is just over, so that what holds beyond it is told from its very beginning, rad. */
    private static final double PAST = 1e-8;

    private final Machine machine;
    private final LinkageCurve mechanism;
    private final Script script;
    private final double tolerance;
    private final Effort effort;
    private final double pace;
    private final List<DumpEvent> happenings = new ArrayList<>();
    private final List<Moment> moments = new ArrayList<>();

    Run(Machine machine, LinkageCurve mechanism, Script script, double tolerance, Effort effort) {
        this.machine = machine;
        this.mechanism = mechanism;
        this.script = script;
        this.tolerance = tolerance;
        this.effort = effort;
        double first = mechanism.grid().first();
        double travel = Math.abs(mechanism.length(script.end()) - mechanism.length(first));
        this.pace = Math.max(1e-3, travel / Math.max(1e-9, machine.freeSpeed()));
    }

    Cycle cycle() {
        Leg.State begin = new Leg.State(0, new double[Leg.SIZE]);
        begin.y()[Leg.TILT] = mechanism.grid().first();
        begin.y()[Leg.VOLUME] = script.start();
        Leg.State top = raise(begin);
        if (top.tilt() < script.end() - 1e-6) {
            double empty = time(Kind.DRAINED, runsOut() ? Double.POSITIVE_INFINITY : Double.NaN);
            return cycle(top, Double.POSITIVE_INFINITY, empty, Double.NaN, Double.NaN, begin);
        }
        double raised = top.time();
        Leg.State drained = drain(top);
        double empty = time(Kind.DRAINED, runsOut() ? Double.POSITIVE_INFINITY : Double.NaN);
        Leg.State rested = drained.after(script.hold());
        moments.add(at(rested, Moment.Phase.HOLD));
        Leg.State back = lower(rested);
        boolean down = back.tilt() <= begin.tilt() + 1e-6;
        double lower = down ? back.time() - rested.time() : Double.POSITIVE_INFINITY;
        return cycle(back, raised, empty, lower, down ? Double.NaN : back.tilt(), begin);
    }

    private boolean runsOut() {
        return script.start() > script.target();
    }

    private Leg.State raise(Leg.State from) {
        Leg leg = new Leg(machine, mechanism, effort, script.up(), Moment.Phase.RAISE);
        if (slack(leg, from.y()) <= 0) {
            happenings.add(new DumpEvent(Kind.STALLED, 0, from.tilt()));
            moments.add(leg.moment(0, from.y()));
            return from;
        }
        List<Watch> watches = new ArrayList<>();
        for (double opens : script.opens()) {
            if (opens > from.tilt() && opens < script.end()) {
                watches.add(watch(y -> y[Leg.TILT] - opens, true, Kind.OPENS, Action.RESET_DERIVATIVES));
            }
        }
        for (double at : script.breaks()) {
            if (at > from.tilt() && at < script.end()) {
                watches.add(new Watch(
                        y -> y[Leg.TILT] - at - PAST, true, pace / 20, (time, y) -> Action.RESET_DERIVATIVES, effort));
            }
        }
        watches.add(watch(y -> leg.pace(y) - CycleTimer.STALL, false, Kind.STALLED, Action.CONTINUE));
        watches.add(watch(y -> slack(leg, y), false, Kind.STALLED, Action.STOP));
        if (runsOut()) {
            if (script.up().excess(from.tilt(), from.volume()) > 1e-6 * script.start()) {
                happenings.add(new DumpEvent(Kind.LIP, from.time(), from.tilt()));
            }
            watches.addAll(runningOut());
        }
        if (Double.isFinite(machine.duty())) {
            watches.add(watch(y -> y[Leg.DUTY] - 1, true, Kind.DUTY, Action.CONTINUE));
        }
        watches.add(watch(y -> y[Leg.TILT] - script.end(), true, script.endKind(), Action.STOP));
        Leg.State top = leg.run(from, tolerance, pace / 10, watches);
        moments.addAll(leg.moments());
        return top;
    }

    /** The lip, drained, and nothing left; once nothing is left the volume rests on that mark, so all three are done with. */
    private List<Watch> runningOut() {
        Watch lip = watch(
                y -> script.up().excess(y[Leg.TILT], y[Leg.VOLUME]) - 1e-6 * script.start(),
                true,
                Kind.LIP,
                Action.CONTINUE);
        Watch drained = watch(y -> y[Leg.VOLUME] - script.target(), false, Kind.DRAINED, Action.CONTINUE);
        double nothing = NOTHING * script.start();
        Watch dry = new Watch(
                y -> y[Leg.VOLUME] - nothing,
                false,
                pace / 20,
                (time, y) -> {
                    script.up().runDry();
                    lip.switchOff();
                    drained.switchOff();
                    note(Kind.DRAINED, time, y);
                    return Action.RESET_DERIVATIVES;
                },
                effort);
        return List.of(lip, drained, dry);
    }

    /** Positive while the drive moves, or while what runs out may still let it go on. */
    private double slack(Leg leg, double[] y) {
        double moving = leg.pace(y) - CycleTimer.STALL;
        double leaving =
                runsOut() ? script.up().excess(y[Leg.TILT], y[Leg.VOLUME]) / script.start() - script.drained() : -1;
        return Math.max(moving, leaving);
    }

    private Leg.State drain(Leg.State from) {
        if (!runsOut() || from.volume() <= script.target()) {
            if (runsOut() && Double.isNaN(time(Kind.DRAINED, Double.NaN))) {
                happenings.add(new DumpEvent(Kind.DRAINED, from.time(), from.tilt()));
            }
            return from;
        }
        Leg leg = new Leg(machine, mechanism, effort, script.up(), Moment.Phase.HOLD);
        if (leg.now(from.y()).standing().discharge() <= 0) {
            return from;
        }
        // the volume only falls, so however far apart it is looked at, its one passing is seen
        Watch drained = watch(y -> y[Leg.VOLUME] - script.target(), false, Leg.LONGEST, Kind.DRAINED, Action.STOP);
        Leg.State end = leg.run(from, tolerance, Leg.LONGEST, List.of(drained));
        moments.addAll(leg.moments());
        return end;
    }

    private Leg.State lower(Leg.State from) {
        Leg leg = new Leg(machine, mechanism, effort, script.down().apply(from.volume()), Moment.Phase.LOWER);
        if (leg.pace(from.y()) <= CycleTimer.STALL) {
            happenings.add(new DumpEvent(Kind.STUCK, from.time(), from.tilt()));
            return from;
        }
        double first = mechanism.grid().first();
        List<Watch> watches = new ArrayList<>();
        watches.add(watch(y -> leg.pace(y) - CycleTimer.STALL, false, Kind.STUCK, Action.STOP));
        if (Double.isFinite(machine.duty())) {
            watches.add(watch(y -> y[Leg.DUTY] - 1, true, Kind.DUTY, Action.CONTINUE));
        }
        watches.add(watch(y -> y[Leg.TILT] - first, false, Kind.BACK, Action.STOP));
        Leg.State end = leg.run(from, tolerance, pace / 10, watches);
        moments.addAll(leg.moments());
        return end;
    }

    private Watch watch(ToDoubleFunction<double[]> value, boolean rising, Kind kind, Action action) {
        return watch(value, rising, pace / 20, kind, action);
    }

    private Watch watch(ToDoubleFunction<double[]> value, boolean rising, double interval, Kind kind, Action action) {
        return new Watch(
                value,
                rising,
                interval,
                (time, y) -> {
                    note(kind, time, y);
                    return action;
                },
                effort);
    }

    /** Each kind but the opening of openings happens once. */
    private void note(Kind kind, double time, double[] y) {
        boolean seen = happenings.stream().anyMatch(h -> h.kind() == kind && kind != Kind.OPENS);
        if (!seen) {
            happenings.add(new DumpEvent(kind, time, y[Leg.TILT]));
        }
    }

    private double time(Kind kind, double otherwise) {
        for (DumpEvent h : happenings) {
            if (h.kind() == kind) {
                return h.time();
            }
        }
        return otherwise;
    }

    private Moment at(Leg.State state, Moment.Phase phase) {
        return new Leg(machine, mechanism, effort, script.up(), phase).moment(state.time(), state.y());
    }

    private Cycle cycle(Leg.State end, double raise, double empty, double lower, double stuckAt, Leg.State begin) {
        double stalledAt = Double.NaN;
        for (DumpEvent h : happenings) {
            stalledAt = h.kind() == Kind.STALLED && Double.isNaN(stalledAt) ? h.tilt() : stalledAt;
        }
        boolean complete = Double.isFinite(raise) && Double.isFinite(lower) && !(empty == Double.POSITIVE_INFINITY);
        double total = complete ? end.time() - begin.time() : Double.POSITIVE_INFINITY;
        double onTime = onTime();
        double rest = Double.isFinite(machine.duty()) ? onTime / machine.duty() : 0;
        double perHour = complete ? 3600 / Math.max(total, rest) : 0;
        double energy = machine.powerKnown() ? end.y()[Leg.ENERGY] : Double.NaN;
        happenings.sort((a, b) -> Double.compare(a.time(), b.time()));
        return new Cycle(
                script.load(),
                raise,
                empty,
                lower,
                total,
                stalledAt,
                stuckAt,
                perHour,
                Peaks.of(moments),
                new Spent(energy, end.y()[Leg.WORK], travel(), onTime),
                happenings,
                moments);
    }

    /** Time in which the drive takes power, or is turned by hand, s. */
    private double onTime() {
        double on = 0;
        for (int i = 1; i < moments.size(); i++) {
            Moment m = moments.get(i);
            boolean runs = m.phase() != Moment.Phase.HOLD && machine.runs(m.draw());
            on += runs ? m.time() - moments.get(i - 1).time() : 0;
        }
        return on;
    }

    private double travel() {
        double way = 0;
        for (int i = 1; i < moments.size(); i++) {
            way += Math.abs(moments.get(i).length() - moments.get(i - 1).length());
        }
        return way;
    }
}
