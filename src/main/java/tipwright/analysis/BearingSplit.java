// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.Pivot;
import tipwright.design.Support;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Shares the load between two bearings that are not in the plane of the actuator and the centroid.
 *
 * <p>Balance of forces and of moments about x and y at the pivot axis: with force F and moment M of all else on the tank,
 * R2y = (Mx + z1 Fy) / (z2 - z1), R2x = (z1 Fx - My) / (z2 - z1), R1 = -F - R2; the force along the axis goes to the locating
 * bearing. Source: elementary spatial statics.
 */
final class BearingSplit {
    private final double z1;
    private final double z2;
    private final int locating;
    private final Vec3 axis;

    BearingSplit(Pivot pivot) {
        List<Support> bearings = pivot.bearings();
        z1 = bearings.get(0).z();
        z2 = bearings.get(1).z();
        locating = bearings.get(1).locating() && !bearings.get(0).locating() ? 1 : 0;
        axis = new Vec3(pivot.at().x(), pivot.at().y(), 0);
    }

    /**
     * Force of the tank on each bearing, N.
     *
     * @param pivot planar force of the tank on both bearings together, N
     * @param weight on the tank, N
     * @param centroid in space, m
     * @param drive where the force of the drive acts on the tank: in space, at its mean z, m
     */
    List<Vec3> loads(Vec2 pivot, Vec3 weight, Vec3 centroid, Vec3 drive) {
        Vec3 push = new Vec3(pivot.x() - weight.x(), pivot.y() - weight.y(), 0);
        Vec3 force = weight.plus(push);
        Vec3 moment = centroid.minus(axis).cross(weight).plus(drive.minus(axis).cross(push));
        double span = z2 - z1;
        double x2 = (z1 * force.x() - moment.y()) / span;
        double y2 = (moment.x() + z1 * force.y()) / span;
        List<Vec3> loads = new ArrayList<>(2);
        loads.add(new Vec3(force.x() + x2, force.y() + y2, locating == 0 ? force.z() : 0));
        loads.add(new Vec3(-x2, -y2, locating == 1 ? force.z() : 0));
        return loads;
    }
}
