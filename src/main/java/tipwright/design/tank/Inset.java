// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.ArrayList;
import java.util.List;
import tipwright.geometry.Vec2;

/** An outline moved inwards by the thickness of a wall. */
public final class Inset {
    private static final double PARALLEL = 1e-9;

    private Inset() {}

    /** Every side moved inwards by the same distance, m, outwards by one less than 0; corners where the sides now meet. */
    public static List<Vec2> of(List<Vec2> outline, double wall) {
        double area = 0;
        int n = outline.size();
        for (int i = 0; i < n; i++) {
            area += outline.get(i).cross(outline.get((i + 1) % n));
        }
        double inwards = area > 0 ? wall : -wall;
        List<Vec2> inner = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Vec2 corner = outline.get(i);
            Vec2 before = corner.minus(outline.get((i + n - 1) % n)).unit();
            Vec2 after = outline.get((i + 1) % n).minus(corner).unit();
            Vec2 n1 = new Vec2(-before.y(), before.x());
            Vec2 n2 = new Vec2(-after.y(), after.x());
            double turn = 1 + n1.dot(n2);
            inner.add(corner.plus(n1.plus(n2).times(inwards / Math.max(turn, PARALLEL))));
        }
        return inner;
    }
}
