// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import tipwright.analysis.Placement;
import tipwright.geometry.Vec2;

/**
 * Finds the smallest gap between two outlines that move, and where they first touch. No point of them moves by more than is known
 * between two tilts, so a stretch that cannot hold a smaller gap is left out, and the others are halved: nothing between two tilts
 * is missed by more than the tolerance. Source: bound by the largest motion (Lipschitz); common practice, no source.
 */
final class GapSearch {
    /** m. */
    static final double TOLERANCE = 0.02e-3;

    private final Geometry a;
    private final Geometry b;
    private final Motions.Path pathA;
    private final Motions.Path pathB;
    private final double[] travel;
    private Vec2 shift = Vec2.ZERO;
    private double best;
    private double where;

    GapSearch(Motions motions, Geometry a, Motions.Path pathA, Geometry b, Motions.Path pathB) {
        this.a = a;
        this.b = b;
        this.pathA = pathA;
        this.pathB = pathB;
        double[] first = travel(motions, a, pathA);
        double[] second = travel(motions, b, pathB);
        travel = new double[first.length];
        for (int i = 0; i < travel.length; i++) {
            travel[i] = first[i] + second[i];
        }
    }

    private static double[] travel(Motions motions, Geometry part, Motions.Path path) {
        Envelope box = part.getEnvelopeInternal();
        Vec2 middle = new Vec2(box.centre().x, box.centre().y);
        return motions.travel(path, middle, box.getDiameter() / 2);
    }

    /**
     * The smallest gap.
     *
     * @param gap m; 0 when they touch or overlap
     * @param pose number of the pose where it is smallest, or where they first touch
     */
    record Gap(double gap, double pose) {}

    /** With the second part moved by a distance, m, in its own axes. */
    GapSearch shifted(Vec2 by) {
        shift = by;
        return this;
    }

    /** The gap at one pose, m. */
    double at(double pose) {
        Placement placedA = pathA.at(pose);
        Placement placedB = pathB.at(pose);
        Placement moved =
                new Placement(placedB.body(), placedB.origin().plus(shift.tilted(placedB.turn())), placedB.turn());
        return a.getNumPoints() < b.getNumPoints()
                ? Flat.seenFrom(a, placedA, moved).distance(b)
                : Flat.seenFrom(b, moved, placedA).distance(a);
    }

    /** The smallest gap from one pose to the last. */
    Gap smallest(double from) {
        double last = travel.length - 1;
        double start = at(from);
        double end = at(last);
        best = Math.min(start, end);
        where = start <= end ? from : last;
        if (best > 0) {
            look(from, start, last, end);
        }
        if (best <= 0) {
            double contact = first(from, start, last, end);
            return new Gap(0, Double.isNaN(contact) ? where : contact);
        }
        return new Gap(best, where);
    }

    private void look(double from, double start, double to, double end) {
        double moved = moved(from, to);
        if (best <= 0 || (start + end - moved) / 2 >= best - TOLERANCE || moved < TOLERANCE) {
            return;
        }
        double middle = middle(from, to);
        double gap = at(middle);
        if (gap < best) {
            best = gap;
            where = middle;
        }
        look(from, start, middle, gap);
        look(middle, gap, to, end);
    }

    private double first(double from, double start, double to, double end) {
        if (start <= 0) {
            return from;
        }
        double moved = moved(from, to);
        if ((start + end - moved) / 2 > 0) {
            return Double.NaN;
        }
        if (moved < TOLERANCE) {
            return end <= 0 ? to : Double.NaN;
        }
        double middle = middle(from, to);
        double gap = at(middle);
        double found = first(from, start, middle, gap);
        return Double.isNaN(found) ? first(middle, gap, to, end) : found;
    }

    private static double middle(double from, double to) {
        double half = 0.5 * (from + to);
        return to - from > 1.5 ? Math.rint(half) : half;
    }

    private double moved(double from, double to) {
        return travel(to) - travel(from);
    }

    private double travel(double pose) {
        int i = Math.min((int) pose, travel.length - 1);
        double f = pose - i;
        return f > 0 ? travel[i] + f * (travel[i + 1] - travel[i]) : travel[i];
    }
}
