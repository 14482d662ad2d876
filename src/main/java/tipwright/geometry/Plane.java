// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A plane n . p = level; 'below' it is n . p &lt;= level.
 *
 * @param normal unit vector, upward side
 * @param level m, signed distance from the origin along the normal
 */
public record Plane(Vec3 normal, double level) {
    /** The plane through a point. */
    public static Plane through(Vec3 point, Vec3 normal) {
        return new Plane(normal, normal.dot(point));
    }

    /** Height of a point over the plane, m, negative below. */
    public double height(Vec3 p) {
        return normal.dot(p) - level;
    }

    /** Whether it is the very same plane: told without what a record's own comparison costs when it is first asked for. */
    public boolean same(Plane other) {
        Vec3 n = other.normal;
        return level == other.level && normal.x() == n.x() && normal.y() == n.y() && normal.z() == n.z();
    }

    /** The part of a flat outline that lies below this plane, in order; empty when none does. */
    public List<Vec3> submerged(List<Vec3> outline) {
        int n = outline.size();
        List<Vec3> part = new ArrayList<>(n + 2);
        double ha = n == 0 ? 0 : height(outline.get(0));
        for (int i = 0; i < n; i++) {
            Vec3 a = outline.get(i);
            Vec3 b = outline.get(i + 1 < n ? i + 1 : 0);
            double hb = height(b);
            if (ha <= 0) {
                part.add(a);
            }
            if (ha < 0 != hb < 0 && ha != 0 && hb != 0) {
                part.add(a.plus(b.minus(a).times(ha / (ha - hb))));
            }
            ha = hb;
        }
        return part;
    }
}
