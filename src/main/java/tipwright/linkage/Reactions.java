// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import java.util.List;
import tipwright.geometry.Vec2;

/**
 * Forces in the joints.
 *
 * @param force of the actuator, N; positive pushes its pins apart
 * @param joints force of body b on body a at each joint, N [joint]
 * @param couples moment of body b on body a at each slide, N m, positive clockwise; 0 at pins [joint]
 */
public record Reactions(double force, List<Vec2> joints, List<Double> couples) {
    /** Copies the lists. */
    public Reactions {
        joints = List.copyOf(joints);
        couples = List.copyOf(couples);
    }
}
