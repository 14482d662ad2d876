// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import tipwright.analysis.BodyPosition;
import tipwright.geometry.Vec2;
import tipwright.outline.OutlineGeometry;

/**
 * Finds the smallest gap between two outlines that move, and where they first touch. No point of them moves by more than is known
 * between two tilts, so a stretch that cannot hold a smaller gap is left out, and the others are halved: no contact and no gap
 * that is too small can hide between two tilts. Gaps that are large enough are halved to 20 mm of motion or a tenth of the gap only; the smallest is
 * then closed in on by the golden section. Source: bound by the largest motion (Lipschitz); golden section (any text on numerics).
 */
final class GapSearch {
    /** m. */
    private static final double TOLERANCE = 0.02e-3;

    private static final double COARSE = 20e-3;
    private static final double SHARE = 0.1;
    private static final double GOLDEN = 0.5 * (Math.sqrt(5) - 1);
    private static final int CUTS = 18;

    private final Geometry a;
    private final Geometry b;
    private final Motions.Path pathA;
    private final Motions.Path pathB;
    private final double[] travel;
    private final double enough;
    private Vec2 shift = Vec2.ZERO;
    private double best;
    private double where;

    /**
     * A pair.
     *
     * @param enough gap beyond which nothing is at stake, m
     */
    GapSearch(Motions motions, Geometry a, Motions.Path pathA, Geometry b, Motions.Path pathB, double enough) {
        this.enough = enough;
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
        Geometry[] pair = placed(pose);
        return pair[0].distance(pair[1]);
    }

    /** Both at one pose, in the axes of the one with more corners. */
    private Geometry[] placed(double pose) {
        BodyPosition placedA = pathA.at(pose);
        BodyPosition placedB = pathB.at(pose);
        BodyPosition moved =
                new BodyPosition(placedB.body(), placedB.origin().plus(shift.tilted(placedB.turn())), placedB.turn());
        return a.getNumPoints() < b.getNumPoints()
                ? new Geometry[] {OutlineGeometry.seenFrom(a, placedA, moved), b}
                : new Geometry[] {OutlineGeometry.seenFrom(b, moved, placedA), a};
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
            closeIn(from, last);
        }
        if (best <= 0) {
            double contact = first(from, start, last, end);
            return new Gap(0, Double.isNaN(contact) ? where : contact);
        }
        return new Gap(best, where);
    }

    private void look(double from, double start, double to, double end) {
        double moved = moved(from, to);
        double least = (start + end - moved) / 2;
        boolean settled = least >= best - TOLERANCE || moved < TOLERANCE;
        if (best <= 0 || settled || (least > enough && moved < Math.max(COARSE, SHARE * least))) {
            return;
        }
        double middle = middle(from, to);
        double gap = bounded(middle);
        look(from, start, middle, gap);
        look(middle, gap, to, end);
    }

    /** The gap, or a lower bound of it that is not below the best so far. */
    private double bounded(double pose) {
        Geometry[] pair = placed(pose);
        double boxes = pair[0].getEnvelopeInternal().distance(pair[1].getEnvelopeInternal());
        return boxes >= best ? boxes : tried(pose, pair[0].distance(pair[1]));
    }

    /** The golden section round the best so far, over as much as it was halved to. */
    private void closeIn(double from, double last) {
        double move = Math.max(COARSE, SHARE * best);
        double low = where;
        while (low > from && moved(low, where) < move) {
            low = Math.max(from, low - 1);
        }
        double high = where;
        while (high < last && moved(where, high) < move) {
            high = Math.min(last, high + 1);
        }
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = tried(left);
        double atRight = tried(right);
        for (int i = 0; i < CUTS && best > 0; i++) {
            if (atLeft < atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = tried(left);
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = tried(right);
            }
        }
    }

    private double tried(double pose) {
        return tried(pose, at(pose));
    }

    private double tried(double pose, double gap) {
        if (gap < best) {
            best = gap;
            where = pose;
        }
        return gap;
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
