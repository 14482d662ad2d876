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
    /** 1 where u, v and the normal go the way of x, y and z; -1 where the other way. */
    private final double hand;

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
        hand = axes.n().cross(axes.u()).dot(axes.v());
    }

    /** A place in the plane, from the centroid, m. */
    record Spot(double u, double v) {}

    /** A place given in the plane from its datum, m. */
    Spot spot(Vec3 at) {
        Vec3 r = at.minus(centroid);
        return new Spot(r.dot(axes.u()), r.dot(axes.v()));
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
     * How it spreads one load.
     *
     * @param force N
     * @param moment about the centroid, N m
     */
    Under under(Vec3 force, Vec3 moment) {
        double torsion = moment.dot(axes.n());
        double polar = polar();
        if (!(polar > 0) && torsion != 0) {
            return new Under(Vec3.ZERO, 0, Double.POSITIVE_INFINITY, 0);
        }
        double twist = polar > 0 ? torsion / polar : 0;
        double mu = moment.dot(axes.u());
        double mv = moment.dot(axes.v());
        if (Math.sqrt(mu * mu + mv * mv) <= FLAT * (force.norm() + 1)) {
            return new Under(force, twist, 0, 0);
        }
        // sum f r = q, where n x M = q because r x n turned back by n is r.
        double qu = -hand * mv;
        double qv = hand * mu;
        double det = uu * vv - uv * uv;
        if (!(det > FLAT * (uu + vv) * (uu + vv))) {
            return inLine(force, twist, qu, qv);
        }
        return new Under(force, twist, (vv * qu - uv * qv) / det, (uu * qv - uv * qu) / det);
    }

    /** All in one line: it bears the moment across it only when nothing bends about the line itself. */
    private Under inLine(Vec3 force, double twist, double qu, double qv) {
        double length = Math.sqrt(uu + vv);
        double lu = Math.sqrt(uu) / length;
        double lv = Math.copySign(Math.sqrt(vv), uv) / length;
        double across = Math.abs(-lv * qu + lu * qv);
        if (!(length > 0) || across > 1e-6 * Math.sqrt(qu * qu + qv * qv)) {
            return new Under(force, twist, Double.POSITIVE_INFINITY, 0);
        }
        double along = (lu * qu + lv * qv) / (uu + vv);
        return new Under(force, twist, along * lu, along * lv);
    }

    /** One load on the group: what each place takes, N per m of line, or N per point. */
    final class Under {
        private final double evenU;
        private final double evenV;
        private final double evenN;
        private final double twist;
        private final double pullU;
        private final double pullV;

        /**
         * What each place takes.
         *
         * @param force N, the same everywhere
         * @param twist across the arm from the centroid, N per m2 or m
         * @param pullU along the normal for each m from the centroid along u; infinite: the group cannot bear the moment
         */
        private Under(Vec3 force, double twist, double pullU, double pullV) {
            evenU = force.dot(axes.u()) / size;
            evenV = force.dot(axes.v()) / size;
            evenN = force.dot(axes.n()) / size;
            this.twist = hand * twist;
            this.pullU = pullU;
            this.pullV = pullV;
        }

        /** Whether the group can bear the moment; where it cannot, all that a place takes is infinite. */
        boolean borne() {
            return !Double.isInfinite(pullU);
        }

        /** What a place takes along the normal; positive pulls. */
        double pull(Spot at) {
            return borne() ? evenN + pullU * at.u() + pullV * at.v() : Double.POSITIVE_INFINITY;
        }

        /** What a place takes in the plane. */
        double shear(Spot at) {
            if (!borne()) {
                return Double.POSITIVE_INFINITY;
            }
            double u = evenU - twist * at.v();
            double v = evenV + twist * at.u();
            return Math.sqrt(u * u + v * v);
        }

        /** All that a place takes. */
        double all(Spot at) {
            double pull = pull(at);
            double shear = shear(at);
            return Math.sqrt(pull * pull + shear * shear);
        }

        /** All that a place takes, in the axes that the group is drawn in; infinite along x where the group cannot bear the moment. */
        Vec3 at(Spot at) {
            if (!borne()) {
                return new Vec3(Double.POSITIVE_INFINITY, 0, 0);
            }
            return axes.u()
                    .times(evenU - twist * at.v())
                    .plus(axes.v().times(evenV + twist * at.u()))
                    .plus(axes.n().times(pull(at)));
        }
    }
}
