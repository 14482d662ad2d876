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
import tipwright.design.drive.TiltRange;
import tipwright.geometry.Vec2;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/**
 * What is searched: the design with the tilt that is wanted, the grounds of the places that have a zone, and the actuators.
 *
 * @param names of the places, as in the design file
 * @param grounds [place]
 * @param mark the answers are on whole marks of the tape, this far apart, m
 */
record Task(
        Design design,
        Wants wants,
        List<String> names,
        List<PinRegion> grounds,
        List<ListedActuator> listed,
        double mark) {
    /** Finer than any tape, m. */
    private static final double FINE = 1e-4;

    /**
     * The task that a design sets.
     *
     * @throws CannotComputeException when it gives no zones
     */
    static Task of(Design given) throws CannotComputeException {
        Mounts mounts = given.mounts();
        if (mounts == null) {
            throw new CannotComputeException(given.name()
                    + ": say where each pin may go: add a section 'mounts:' with "
                    + given.drive().zonesByExample());
        }
        Design design = tilted(given, mounts);
        Map<String, PinRegion> free = new LinkedHashMap<>();
        design.drive().places(design.pivot().at()).forEach((name, drawn) -> {
            Zone zone = mounts.zone(name);
            if (zone != null) {
                free.put(
                        name,
                        new PinRegion(
                                zone, drawn, mounts.keepOuts(), mounts.wants().clearance()));
            }
        });
        if (free.isEmpty()) {
            throw new CannotComputeException(given.name()
                    + ": mounts: gives no zone, so there is nothing to search; add 'places:' such as '- {pin: frame-pin,"
                    + " zone: {outline: [...]}}', see the example crank-cart");
        }
        return new Task(
                design,
                mounts.wants(),
                List.copyOf(free.keySet()),
                List.copyOf(free.values()),
                listed(design, mounts.actuators()),
                FINE);
    }

    /** The same with its answers on the marks of a tape. */
    Task onMarks(UnitSystem tape) {
        return new Task(design, wants, names, grounds, listed, Marks.step(tape));
    }

    /** The design as drawn, all of it but one place fixed. */
    static Task alone(Design design, String place, PinRegion ground) {
        Mounts mounts = design.mounts();
        return new Task(
                design,
                mounts == null ? new Wants(null, null, 1, 0, 0) : mounts.wants(),
                List.of(place),
                List.of(ground),
                listed(design, List.of()),
                FINE);
    }

    private static Design tilted(Design given, Mounts mounts) {
        Double tilt = mounts.wants().tilt();
        return tilt == null
                ? given
                : given.withTilt(
                        new TiltRange(given.tilt().from(), tilt, given.tilt().step()));
    }

    /** The actuators to choose from: the one that is drawn where none are listed. */
    private static List<ListedActuator> listed(Design design, List<ListedActuator> given) {
        return given.isEmpty()
                ? List.of(new ListedActuator(
                        "as drawn", design.drive().actuators().get(0).actuator()))
                : given;
    }

    /** The places put somewhere, as a candidate tells them. */
    List<PlacedPoint> seats(List<Vec2> at) {
        List<PlacedPoint> seats = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
            seats.add(new PlacedPoint(names.get(i), grounds.get(i).drawn(), at.get(i)));
        }
        return seats;
    }

    /** Where the places of a candidate are, m [place]. */
    static List<Vec2> places(Candidate candidate) {
        return candidate.seats().stream().map(PlacedPoint::at).toList();
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
