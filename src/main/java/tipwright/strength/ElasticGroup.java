// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import java.util.List;
import tipwright.geometry.Vec3;

/**
 * How a force and a moment spread over points or lines in a plane that all give alike: evenly, by the distance from the centroid
 * for the moment about the normal, and linearly for the moment in the plane. Source: elastic method for bolt and weld groups
 * (Shigley, Mechanical Engineering Design, chapters 8 and 9; O. Blodgett, Design of Welded Structures, from memory).
 */
final class ElasticGroup {
    private static final double FLAT = 1e-9;

    private final PlaneAxes axes;
    private final Vec3 centroid;
    private final double size;
    private final double uu;
    private final double uv;
    private final double vv;

    /** A weighted point, or a piece of a line with its own second moments. */
    record Piece(Vec3 middle, double size, Vec3 half) {}

    /**
     * The properties of all the pieces.
     *
     * @param pieces positions in the plane, from its datum, m
     */
    ElasticGroup(PlaneAxes axes, List<Piece> pieces) {
        this.axes = axes;
        double total = 0;
        Vec3 first = Vec3.ZERO;
        for (Piece p : pieces) {
            total += p.size();
            first = first.plus(p.middle().times(p.size()));
        }
        size = total;
        centroid = first.times(1 / total);
        double su = 0;
        double sm = 0;
        double sv = 0;
        for (Piece p : pieces) {
            Vec3 r = p.middle().minus(centroid);
            double hu = p.half().dot(axes.u());
            double hv = p.half().dot(axes.v());
            double u = r.dot(axes.u());
            double v = r.dot(axes.v());
            su += p.size() * (u * u + hu * hu / 3);
            sm += p.size() * (u * v + hu * hv / 3);
            sv += p.size() * (v * v + hv * hv / 3);
        }
        uu = su;
        uv = sm;
        vv = sv;
    }

    Vec3 centroid() {
        return centroid;
    }

    /** Length of the lines or number of the points. */
    double size() {
        return size;
    }

    /** Second moment about the axis u, so over v squared, m3 or m2. */
    double aboutU() {
        return vv;
    }

    /** Polar second moment. */
    double polar() {
        return uu + vv;
    }

    /**
     * Force per unit of size at a place.
     *
     * @param force N
     * @param moment about the centroid, N m
     * @param at in the plane, from its datum, m
     * @return N per m of line, or N per point; infinite where the group cannot bear the moment
     */
    Vec3 at(Vec3 force, Vec3 moment, Vec3 at) {
        Vec3 r = at.minus(centroid);
        double torsion = moment.dot(axes.n());
        Vec3 shear = force.times(1 / size);
        if (polar() > 0) {
            shear = shear.plus(axes.n().cross(r).times(torsion / polar()));
        } else if (torsion != 0) {
            return new Vec3(Double.POSITIVE_INFINITY, 0, 0);
        }
        double pull = bending(force, moment, r);
        return Double.isFinite(pull) ? shear.plus(axes.n().times(pull)) : new Vec3(pull, 0, 0);
    }

    /** Part of the force along the normal that the moment in the plane makes: f = a u + b v with sum(r x n f) = M. */
    private double bending(Vec3 force, Vec3 moment, Vec3 r) {
        Vec3 m = moment.minus(axes.n().times(moment.dot(axes.n())));
        double inPlane = m.norm();
        if (inPlane <= FLAT * (force.norm() + 1)) {
            return 0;
        }
        // sum f r = q, where n x M = q because r x n turned back by n is r.
        Vec3 q = axes.n().cross(m);
        double qu = q.dot(axes.u());
        double qv = q.dot(axes.v());
        double det = uu * vv - uv * uv;
        if (!(det > FLAT * (uu + vv) * (uu + vv))) {
            return alongLine(qu, qv, r);
        }
        double a = (vv * qu - uv * qv) / det;
        double b = (uu * qv - uv * qu) / det;
        return a * r.dot(axes.u()) + b * r.dot(axes.v());
    }

    /** All in one line: it bears the moment across it only when nothing bends about the line itself. */
    private double alongLine(double qu, double qv, Vec3 r) {
        double length = Math.sqrt(uu + vv);
        if (!(length > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double lu = Math.sqrt(uu) / length;
        double lv = Math.copySign(Math.sqrt(vv), uv) / length;
        double across = Math.abs(-lv * qu + lu * qv);
        double along = lu * qu + lv * qv;
        if (across > 1e-6 * Math.hypot(qu, qv)) {
            return Double.POSITIVE_INFINITY;
        }
        return along / (uu + vv) * (lu * r.dot(axes.u()) + lv * r.dot(axes.v()));
    }
}
