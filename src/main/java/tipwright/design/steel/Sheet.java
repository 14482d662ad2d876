// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import java.util.List;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * A flat piece.
 *
 * @param centre m, stowed
 * @param faces direction square to it, any length
 * @param upright size in the side view, m; of a piece that faces along the pivot along x
 * @param across size along the pivot, m; of a piece that faces along the pivot along y
 * @param thickness m
 */
record Sheet(Vec3 centre, Vec3 faces, double upright, double across, double thickness) {
    private static final double FACES_PIVOT = 0.999;

    private boolean facesPivot() {
        return Math.abs(faces.unit().z()) > FACES_PIVOT;
    }

    List<Vec2> outline() {
        Vec2 m = centre.xy();
        if (facesPivot()) {
            double a = upright / 2;
            double b = across / 2;
            return List.of(
                    m.plus(new Vec2(-a, -b)), m.plus(new Vec2(a, -b)), m.plus(new Vec2(a, b)), m.plus(new Vec2(-a, b)));
        }
        Vec2 n = faces.xy().unit();
        Vec2 along = new Vec2(-n.y(), n.x()).times(upright / 2);
        Vec2 half = n.times(thickness / 2);
        return List.of(
                m.minus(along).minus(half),
                m.plus(along).minus(half),
                m.plus(along).plus(half),
                m.minus(along).plus(half));
    }

    List<Double> zRange() {
        double half = (facesPivot() ? thickness : across) / 2;
        return List.of(centre.z() - half, centre.z() + half);
    }
}
