// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.util.List;
import tipwright.geometry.Vec2;

/**
 * A rectangle that stands upright.
 *
 * @param low lowest corner
 * @param high highest corner
 */
public record Pane(Vec2 low, Vec2 high) {
    /** The smallest one around two corners. */
    static Pane of(Vec2 a, Vec2 b) {
        return new Pane(
                new Vec2(Math.min(a.x(), b.x()), Math.min(a.y(), b.y())),
                new Vec2(Math.max(a.x(), b.x()), Math.max(a.y(), b.y())));
    }

    /** Area in common with another. */
    double overlap(Pane o) {
        double x = Math.min(high.x(), o.high.x()) - Math.max(low.x(), o.low.x());
        double y = Math.min(high.y(), o.high.y()) - Math.max(low.y(), o.low.y());
        return x > 0 && y > 0 ? x * y : 0;
    }

    /** Whether another lies in it. */
    boolean holds(Pane o) {
        return o.low.x() >= low.x() && o.low.y() >= low.y() && o.high.x() <= high.x() && o.high.y() <= high.y();
    }

    /** The piece of a stretch that lies inside, its two ends; empty when none does. Source: Liang and Barsky 1984, clipping by parameters. */
    public List<Vec2> inside(Vec2 a, Vec2 b) {
        Vec2 d = b.minus(a);
        double from = 0;
        double to = 1;
        double[][] sides = {
            {-d.x(), a.x() - low.x()},
            {d.x(), high.x() - a.x()},
            {-d.y(), a.y() - low.y()},
            {d.y(), high.y() - a.y()}
        };
        for (double[] side : sides) {
            if (side[0] == 0 && side[1] < 0) {
                return List.of();
            }
            if (side[0] < 0) {
                from = Math.max(from, side[1] / side[0]);
            } else if (side[0] > 0) {
                to = Math.min(to, side[1] / side[0]);
            }
        }
        return to > from ? List.of(a.plus(d.times(from)), a.plus(d.times(to))) : List.of();
    }

    /** Length of a stretch inside. */
    double length(Vec2 a, Vec2 b) {
        List<Vec2> ends = inside(a, b);
        return ends.isEmpty() ? 0 : ends.get(1).minus(ends.get(0)).norm();
    }
}
