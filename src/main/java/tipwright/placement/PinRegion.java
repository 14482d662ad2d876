// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.around.KeepOut;
import tipwright.design.around.Zone;
import tipwright.geometry.Vec2;

/**
 * Where one pin may be: its zone less the keep-outs, or the one place where it is drawn.
 *
 * @param zone null: only where it is drawn
 * @param drawn m
 * @param clearance to the keep-outs, m
 */
record PinRegion(@Nullable Zone zone, Vec2 drawn, List<KeepOut> keepOuts, double clearance) {
    private static final double EDGE = 1e-9;

    /** Lowest corner of the zone's box, m. */
    Vec2 low() {
        return corner(-1);
    }

    /** Highest corner of the zone's box, m. */
    Vec2 high() {
        return corner(1);
    }

    private Vec2 corner(int side) {
        if (zone == null) {
            return drawn;
        }
        double x = -side * Double.POSITIVE_INFINITY;
        double y = x;
        for (Vec2 p : zone.outline()) {
            x = side > 0 ? Math.max(x, p.x()) : Math.min(x, p.x());
            y = side > 0 ? Math.max(y, p.y()) : Math.min(y, p.y());
        }
        return new Vec2(x, y);
    }

    /** The nearest hole, or the same place where there are no rows of holes. */
    Vec2 snap(Vec2 p) {
        return zone == null ? drawn : zone.holes() == null ? p : zone.holes().nearest(p);
    }

    /** How far a place is outside what is allowed, m; 0: allowed. */
    double outside(Vec2 p) {
        if (zone == null) {
            return 0;
        }
        double most = inside(zone.outline(), p) ? 0 : edge(zone.outline(), p);
        most = most < EDGE ? 0 : most;
        for (KeepOut k : keepOuts) {
            double edge = edge(k.outline(), p);
            double gap = inside(k.outline(), p) ? -edge : edge;
            most = Math.max(most, clearance - gap);
        }
        return most < EDGE ? 0 : most;
    }

    /** Every allowed place on a square grid from the middle of the box, or every hole within it, m. */
    List<Vec2> places(double step) {
        if (zone == null) {
            return List.of(drawn);
        }
        Zone.Holes holes = zone.holes();
        Double across = holes == null ? null : holes.across();
        Double up = holes == null ? null : holes.up();
        double[] xs = axis(
                low().x(),
                high().x(),
                step,
                across,
                holes == null ? 0 : holes.from().x());
        double[] ys = axis(
                low().y(),
                high().y(),
                step,
                up,
                holes == null ? 0 : holes.from().y());
        List<Vec2> all = new ArrayList<>();
        for (double y : ys) {
            for (double x : xs) {
                Vec2 p = new Vec2(x, y);
                if (outside(p) == 0) {
                    all.add(p);
                }
            }
        }
        return all;
    }

    private static double[] axis(double low, double high, double step, @Nullable Double pitch, double hole) {
        if (pitch == null) {
            int n = Math.max(1, (int) Math.round((high - low) / step));
            double[] all = new double[n + 1];
            for (int i = 0; i <= n; i++) {
                all[i] = low + (high - low) * i / n;
            }
            return all;
        }
        int first = (int) Math.ceil((low - hole) / pitch - EDGE);
        int last = (int) Math.floor((high - hole) / pitch + EDGE);
        double[] all = new double[Math.max(0, last - first + 1)];
        for (int i = 0; i < all.length; i++) {
            all[i] = hole + (first + i) * pitch;
        }
        return all;
    }

    /** Even-odd rule. Source: crossing number of a polygon (from memory). */
    static boolean inside(List<Vec2> outline, Vec2 p) {
        boolean in = false;
        for (int i = 0; i < outline.size(); i++) {
            Vec2 a = outline.get(i);
            Vec2 b = outline.get((i + 1) % outline.size());
            if (a.y() > p.y() != b.y() > p.y() && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                in = !in;
            }
        }
        return in;
    }

    /** Distance to the nearest edge, m. */
    static double edge(List<Vec2> outline, Vec2 p) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < outline.size(); i++) {
            Vec2 a = outline.get(i);
            Vec2 along = outline.get((i + 1) % outline.size()).minus(a);
            double square = along.dot(along);
            double share = square > 0 ? Math.max(0, Math.min(1, p.minus(a).dot(along) / square)) : 0;
            least = Math.min(least, p.minus(a.plus(along.times(share))).norm());
        }
        return least;
    }
}
