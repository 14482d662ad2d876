// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The convex outline around points. Source: A. M. Andrew's monotone chain (1979), from memory. */
public final class Hull {
    private Hull() {}

    /** The corners, counter-clockwise, none on a straight side; all points, when they are fewer than three. */
    public static List<Vec2> around(List<Vec2> points) {
        List<Vec2> sorted = points.stream()
                .distinct()
                .sorted(Comparator.comparingDouble(Vec2::x).thenComparingDouble(Vec2::y))
                .toList();
        if (sorted.size() < 3) {
            return sorted;
        }
        List<Vec2> hull = new ArrayList<>(chain(sorted, 1));
        List<Vec2> upper = chain(sorted, -1);
        for (int i = upper.size() - 2; i > 0; i--) {
            hull.add(upper.get(i));
        }
        return hull;
    }

    private static List<Vec2> chain(List<Vec2> sorted, int side) {
        List<Vec2> chain = new ArrayList<>();
        for (Vec2 p : sorted) {
            while (chain.size() > 1 && side * turn(chain, p) <= 0) {
                chain.remove(chain.size() - 1);
            }
            chain.add(p);
        }
        return chain;
    }

    private static double turn(List<Vec2> chain, Vec2 p) {
        Vec2 a = chain.get(chain.size() - 2);
        Vec2 b = chain.get(chain.size() - 1);
        return b.minus(a).cross(p.minus(b));
    }
}
