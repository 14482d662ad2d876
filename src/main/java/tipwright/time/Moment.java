// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import tipwright.analysis.MotionDirection;

/**
 * One moment of a dump.
 *
 * @param phase what goes on
 * @param time s from the start
 * @param tilt rad
 * @param length of the actuators, m
 * @param volume in the tank, m3
 * @param force of all actuators, with friction, N; positive pushes
 * @param discharge m3/s
 * @param vacuum Pa below the outside
 * @param level of the surface along the direction against gravity, in the tank's axes, m; NaN where it is not followed
 * @param draw what the drive does and takes
 * @param pace speed of the rod as a share of its free speed
 * @param duty share of the heat that the actuators may take in one stretch, 1: used up
 */
public record Moment(
        Phase phase,
        double time,
        double tilt,
        double length,
        double volume,
        double force,
        double discharge,
        double vacuum,
        double level,
        DriveState draw,
        double pace,
        double duty) {
    /** What goes on. */
    public enum Phase {
        RAISE,
        HOLD,
        LOWER;

        /** Which way the tank moves meanwhile. */
        public MotionDirection direction() {
            return switch (this) {
                case RAISE -> MotionDirection.RAISING;
                case HOLD -> MotionDirection.RESTING;
                case LOWER -> MotionDirection.LOWERING;
            };
        }
    }
}
