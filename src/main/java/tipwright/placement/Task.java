// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.around.Mounts;
import tipwright.design.around.Wants;
import tipwright.design.drive.Drive;
import tipwright.design.drive.Straight;
import tipwright.design.drive.TiltRange;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;

/**
 * What is searched: the design with the tilt that is wanted, the grounds of the three pins, the actuators, and the loads.
 *
 * @param judges [actuator]
 */
record Task(
        Design design,
        Wants wants,
        Ground frame,
        Ground tank,
        Ground pivot,
        List<Judge> judges,
        TiltLoads loads,
        TiltLoads alongX,
        TiltLoads alongY) {
    static final double STEP = 0.1;

    /**
     * The task that a design sets.
     *
     * @throws CannotComputeException when it gives no zones, or its drive is not a straight one
     */
    static Task of(Design given) throws CannotComputeException {
        Mounts mounts = mounts(given);
        Wants wants = mounts.wants();
        Design design = tilted(given, mounts);
        Straight straight = TiltLoads.straight(design);
        List<ListedActuator> listed = listed(design, mounts);
        TiltLoads loads = TiltLoads.of(design);
        boolean moves = mounts.zone(Skeleton.PIVOT) != null;
        Double time = wants.time();
        List<Judge> judges = listed.stream()
                .map(a -> new Judge(design, a, loads, time == null ? Double.POSITIVE_INFINITY : time))
                .toList();
        Vec2 at = design.pivot().at();
        return new Task(
                design,
                wants,
                new Ground(mounts.zone(Drive.FRAME_PIN), straight.framePin(), mounts.keepOuts(), wants.clearance()),
                new Ground(mounts.zone(Drive.TANK_PIN), straight.tankPin(), mounts.keepOuts(), wants.clearance()),
                new Ground(mounts.zone(Skeleton.PIVOT), at, mounts.keepOuts(), wants.clearance()),
                judges,
                loads,
                moves ? moved(design, new Vec2(STEP, 0)) : loads,
                moves ? moved(design, new Vec2(0, STEP)) : loads);
    }

    static Mounts mounts(Design given) throws CannotComputeException {
        Mounts mounts = given.mounts();
        if (mounts == null) {
            String how = given.drive() instanceof Straight
                    ? "'frame-pin:' and 'tank-pin:' zones, see the example silt-trailer"
                    : "'places:', a zone for each pin that may move (copy it from the example crank-cart)";
            throw new CannotComputeException(
                    given.name() + ": say where each pin may go: add a section 'mounts:' with " + how);
        }
        return mounts;
    }

    /** The design with the tilt that is wanted of it. */
    static Design tilted(Design given, Mounts mounts) {
        Double tilt = mounts.wants().tilt();
        return tilt == null
                ? given
                : given.withTilt(
                        new TiltRange(given.tilt().from(), tilt, given.tilt().step()));
    }

    /** The actuators to choose from: the one that is drawn where none are listed. */
    static List<ListedActuator> listed(Design design, Mounts mounts) {
        return mounts.actuators().isEmpty()
                ? List.of(new ListedActuator(
                        "as drawn", design.drive().actuators().get(0).actuator()))
                : mounts.actuators();
    }

    static TiltLoads moved(Design design, Vec2 by) throws CannotComputeException {
        Vec2 to = design.pivot().at().plus(by);
        return TiltLoads.of(design.withPivot(design.pivot().movedTo(to)));
    }

    /** The loads with the pivot somewhere, m. */
    TiltLoads loadsAt(Vec2 place) {
        Vec2 by = place.minus(loads.pivot());
        return by.norm() == 0 ? loads : loads.towards(place, alongX, alongY, by.x() / STEP, by.y() / STEP);
    }

    /** The judges for loads with the pivot elsewhere. */
    List<Judge> judgesFor(TiltLoads there) {
        Double time = wants.time();
        return there.pivot().equals(loads.pivot())
                ? judges
                : judges.stream()
                        .map(j -> j.withLoads(there, time == null ? Double.POSITIVE_INFINITY : time))
                        .toList();
    }

    /** The coarsest grid step that still gives no more than a number of candidates, m. */
    double step(long candidates) {
        double step = 0.2;
        while (step > 0.001 && count(step * 0.93) <= candidates) {
            step *= 0.93;
        }
        return step;
    }

    private double count(double step) {
        return (double) frame.places(step).size()
                * tank.places(step).size()
                * pivot.places(Math.max(2 * step, 0.01)).size();
    }
}
