// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

import java.util.List;
import tipwright.geometry.Vec2;

/**
 * A rectangle in the picture whose size is known: a sheet of plywood, or what two legs of a framing square span. It stands upright in
 * the plane of z = 0 of the photo, its lower edge level.
 *
 * @param corner its lower corner away from the dump side, m, as the design counts
 * @param width along x, m
 * @param height along y, m
 */
public record KnownSheet(Vec2 corner, double width, double height) {
    /** Its corners, m: the lower one away from the dump side, then on along the lower edge and round. */
    List<Vec2> corners() {
        return List.of(
                corner,
                corner.plus(new Vec2(width, 0)),
                corner.plus(new Vec2(width, height)),
                corner.plus(new Vec2(0, height)));
    }

    Vec2 middle() {
        return corner.plus(new Vec2(width / 2, height / 2));
    }
}
