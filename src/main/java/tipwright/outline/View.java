// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** From where the machine is seen. */
public enum View {
    /** Along the pivot axis: x, y. */
    SIDE,
    /** From above: x, z. */
    PLAN,
    /** From the dump end: z, y. */
    END;

    /** Where a point is in the view, m. */
    public Vec2 flat(Vec3 p) {
        return switch (this) {
            case SIDE -> p.xy();
            case PLAN -> new Vec2(p.x(), p.z());
            case END -> new Vec2(p.z(), p.y());
        };
    }
}
