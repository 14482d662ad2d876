// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.load.Contents;
import tipwright.time.DumpEvent.Kind;

/**
 * The normal dump of a design in thousands of equal steps of the classic Runge-Kutta method; an event lies where a straight line
 * between two steps passes zero. For designs whose actuators reach the full tilt. Source: Runge and Kutta's method of fourth order,
 * any text on numerical methods (from memory).
 */
final class SmallSteps {
    private static final int STEPS = 2000;
    /** After so many it has not drained. */
    private static final int PATIENCE = 30_000;

    private final Machine machine;
    private final LinkageCurve curve;
    private final Liquid liquid;
    private final double end;
    private final double target;
    private final double drained;
    private final List<Double> opens;
    private final double step;
    private final double hold;
    private final List<DumpEvent> happenings = new ArrayList<>();
    private boolean stillDraining;
    private boolean done;
    private double time;
    private double[] y = new double[Leg.SIZE];

    SmallSteps(Analysis analysis) throws CannotComputeException, Machines.MissingException {
        Design design = analysis.design();
        machine = Machines.of(design);
        curve = LinkageCurve.of(analysis);
        liquid = new Liquid(
                design,
                new Contents(design),
                curve,
                new Outlet(design.tank(), design.slurry().mixtureDensity()));
        end = curve.grid().last();
        drained = design.dump().drained();
        hold = design.dump().hold();
        target = liquid.lip(end) + drained * liquid.start();
        opens = design.tank().openings().stream().map(Opening::opensAt).toList();
        double travel = Math.abs(curve.length(end) - curve.length(curve.grid().first()));
        step = travel / machine.freeSpeed() / STEPS;
        y[Leg.TILT] = curve.grid().first();
        y[Leg.VOLUME] = liquid.start();
        run();
    }

    /** Length of a step, s. */
    double step() {
        return step;
    }

    /** Whether it was given up before it had drained. */
    boolean stillDraining() {
        return stillDraining;
    }

    List<DumpEvent> happenings() {
        return happenings;
    }

    /** One value that is followed. */
    private record Followed(ToDoubleFunction<double[]> value, boolean rising, Kind kind, boolean last) {}

    private void run() {
        if (!up()) {
            return;
        }
        boolean runsOut = liquid.start() > target;
        if (runsOut && y[Leg.VOLUME] > target) {
            drain();
        } else if (runsOut) {
            note(Kind.DRAINED, time, y);
        }
        if (stillDraining) {
            return;
        }
        time += hold;
        down();
    }

    private boolean up() {
        Leg leg = leg(Moment.Phase.RAISE, liquid);
        boolean runsOut = liquid.start() > target;
        ToDoubleFunction<double[]> slack = v -> Math.max(
                leg.pace(v) - CycleTimer.STALL,
                runsOut ? liquid.excess(v[Leg.TILT], v[Leg.VOLUME]) / liquid.start() - drained : -1);
        if (slack.applyAsDouble(y) <= 0) {
            note(Kind.STALLED, 0, y);
            return false;
        }
        ToDoubleFunction<double[]> lip = v -> liquid.excess(v[Leg.TILT], v[Leg.VOLUME]) - 1e-6 * liquid.start();
        if (runsOut && lip.applyAsDouble(y) > 0) {
            note(Kind.LIP, 0, y);
        }
        List<Followed> all = new ArrayList<>();
        for (double at : opens) {
            if (at > y[Leg.TILT] && at < end) {
                all.add(new Followed(v -> v[Leg.TILT] - at, true, Kind.OPENS, false));
            }
        }
        all.add(new Followed(v -> leg.pace(v) - CycleTimer.STALL, false, Kind.STALLED, false));
        all.add(new Followed(slack, false, Kind.STALLED, true));
        all.add(new Followed(v -> v[Leg.DUTY] - 1, true, Kind.DUTY, false));
        all.add(new Followed(v -> v[Leg.TILT] - end, true, Kind.FULL_TILT, true));
        if (runsOut) {
            all.add(new Followed(lip, true, Kind.LIP, false));
            all.add(new Followed(v -> v[Leg.VOLUME] - target, false, Kind.DRAINED, false));
        }
        follow(leg, all, Integer.MAX_VALUE);
        return y[Leg.TILT] >= end - 1e-6;
    }

    private void drain() {
        Leg leg = leg(Moment.Phase.HOLD, liquid);
        if (leg.now(y).standing().discharge() > 0) {
            follow(leg, List.of(new Followed(v -> v[Leg.VOLUME] - target, false, Kind.DRAINED, true)), PATIENCE);
            stillDraining = !done;
        }
    }

    private void down() {
        Leg leg = leg(Moment.Phase.LOWER, liquid.lowering(y[Leg.VOLUME]));
        if (leg.pace(y) <= CycleTimer.STALL) {
            note(Kind.STUCK, time, y);
            return;
        }
        double first = curve.grid().first();
        follow(
                leg,
                List.of(
                        new Followed(v -> leg.pace(v) - CycleTimer.STALL, false, Kind.STUCK, true),
                        new Followed(v -> v[Leg.DUTY] - 1, true, Kind.DUTY, false),
                        new Followed(v -> v[Leg.TILT] - first, false, Kind.BACK, true)),
                Integer.MAX_VALUE);
    }

    private Leg leg(Moment.Phase phase, Load load) {
        return new Leg(machine, curve, new Effort(Long.MAX_VALUE), load, phase);
    }

    private void follow(Leg leg, List<Followed> all, int most) {
        done = false;
        for (int i = 0; i < most && !done; i++) {
            double[] next = next(leg, y);
            double share = 1;
            for (Followed f : all) {
                double before = f.value().applyAsDouble(y);
                double after = f.value().applyAsDouble(next);
                if (f.rising() ? before < 0 && after >= 0 : before > 0 && after <= 0) {
                    double at = before / (before - after);
                    note(f.kind(), time + at * step, between(y, next, at));
                    if (f.last()) {
                        done = true;
                        share = Math.min(share, at);
                    }
                }
            }
            y = between(y, next, share);
            time += share * step;
            if (y[Leg.VOLUME] <= 1e-6 * liquid.start()) {
                liquid.runDry();
            }
        }
    }

    private double[] next(Leg leg, double[] from) {
        double[] a = leg.computeDerivatives(0, from);
        double[] b = leg.computeDerivatives(0, plus(from, a, step / 2));
        double[] c = leg.computeDerivatives(0, plus(from, b, step / 2));
        double[] d = leg.computeDerivatives(0, plus(from, c, step));
        double[] next = from.clone();
        for (int i = 0; i < next.length; i++) {
            next[i] += step / 6 * (a[i] + 2 * b[i] + 2 * c[i] + d[i]);
        }
        return next;
    }

    private static double[] plus(double[] from, double[] rate, double by) {
        double[] sum = from.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += by * rate[i];
        }
        return sum;
    }

    private static double[] between(double[] from, double[] to, double share) {
        double[] mix = from.clone();
        for (int i = 0; i < mix.length; i++) {
            mix[i] += share * (to[i] - from[i]);
        }
        return mix;
    }

    private void note(Kind kind, double at, double[] state) {
        if (kind == Kind.OPENS || happenings.stream().noneMatch(h -> h.kind() == kind)) {
            happenings.add(new DumpEvent(kind, at, state[Leg.TILT]));
        }
    }
}
