// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Forces at one tilt.
 *
 * @param force of all actuators together, N; positive pushes (rod in compression), negative pulls
 * @param pivot force of the tank on its bearings in the side view, N
 * @param bearings force of the tank on each bearing, N [bearing]
 */
public record Balance(double force, Vec2 pivot, List<Vec3> bearings) {}
