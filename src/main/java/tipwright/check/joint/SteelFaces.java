// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tipwright.geometry.Vec2;

/**
 * The faces of drawn steel that lie in the plane of a foot, each a rectangle in its u and v, m. A face that the foot does not reach
 * counts, where it is no farther off along u than {@link #FARTHEST} and some of it lies where the foot lies along the pivot: the foot
 * has slid off its end.
 */
final class SteelFaces {
    /**
     * So far, m, steel may be off a weld, or end before it. Source: the widest gap at a fillet weld of quality level C, EN ISO 5817
     * no. 617 (from memory).
     */
    static final double GAP = 0.003;

    /** A foot farther from the end of a face than this, m, has nothing to do with it. Common practice, no source. */
    private static final double FARTHEST = 1;

    /** What no tape tells from nothing, m. */
    private static final double SAME = 1e-7;

    /** Faces nearer to each other than this, m, are one. */
    private static final double TOUCH = 1e-4;

    /** Cosine of the angle up to which a face runs along a foot. */
    private static final double ALONG = Math.cos(Math.toRadians(10));

    private final Foot foot;
    private final List<Face> faces = new ArrayList<>();
    private final Set<String> names = new LinkedHashSet<>();
    private boolean any;

    private record Face(double u0, double u1, double v0, double v1) {
        /** How far a point is from it in its plane, by the larger of both ways, m; 0: on it. */
        double off(Vec2 p) {
            return Math.max(0, Math.max(Math.max(u0 - p.x(), p.x() - u1), Math.max(v0 - p.y(), p.y() - v1)));
        }
    }

    SteelFaces(Foot foot) {
        this.foot = foot;
    }

    /** Whether there are none. */
    boolean none() {
        return !any;
    }

    /** What they belong to: 'left rail, rear beam'. */
    String names() {
        return String.join(", ", names);
    }

    /**
     * Adds what of a part lies in the plane.
     *
     * @param outline in the side view, m, stowed, either way round
     * @param z0 where it begins along the pivot, m; may be infinite
     * @param z1 where it ends, m
     */
    void add(String name, List<Vec2> outline, double z0, double z1) {
        double v0 = z0 - foot.at().z();
        double v1 = z1 - foot.at().z();
        if (!beside(v0, v1, GAP)) {
            return;
        }
        Vec2 at = foot.at().xy();
        Vec2 along = foot.axes().u().xy();
        Vec2 square = foot.axes().n().xy();
        double turn = 0;
        for (int i = 0; i < outline.size(); i++) {
            turn += outline.get(i).cross(outline.get((i + 1) % outline.size()));
        }
        for (int i = 0; i < outline.size(); i++) {
            Vec2 p = outline.get(i).minus(at);
            Vec2 q = outline.get((i + 1) % outline.size()).minus(at);
            Vec2 way = q.minus(p);
            double out = -Math.signum(turn) * way.cross(square) / way.norm();
            if (Math.abs(out) >= ALONG && out * foot.side() >= 0) {
                line(name, p.dot(along), q.dot(along), p.dot(square), q.dot(square), v0, v1);
            }
        }
    }

    /** Adds a face as a rectangle in u and v, m. */
    void add(String name, double u0, double u1, double v0, double v1) {
        boolean near = u0 < foot.high().x() + FARTHEST && u1 > foot.low().x() - FARTHEST;
        if (near && beside(v0, v1, GAP)) {
            faces.add(new Face(u0, u1, v0, v1));
            names.add(name);
            any |= beside(v0, v1, 0);
        }
    }

    /** Whether something lies where the foot lies along the pivot, or as near to that as a weld bridges. */
    private boolean beside(double v0, double v1, double gap) {
        return v0 < foot.high().y() + gap && v1 > foot.low().y() - gap;
    }

    /** Of a side from (u, off the plane) to (u, off the plane) what is near enough to the plane. */
    private void line(String name, double up, double uq, double dp, double dq, double v0, double v1) {
        double near = GAP + SAME;
        double from = 0;
        double to = 1;
        if (Math.abs(dp - dq) > SAME * SAME) {
            double a = (-near - dp) / (dq - dp);
            double b = (near - dp) / (dq - dp);
            from = Math.max(0, Math.min(a, b));
            to = Math.min(1, Math.max(a, b));
        } else if (Math.abs(dp) > near) {
            return;
        }
        if (from < to) {
            double one = up + from * (uq - up);
            double other = up + to * (uq - up);
            add(name, Math.min(one, other), Math.max(one, other), v0, v1);
        }
    }

