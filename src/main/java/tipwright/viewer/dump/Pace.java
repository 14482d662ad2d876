// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.ActuatorSpeed;
import tipwright.analysis.Analysis;
import tipwright.analysis.Row;
import tipwright.design.PlacedActuator;

/**
 * When each tilt is reached.
 *
 * @param tilts rad, rising
 * @param seconds s, from the start [tilt]
 * @param told in words, where the times come from
 */
@SuppressWarnings("ArrayRecordComponent")
public record Pace(double[] tilts, double[] seconds, String told) {
    private static final double USUAL = 0.010;

    /** The pace of one load case: the actuator's speed under its load; without data a constant 10 mm/s. */
    public static Pace of(Dump dump, String loadCase) {
        Analysis analysis = dump.analysis();
        List<Row> rows = dump.loadCase(loadCase).rows();
        List<PlacedActuator> actuators = analysis.design().drive().actuators();
        double[] tilts = rows.stream().mapToDouble(Row::tilt).toArray();
        List<Double> seconds = new ArrayList<>();
        seconds.add(0.0);
        boolean known = true;
        boolean stalls = false;
        for (int i = 1; i < tilts.length; i++) {
            double way = rows.get(i).pose().length() - rows.get(i - 1).pose().length();
            double sense = Math.signum(way);
            double load = sense * rows.get(i).raise().force() / actuators.size();
            double length = rows.get(i).pose().length() - way / 2;
            Double speed = ActuatorSpeed.at(actuators.get(0).actuator(), length, load, sense > 0);
            known &= speed != null;
            boolean stands = speed != null && !(speed > 0);
            stalls |= stands;
            double v = speed == null || stands ? USUAL : speed;
            seconds.add(seconds.get(i - 1) + Math.max(1e-3, Math.abs(way) / v));
        }
        return new Pace(tilts, seconds.stream().mapToDouble(Double::doubleValue).toArray(), told(known, stalls));
    }

    private static String told(boolean known, boolean stalls) {
        if (!known) {
            return "at a constant 10 mm/s: the actuator's speed is not given";
        }
        return stalls
                ? "the actuator's speed under this load; where it would stall, 10 mm/s"
                : "the actuator's speed under this load";
    }

    /** Time for the whole way, s. */
    public double total() {
        return seconds[seconds.length - 1];
    }

    /** The tilt at a time, rad. */
    public double tilt(double time) {
        return between(seconds, tilts, time);
    }

    /** The time at which a tilt is reached, s. */
    public double time(double tilt) {
        return between(tilts, seconds, tilt);
    }

    /** How fast it tips at a tilt, rad/s. */
    public double speed(double tilt) {
        int i = 1;
        while (i + 1 < tilts.length && tilts[i] < tilt) {
            i++;
        }
        return tilts.length < 2 ? 0 : (tilts[i] - tilts[i - 1]) / (seconds[i] - seconds[i - 1]);
    }

    private static double between(double[] x, double[] y, double at) {
        if (at <= x[0] || x.length < 2) {
            return y[0];
        }
        int i = 1;
        while (i + 1 < x.length && x[i] < at) {
            i++;
        }
        double s = Math.min(1, (at - x[i - 1]) / (x[i] - x[i - 1]));
        return y[i - 1] + s * (y[i] - y[i - 1]);
    }
}
