// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

/** All actuators of a design with their supply. */
interface Machine {
    /**
     * What it does against a force.
     *
     * @param against force of all actuators against the motion of the rod, N; negative: it helps
     * @param out whether the rod goes out
     * @param raising whether the tank tips; else it comes back
     */
    DriveState draw(double against, boolean out, boolean raising);

    /** As above where the actuators have a length in m, pin to pin: it counts for stages. */
    default DriveState draw(double length, double against, boolean out, boolean raising) {
        return draw(against, out, raising);
    }

    /** A speed to measure others by: free of load, m/s. */
    double freeSpeed();

    /** Rated share of on-time, 0 to 1; infinite when none is stated. */
    double duty();

    /** How fast it heats at this draw, as a multiple of heating at its rating; 0 when the drive rests. */
    double heating(DriveState draw);

    /** Whether the drive is switched on at this draw; a hand is not counted. */
    boolean runs(DriveState draw);

    /** Whether the power drawn is known. */
    boolean powerKnown();
}
