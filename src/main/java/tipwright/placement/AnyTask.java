// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.around.Mounts;
import tipwright.design.around.Wants;
import tipwright.design.around.Zone;
import tipwright.design.drive.Drive;
import tipwright.geometry.Vec2;

/**
 * What is searched on any mechanism: the design with the tilt that is wanted, the grounds of the places that have a zone, and the
 * actuators.
 *
 * @param names of the places, as in the design file
 * @param grounds [place]
 */
record AnyTask(Design design, Wants wants, List<String> names, List<Ground> grounds, List<ListedActuator> listed) {

    /**
     * The task that a design sets.
     *
     * @throws CannotComputeException when it gives no zones, or nothing is left of one
     */
    static AnyTask of(Design given) throws CannotComputeException {
        Mounts mounts = Task.mounts(given);
        Design design = Task.tilted(given, mounts);
        Map<String, Ground> free = new LinkedHashMap<>();
        for (Map.Entry<String, Vec2> place :
                design.drive().places(design.pivot().at()).entrySet()) {
            Zone zone = mounts.zone(place.getKey());
            if (zone != null) {
                free.put(
                        place.getKey(),
                        new Ground(
                                zone,
                                place.getValue(),
                                mounts.keepOuts(),
                                mounts.wants().clearance()));
            }
        }
        if (free.isEmpty()) {
            throw new CannotComputeException(given.name()
                    + ": mounts: gives no zone, so there is nothing to search; add 'places:' such as '- {pin: frame-pin,"
                    + " zone: {outline: [...]}}', see the example crank-cart");
        }
        return new AnyTask(
                design,
                mounts.wants(),
                List.copyOf(free.keySet()),
                List.copyOf(free.values()),
                Task.listed(design, mounts));
    }

    /** The design as drawn, all of it but the frame pin fixed. */
    static AnyTask framePin(Design design, Ground ground) {
        Mounts mounts = design.mounts();
        return new AnyTask(
                design,
                mounts == null ? new Wants(null, null, 1, 0, 0) : mounts.wants(),
                List.of(Drive.FRAME_PIN),
                List.of(ground),
                List.of(new ListedActuator(
                        "as drawn", design.drive().actuators().get(0).actuator())));
    }

    /** The places put somewhere, as a spot tells them. */
    List<Seat> seats(List<Vec2> at) {
        List<Seat> seats = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
            seats.add(new Seat(names.get(i), grounds.get(i).drawn(), at.get(i)));
        }
        return seats;
    }

    /** How far some places are outside what is allowed, m; 0: allowed. */
    double outside(List<Vec2> at) {
        double sum = 0;
        for (int i = 0; i < at.size(); i++) {
            sum += grounds.get(i).outside(at.get(i));
        }
        return sum;
    }

    /** Price of all actuators of a kind; infinite when not known. */
    double price(int actuator) {
        Double price = listed.get(actuator).actuator().price();
        return price == null
                ? Double.POSITIVE_INFINITY
                : price * design.drive().actuators().size();
    }
}
