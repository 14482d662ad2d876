// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.ActuatorSpeed;
import tipwright.analysis.Row;
import tipwright.design.actuator.PlacedActuator;
import tipwright.load.Gravity;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.time.Cycle;
import tipwright.time.CycleTimer;
import tipwright.time.Moment;
import tipwright.time.Timing;

/**
 * A dump in time, to be played.
 *
 * @param spots in order of time
 * @param told where the times come from, as a sentence for the window
 */
public record Timeline(List<Spot> spots, Text told) {
    /** Speed of an actuator that tells none, m/s. */
    private static final double USUAL = 0.010;

    /** Copies the list. */
    public Timeline {
        spots = List.copyOf(spots);
    }

    /**
     * One moment.
     *
     * @param time s from the start
     * @param tilt rad
     * @param volume in the tank, m3; NaN: as the load case has it at this tilt
     * @param flow out of the tank, m3/s
     * @param motion 1: it tips, 0: it stands, -1: it goes back
     * @param level of the surface against gravity in the tank's axes, less what a vacuum takes off, m; NaN where it was not timed
     */
    public record Spot(double time, double tilt, double volume, double flow, int motion, double level) {
        /** Where the level was not timed. */
        public Spot(double time, double tilt, double volume, double flow, int motion) {
            this(time, tilt, volume, flow, motion, Double.NaN);
        }

        private Spot towards(Spot next, double s) {
            return new Spot(
                    mix(time, next.time, s),
                    mix(tilt, next.tilt, s),
                    mix(volume, next.volume, s),
                    mix(flow, next.flow, s),
                    s < 1 ? motion : next.motion,
                    mix(level, next.level, s));
        }

        private static double mix(double a, double b, double s) {
            return (1 - s) * a + s * b;
        }
    }

    /** The dump of a load case: as timed where that is known; else at the actuator's speed under its load, up and back. */
    public static Timeline of(DumpStates dump, String loadCase) {
        Timing timing = CycleTimer.time(dump.analysis());
        Cycle cycle = timing.of(loadCase);
        if (cycle != null && cycle.moments().size() > 1) {
            return timed(dump, cycle);
        }
        String why = timing.missing() == null ? "" : ": " + timing.missing();
        return paced(dump, loadCase, why);
    }

    private static Timeline timed(DumpStates dump, Cycle cycle) {
        boolean liquid = cycle.load().equals("draining") || cycle.load().equals("held");
        double density = dump.design().slurry().mixtureDensity();
        List<Spot> spots = new ArrayList<>();
        for (Moment m : cycle.moments()) {
            if (m.tilt() > dump.last() + 1e-9
                    || (!spots.isEmpty()
                            && m.time() <= spots.get(spots.size() - 1).time())) {
                continue;
            }
            int motion = m.phase() == Moment.Phase.RAISE ? 1 : m.phase() == Moment.Phase.HOLD ? 0 : -1;
            double level = m.level() - m.vacuum() / (density * Gravity.G);
            double volume = liquid ? m.volume() : Double.NaN;
            spots.add(new Spot(m.time(), m.tilt(), volume, m.discharge(), motion, level));
        }
        return new Timeline(spots, Text.words(cycle.complete() ? "in real time" : "real time, up to where it stalls"));
    }

    private static Timeline paced(DumpStates dump, String loadCase, String why) {
        List<Row> rows = dump.loadCase(loadCase).rows();
        List<PlacedActuator> actuators = dump.design().drive().actuators();
        List<Spot> spots = new ArrayList<>();
        boolean known = true;
        double time = 0;
        for (int i = 0; i < rows.size(); i++) {
            double flow = 0;
            if (i > 0) {
                Row before = rows.get(i - 1);
                double way = rows.get(i).pose().length() - before.pose().length();
                double load = Math.signum(way) * rows.get(i).raise().force() / actuators.size();
                Double speed = ActuatorSpeed.at(
                        actuators.get(0).actuator(), rows.get(i).pose().length(), load, way > 0);
                known &= speed != null && speed > 0;
                double span = Math.max(1e-3, Math.abs(way) / (speed == null || !(speed > 0) ? USUAL : speed));
                time += span;
                flow = Math.max(0, before.load().volume() - rows.get(i).load().volume()) / span;
            }
            spots.add(new Spot(time, rows.get(i).tilt(), Double.NaN, flow, 1));
        }
        double up = time;
        for (int i = rows.size() - 2; i >= 0; i--) {
            spots.add(new Spot(2 * up - spots.get(i).time(), rows.get(i).tilt(), Double.NaN, 0, -1));
        }
        Text told = known
                ? Text.words("at the actuator's speed under this load")
                : Text.words("at a constant ")
                        .plus(Text.amount(USUAL, Kind.SPEED))
                        .plus(Text.words(" of the actuator" + why));
        return new Timeline(spots, told);
    }

    /** Time for all of it, s. */
    public double total() {
        return spots.get(spots.size() - 1).time();
    }

    /** The moment at a time, s; held to the range. */
    public Spot at(double time) {
        Spot before = spots.get(0);
        for (Spot next : spots) {
            if (next.time() >= time) {
                double span = next.time() - before.time();
                return span > 0 ? before.towards(next, Math.max(0, (time - before.time()) / span)) : next;
            }
            before = next;
        }
        return before;
    }

    /** The moment at which a tilt is reached on the way up, rad; null when it never is. */
    public @Nullable Spot rising(double tilt) {
        Spot before = spots.get(0);
        for (Spot next : spots) {
            if (next.motion() < 0) {
                break;
            }
            if (next.tilt() >= tilt - 1e-9) {
                double span = next.tilt() - before.tilt();
                return span > 0 ? before.towards(next, Math.max(0, Math.min(1, (tilt - before.tilt()) / span))) : next;
            }
            before = next;
        }
        return null;
    }

    /**
     * Moments of the way up that look evenly apart: half by how far it tips, half by how much has run out.
     *
     * @param count 2 or more; the first is the start, the last the top
     */
    public List<Spot> evenly(int count) {
        List<Double> gone = new ArrayList<>();
        List<Double> times = new ArrayList<>();
        double span = Math.max(1e-9, at(top()).tilt() - spots.get(0).tilt());
        double full = Math.max(1e-12, spots.get(0).volume());
        double sum = 0;
        for (int i = 0; i < spots.size() && spots.get(i).motion() >= 0; i++) {
            Spot a = spots.get(Math.max(0, i - 1));
            Spot b = spots.get(i);
            double out = Math.abs(b.volume() - a.volume()) / full;
            sum += Math.abs(b.tilt() - a.tilt()) / span + (Double.isNaN(out) ? 0 : out);
            gone.add(sum);
            times.add(b.time());
        }
        List<Spot> all = new ArrayList<>();
        int k = 1;
        for (int i = 0; i < count; i++) {
            double goal = sum * i / (count - 1);
            while (k < gone.size() - 1 && gone.get(k) < goal) {
                k++;
            }
            double step = gone.get(k) - gone.get(k - 1);
            double s = step > 0 ? Math.max(0, Math.min(1, (goal - gone.get(k - 1)) / step)) : 1;
            all.add(at((1 - s) * times.get(k - 1) + s * times.get(k)));
        }
        return all;
    }

    /** The time at which the way up ends, s. */
    public double top() {
        double top = 0;
        for (Spot spot : spots) {
            if (spot.motion() >= 0) {
                top = spot.time();
            }
        }
        return top;
    }
}
