// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import tipwright.geometry.Vec2;

/**
 * Where a body is at one tilt.
 *
 * @param body its name
 * @param origin where the datum would be if it moved with the body, m
 * @param turn rad, positive clockwise in the side view
 */
public record BodyPosition(String body, Vec2 origin, double turn) {
    /** Where a point of the body is, m; the point as stowed. */
    public Vec2 place(Vec2 stowed) {
        return stowed.tilted(turn).plus(origin);
    }
}
