// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import tipwright.design.Design;
import tipwright.design.Drive;
import tipwright.design.ListedActuator;
import tipwright.design.Straight;
import tipwright.geometry.Vec2;

/**
 * Mounts and actuator that meet what is wanted.
 *
 * @param pivot m
 * @param framePin m
 * @param tankPin m, tank stowed
 * @param utilisation largest of all that depends on the mounts
 * @param governing where that is
 * @param force largest of one actuator, N
 * @param time to raise against the worst load at each tilt, s; infinite when not known
 * @param price of all actuators; infinite when not known
 */
public record Spot(
        Vec2 pivot,
        Vec2 framePin,
        Vec2 tankPin,
        ListedActuator actuator,
        double utilisation,
        Limit governing,
        double force,
        double time,
        double price) {

    /** The design with the mounts here. */
    public Design in(Design design) {
        Drive drive = design.drive();
        if (drive instanceof Straight straight) {
            drive = straight.movedTo(framePin, tankPin).with(actuator.actuator());
        }
        return design.withPivot(design.pivot().movedTo(pivot)).withDrive(drive);
    }

    /** What counts for an aim; the utilisation decides between equals. */
    double cost(Aim aim) {
        return switch (aim) {
            case UTILISATION -> utilisation;
            case FORCE -> force;
            case TIME -> time;
            case PRICE -> price;
        };
    }

    boolean betterThan(Spot other, Aim aim) {
        double a = cost(aim);
        double b = other.cost(aim);
        return a < b || (a == b && utilisation < other.utilisation);
    }

    /** Whether it is nowhere worse and somewhere better. */
    boolean beats(Spot other) {
        boolean better = false;
        for (Aim aim : Aim.values()) {
            if (cost(aim) > other.cost(aim)) {
                return false;
            }
            better |= cost(aim) < other.cost(aim);
        }
        return better;
    }

    /** Whether it is the same actuator with every pin nearer than so many m. */
    boolean near(Spot other, double apart) {
        return actuator.name().equals(other.actuator.name())
                && framePin.minus(other.framePin).norm() < apart
                && tankPin.minus(other.tankPin).norm() < apart
                && pivot.minus(other.pivot).norm() < apart;
    }
}
