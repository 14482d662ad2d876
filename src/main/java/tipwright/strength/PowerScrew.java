// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/**
 * A screw that turns and moves a load along.
 *
 * <p>Source: R. Budynas and K. Nisbett, Shigley's Mechanical Engineering Design, 8-2 (from memory).
 *
 * @param diameter mean diameter of the thread, m
 * @param lead how far the nut moves for one turn, m
 * @param friction coefficient at the thread
 * @param flank half of the thread's angle, rad: 0 square, 15 deg trapezoidal (metric), 14.5 deg Acme
 * @param collar coefficient of friction at the thrust collar times its mean diameter, m; 0 on a ball bearing
 */
public record PowerScrew(double diameter, double lead, double friction, double flank, double collar) {
    /** @throws OutOfRangeException outside the range of the rule */
    public PowerScrew {
        Precondition.positive("diameter", diameter);
        Precondition.positive("lead", lead);
        Precondition.within("friction", Kind.RATIO, friction, 0, 1);
        Precondition.within("the flank's angle", Kind.ANGLE, flank, 0, Math.toRadians(30));
        Precondition.notNegative("collar", collar);
        if (friction / Math.cos(flank) * lead >= Math.PI * diameter) {
            throw new OutOfRangeException(Text.words("the thread is too steep to be turned at this friction"));
        }
    }

    private double slope() {
        return lead / (Math.PI * diameter);
    }

    private double grip() {
        return friction / Math.cos(flank);
    }

    /** Torque that moves a load against its force, N m. */
    public double raising(double load) {
        return load * (diameter / 2 * (slope() + grip()) / (1 - grip() * slope()) + collar / 2);
    }

    /** Torque that moves a load the way it presses, N m; below 0 the load turns the screw by itself. */
    public double lowering(double load) {
        return load * (diameter / 2 * (grip() - slope()) / (1 + grip() * slope()) + collar / 2);
    }

    /** Work out over work in when a load is moved against its force. */
    public double efficiency() {
        return lead / (2 * Math.PI * raising(1));
    }

    /** Torque out over the torque without friction when the load turns the screw; 0 if it does not. */
    public double backEfficiency() {
        return Math.max(0, -lowering(1) * 2 * Math.PI / lead);
    }

    /**
     * Whether a load turns the screw by itself, so that it takes a brake to hold: without a collar, tan(lead angle) > friction / cos(flank).
     * Shaking lowers friction: a screw near the limit does not hold for sure.
     */
    public boolean backDrives() {
        return lowering(1) < 0;
    }
}
