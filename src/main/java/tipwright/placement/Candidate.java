// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import tipwright.design.Design;
import tipwright.design.actuator.ListedActuator;
import tipwright.geometry.Vec2;

/**
 * Mounts and actuator that meet what is wanted.
 *
 * @param seats the places that may be moved; all others are where they are drawn
 * @param utilisation largest of all that depends on the mounts
 * @param governing where that is
 * @param force largest of one actuator, N
 * @param time to raise against the worst load at each tilt, s; infinite when not known
 * @param price of all actuators; infinite when not known
 */
public record Candidate(
        List<PlacedPoint> seats,
        ListedActuator actuator,
        double utilisation,
        Limit governing,
        double force,
        double time,
        double price) {
    /** Copies the list. */
    public Candidate {
        seats = List.copyOf(seats);
    }

    /** Where a place is put, m, by its name in the design file. */
    public Vec2 place(String name) {
        for (PlacedPoint seat : seats) {
            if (seat.name().equals(name)) {
                return seat.at();
            }
        }
        throw new IllegalArgumentException("no place of this name may be moved: " + name);
    }

    /** The design with the mounts here. */
    public Design in(Design design) {
        return PlacedPoint.moved(design, seats, actuator.actuator());
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

    boolean betterThan(Candidate other, Aim aim) {
        double a = cost(aim);
        double b = other.cost(aim);
        return a < b || (a == b && utilisation < other.utilisation);
    }

    /** Whether it is nowhere worse and somewhere better. */
    boolean beats(Candidate other) {
        boolean better = false;
        for (Aim aim : Aim.values()) {
            if (cost(aim) > other.cost(aim)) {
                return false;
            }
            better |= cost(aim) < other.cost(aim);
        }
        return better;
    }

    /** Whether it is the same actuator with every place nearer than so many m. */
    boolean near(Candidate other, double apart) {
        return actuator.name().equals(other.actuator.name()) && near(Task.places(other), apart);
    }

    /** Whether every place is nearer to these than so many m. */
    boolean near(List<Vec2> at, double apart) {
        for (int i = 0; i < seats.size(); i++) {
            if (!(seats.get(i).at().minus(at.get(i)).norm() < apart)) {
                return false;
            }
        }
        return true;
    }
}
