// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import tipwright.time.Cycle;
import tipwright.time.DriveState;
import tipwright.time.Moment;
import tipwright.time.Peaks;
import tipwright.time.Spent;
import tipwright.time.Timing;

/** Dumps in time with made-up moments, for tests of what checks make of them. */
public final class Dumps {
    /** Nothing is drawn. */
    public static final DriveState STILL = new DriveState(0, 0, 0, 0, 0, 0, 0);

    /** The time is not known, since the file does not give a speed. */
    public static final Timing UNKNOWN = new Timing(List.of(), "actuator.speed missing", false);

    private static final Peaks NO_PEAKS = new Peaks(0, 0, 0, 0, 0, 0, 0, 0);

    private Dumps() {}

    /** A moment of raising at which something runs out, in SI units. */
    public static Moment running(
            double time, double tilt, double volume, double discharge, double vacuum, double level) {
        return new Moment(Moment.Phase.RAISE, time, tilt, 1, volume, 0, discharge, vacuum, level, STILL, 1, 0);
    }

    /** A moment with what the drive does, in SI units. */
    public static Moment driven(Moment.Phase phase, double tilt, double force, DriveState draw) {
        return new Moment(phase, 0, tilt, 1, 0, force, 0, 0, Double.NaN, draw, 1, 0);
    }

    /** A dump that takes so much energy, J. */
    public static Cycle cycle(String load, double energy, Moment... moments) {
        return new Cycle(
                load,
                10,
                5,
                10,
                20,
                Double.NaN,
                Double.NaN,
                1,
                NO_PEAKS,
                new Spent(energy, 0, 0, 0),
                List.of(),
                List.of(moments));
    }

    /** All dumps, the normal one first. */
    public static Timing of(Cycle... cycles) {
        return new Timing(List.of(cycles), null, false);
    }

    /** The normal dump alone. */
    public static Timing draining(Moment... moments) {
        return of(cycle("draining", 0, moments));
    }
}
