// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Where a body of the linkage is: a stowed point p of it is at shift + R(turn) p.
 *
 * @param turn rad, positive clockwise in the side view
 * @param shift m
 */
public record DrawnPosition(double turn, Vec2 shift) {
    /** As the analysis tells it. */
    static DrawnPosition of(tipwright.analysis.BodyPosition body) {
        return new DrawnPosition(body.turn(), body.origin());
    }

    /** Where a stowed point is, m. */
    public Vec2 of(Vec2 stowed) {
        return stowed.tilted(turn).plus(shift);
    }

    /** Where a stowed point is, m. */
    public Vec3 of(Vec3 stowed) {
        Vec2 flat = of(stowed.xy());
        return new Vec3(flat.x(), flat.y(), stowed.z());
    }

    /** The same as the analysis tells it. */
    tipwright.analysis.BodyPosition asBody() {
        return new tipwright.analysis.BodyPosition("", shift, turn);
    }
}
