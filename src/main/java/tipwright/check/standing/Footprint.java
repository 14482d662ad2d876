// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.ArrayList;
import java.util.List;
import tipwright.geometry.Bisection;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * The outline that a machine stands on, and how near it is to tipping over each edge of it.
 *
 * <p>Weights and wind are taken apart square to the ground and along it. About an edge, at ground level, a part that turns the
 * machine back onto its supports is restoring, one that turns it over the edge is overturning. Source: elementary statics of a
 * rigid body on a plane (any statics text).
 */
public final class Footprint {
    static final double STEEPEST = Math.toRadians(60);

    private final List<Edge> edges;
    private final double y;

    private Footprint(List<Edge> edges, double y) {
        this.edges = List.copyOf(edges);
        this.y = y;
    }

    /**
     * Around supports in any order; those inside the others add no edge.
     *
     * @param supports x and z, m; at least three that are not in one line
     * @param y height of their undersides, m
     */
    public static Footprint around(List<Vec2> supports, double y) {
        List<Vec2> corners = hull(supports);
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Vec2 from = corners.get(i);
            Vec2 to = corners.get((i + 1) % corners.size());
            Vec2 along = to.minus(from).unit();
            edges.add(new Edge(from, to, new Vec2(along.y(), -along.x())));
        }
        return new Footprint(edges, y);
    }

    /** The edges, at least three unless the supports are in one line. */
    public List<Edge> edges() {
        return edges;
    }

    /**
     * A mass somewhere on the machine.
     *
     * @param kg its mass
     * @param at its centre, m
     */
    public record Mass(double kg, Vec3 at) {}

    /**
     * An edge of the footprint.
     *
     * @param from x and z, m
     * @param to x and z, m
     * @param outward unit vector in x and z, away from the machine
     */
    public record Edge(Vec2 from, Vec2 to, Vec2 outward) {
        /** How far inside the edge a point is, m; negative outside. */
        double inside(Vec3 p) {
            return -((p.x() - from.x()) * outward.x() + (p.z() - from.y()) * outward.y());
        }
    }

    /**
     * Moments about one edge, N m.
     *
     * @param restoring that keep it on its supports
     * @param overturning that turn it over
     */
    public record Moments(double restoring, double overturning) {
        /** Overturning over restoring; infinite when nothing restores. */
        public double share() {
            return restoring > 0 ? overturning / restoring : Double.POSITIVE_INFINITY;
        }
    }

    /**
     * Moments about an edge under gravity.
     *
     * @param gravity m/s2
     * @param up unit vector against gravity
     * @param wind moment of the wind about the ground, N m, blowing over this edge
     */
    public Moments about(Edge edge, List<Mass> masses, double gravity, Vec3 up, double wind) {
        double outward = -(up.x() * edge.outward().x() + up.z() * edge.outward().y());
        double restoring = 0;
        double overturning = wind;
        for (Mass m : masses) {
            double weight = m.kg() * gravity;
            double square = weight * up.y() * edge.inside(m.at());
            double along = -weight * outward * (m.at().y() - y);
            restoring += Math.max(0, square) + Math.max(0, along);
            overturning += Math.max(0, -square) + Math.max(0, -along);
        }
        return new Moments(restoring, overturning);
    }

    /**
     * The steepest ground, sloping straight down over an edge, on which overturning times the factor stays below restoring.
     *
     * @return rad; 0 when not even level ground will do, 60 degrees when that will do too
     */
    public double steepest(Edge edge, List<Mass> masses, double gravity, double wind, double factor) {
        if (!bears(edge, masses, gravity, wind, factor, 0)) {
            return 0;
        }
        if (bears(edge, masses, gravity, wind, factor, STEEPEST)) {
            return STEEPEST;
        }
        String what = "the steepest ground, rad, on which it stands";
        return Bisection.between(0, STEEPEST, 1e-9, what, slope -> bears(edge, masses, gravity, wind, factor, slope))
                .good();
    }

    /** Whether overturning times the factor stays below restoring on ground that slopes down over the edge; slope in rad. */
    boolean bears(Edge edge, List<Mass> masses, double gravity, double wind, double factor, double slope) {
        return about(edge, masses, gravity, up(edge, slope), wind).share() * factor <= 1;
    }

    /** Unit vector against gravity on ground that slopes straight down over an edge; slope in rad. */
    static Vec3 up(Edge edge, double slope) {
        double s = -Math.sin(slope);
        return new Vec3(
                s * edge.outward().x(), Math.cos(slope), s * edge.outward().y());
    }

    /** The corners that the others are inside of, counter-clockwise in the plane of the first and second coordinate. */
    public static List<Vec2> hull(List<Vec2> points) {
        List<Vec2> sorted = new ArrayList<>(points);
        sorted.sort((a, b) -> a.x() == b.x() ? Double.compare(a.y(), b.y()) : Double.compare(a.x(), b.x()));
        List<Vec2> chain = new ArrayList<>();
        int fixed = 1;
        for (int pass = 0; pass < 2; pass++) {
            for (int i = 0; i < sorted.size(); i++) {
                Vec2 p = sorted.get(pass == 0 ? i : sorted.size() - 1 - i);
                while (chain.size() > fixed && turn(chain, p) <= 0) {
                    chain.remove(chain.size() - 1);
                }
                if (chain.isEmpty() || !chain.get(chain.size() - 1).equals(p)) {
                    chain.add(p);
                }
            }
            fixed = chain.size();
        }
        if (chain.size() > 1) {
            chain.remove(chain.size() - 1);
        }
        return chain;
    }

    private static double turn(List<Vec2> chain, Vec2 p) {
        Vec2 a = chain.get(chain.size() - 2);
        Vec2 b = chain.get(chain.size() - 1);
        return b.minus(a).cross(p.minus(b));
    }
}
