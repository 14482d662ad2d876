// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Forces at one tilt.
 *
 * @param force of all actuators together, N; positive pushes (rod in compression), negative pulls
 * @param pivot force of what the two bearings carry on them, in the side view, N
 * @param bearings force on each bearing, N [bearing]
 * @param drive force in the plane of the actuators on what the bearings carry, N
 * @param joints force of the second body on the first at each joint, N [joint of the mechanism]
 * @param couples moment of the second body on the first at each slide, N m, positive clockwise; 0 at pins [joint]
 */
public record Balance(
        double force, Vec2 pivot, List<Vec3> bearings, Vec2 drive, List<Vec2> joints, List<Double> couples) {}
