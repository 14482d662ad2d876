// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.List;

/** Checks an outline drawn in the side view. */
final class Outline {
    private Outline() {}

    /**
     * The outline without repeated points.
     *
     * @throws ShapeException if it does not enclose one area, or crosses or touches itself
     */
    static List<Vec2> checked(List<Vec2> outline) {
        List<Vec2> points = new ArrayList<>();
        for (Vec2 p : outline) {
            if (!Double.isFinite(p.x()) || !Double.isFinite(p.y())) {
                throw new ShapeException("a point of the outline is not a number: " + said(p));
            }
            if (points.isEmpty() || !p.equals(points.get(points.size() - 1))) {
                points.add(p);
            }
        }
        if (points.size() > 1 && points.get(0).equals(points.get(points.size() - 1))) {
            points.remove(points.size() - 1);
        }
        int n = points.size();
        if (n < 3) {
            throw new ShapeException("an outline needs at least three different points; this one has " + n);
        }
        crossings(points);
        if (area(points) == 0) {
            throw new ShapeException("the outline encloses no area: its points lie on one line");
        }
        return points;
    }

    /** Signed area, m2, positive counter-clockwise. */
    static double area(List<Vec2> points) {
        double twice = 0;
        Vec2 base = points.get(0);
        for (int i = 2; i < points.size(); i++) {
            twice += points.get(i - 1).minus(base).cross(points.get(i).minus(base));
        }
        return 0.5 * twice;
    }

    private static void crossings(List<Vec2> points) {
        int n = points.size();
        for (int i = 0; i < n; i++) {
            Vec2 a = points.get(i);
            Vec2 b = points.get((i + 1) % n);
            Vec2 c = points.get((i + 2) % n);
            if (b.minus(a).cross(c.minus(b)) == 0 && b.minus(a).dot(c.minus(b)) < 0) {
                throw new ShapeException("the outline turns back on itself at " + said(b));
            }
            for (int j = i + 2; j < n; j++) {
                boolean neighbours = i == 0 && j == n - 1;
                Vec2 p = points.get(j);
                Vec2 q = points.get((j + 1) % n);
                if (!neighbours && meet(a, b, p, q)) {
                    throw new ShapeException("the outline crosses or touches itself: the side " + said(a) + " to "
                            + said(b) + " meets the side " + said(p) + " to " + said(q));
                }
            }
        }
    }

    private static boolean meet(Vec2 a, Vec2 b, Vec2 p, Vec2 q) {
        double pa = side(a, b, p);
        double qa = side(a, b, q);
        double ap = side(p, q, a);
        double bp = side(p, q, b);
        if (pa == 0 && qa == 0) {
            return overlap(a.x(), b.x(), p.x(), q.x()) && overlap(a.y(), b.y(), p.y(), q.y());
        }
        return pa * qa <= 0 && ap * bp <= 0;
    }

    private static double side(Vec2 a, Vec2 b, Vec2 p) {
        return Math.signum(b.minus(a).cross(p.minus(a)));
    }

    private static boolean overlap(double a, double b, double p, double q) {
        return Math.max(Math.min(a, b), Math.min(p, q)) <= Math.min(Math.max(a, b), Math.max(p, q));
    }

    private static String said(Vec2 p) {
        return "(" + (float) p.x() + ", " + (float) p.y() + ") m";
    }
}