    /** How far a point is from the nearest face, m; 0: on one. */
    private double off(Vec2 p) {
        double least = Double.POSITIVE_INFINITY;
        for (Face face : faces) {
            least = Math.min(least, face.off(p));
        }
        return least < SAME ? 0 : least;
    }

    /**
     * How far a straight seam reaches past the steel, m: at an end of it the way back to the nearest face, between two faces half the
     * way from one to the other, where that is too far to be bridged.
     */
    double past(Vec2 from, Vec2 to) {
        double past = Math.max(off(from), off(to));
        double length = to.minus(from).norm();
        double at = off(from) <= GAP + SAME ? 0 : next(from, to, 0);
        for (int i = 0; i <= faces.size() && at < 1; i++) {
            double end = end(from, to, at);
            double next = end < 1 ? next(from, to, end) : 1;
            if (next < 1) {
                past = Math.max(past, (next - end) * length / 2 + GAP);
            }
            at = next;
        }
        return rounded(past);
    }

    /** A distance past the steel without what rounding does to none and to the most that is allowed, m. */
    static double rounded(double past) {
        return past < SAME ? 0 : Math.abs(past - GAP) < SAME ? GAP : past;
    }

    /** Up to which share of a seam there is steel within reach without a break, from a share on. */
    private double end(Vec2 from, Vec2 to, double at) {
        double end = at;
        boolean grown = true;
        for (int i = 0; i <= faces.size() && grown; i++) {
            grown = false;
            for (Face face : faces) {
                double[] share = share(face, from, to);
                if (share[0] <= end + SAME && share[1] > end) {
                    end = share[1];
                    grown = true;
                }
            }
        }
        return end;
    }

    /** The next share of a seam from which on there is steel within reach; 1: none follows. */
    private double next(Vec2 from, Vec2 to, double after) {
        double next = 1;
        for (Face face : faces) {
            double[] share = share(face, from, to);
            if (share[0] > after && share[0] < share[1]) {
                next = Math.min(next, share[0]);
            }
        }
        return next;
    }

    /** Between which shares a seam runs within reach of a face; the second not larger than the first: nowhere. */
    private static double[] share(Face face, Vec2 from, Vec2 to) {
        double near = GAP + SAME;
        double[] share = {0, 1};
        clip(share, from.x(), to.x(), face.u0 - near, face.u1 + near);
        clip(share, from.y(), to.y(), face.v0 - near, face.v1 + near);
        return share;
    }

    private static void clip(double[] share, double from, double to, double low, double high) {
        double way = to - from;
        if (Math.abs(way) < SAME * SAME) {
            if (from < low || from > high) {
                share[1] = -1;
            }
            return;
        }
        double a = (low - from) / way;
        double b = (high - from) / way;
        share[0] = Math.max(share[0], Math.min(a, b));
        share[1] = Math.min(share[1], Math.max(a, b));
    }

    /** From a point on the steel to the nearest edge, along u or v, m; less than 0: the way to the steel from a point beside it. */
    double toEdge(Vec2 p) {
        double off = off(p);
        if (off > 0) {
            return -off;
        }
        return Math.min(Math.min(run(p, true, 1), run(p, true, -1)), Math.min(run(p, false, 1), run(p, false, -1)));
    }

    /** How far steel goes on from a point without a break, m. */
    private double run(Vec2 p, boolean alongU, int sign) {
        double at = sign * (alongU ? p.x() : p.y());
        double across = alongU ? p.y() : p.x();
        double end = at;
        boolean grown = true;
        for (int i = 0; i <= faces.size() && grown; i++) {
            grown = false;
            for (Face f : faces) {
                double low = alongU ? f.v0 : f.u0;
                double high = alongU ? f.v1 : f.u1;
                double one = sign * (alongU ? f.u0 : f.v0);
                double other = sign * (alongU ? f.u1 : f.v1);
                boolean here = across >= low - SAME && across <= high + SAME;
                if (here && Math.min(one, other) <= end + TOUCH && Math.max(one, other) > end) {
                    end = Math.max(one, other);
                    grown = true;
                }
            }
        }
        return end - at;
    }
}
