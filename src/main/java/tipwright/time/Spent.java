// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

/**
 * What a dump takes.
 *
 * @param energy drawn from the supply, J; NaN when not known
 * @param work done on the load by the actuators, friction of pins and bearings included, J; what the load gives back on the way is
 *     not taken off
 * @param travel of the rod out and back, m
 * @param onTime of the drive, s
 */
public record Spent(double energy, double work, double travel, double onTime) {
    /** Not even begun. */
    static final Spent NOTHING = new Spent(0, 0, 0, 0);
}
