// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Where a bearing's load points, as seen from its base.
 *
 * @param offBase angle between the load's side-view part and the direction into the base, rad, 0 to pi; NaN without a load
 */
public record Direction(double offBase) {
    private static final double STRAIGHT = Math.toRadians(30);
    private static final double SLANTING = Math.toRadians(60);

    /**
     * Of a load.
     *
     * @param load of the tank on the bearing, N
     * @param base points into the base of the housing
     */
    public static Direction of(Vec3 load, Vec2 base) {
        Vec2 radial = load.xy();
        return new Direction(Math.abs(Math.atan2(base.cross(radial), base.dot(radial))));
    }

    /** In a word or two for a narrow column. */
    String word() {
        if (offBase <= STRAIGHT) {
            return "into its base";
        } else if (offBase <= SLANTING) {
            return "at an angle";
        } else if (offBase <= Math.PI - SLANTING) {
            return "sideways";
        }
        return "off its base";
    }

    /** In a sentence's part: what the load does to the housing. */
    public String words() {
        String angle = Math.round(Math.toDegrees(offBase)) + " deg";
        if (offBase <= STRAIGHT) {
            return "pushes into its base, " + angle + " off square";
        } else if (offBase <= SLANTING) {
            return "pushes into its base at an angle, " + angle + " off square";
        } else if (offBase <= Math.PI - SLANTING) {
            return "pushes sideways along its base, " + angle + " off square";
        }
        return "pulls off its base, " + angle + " off square";
    }
}
