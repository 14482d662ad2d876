// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import tipwright.analysis.BodyPosition;
import tipwright.geometry.Vec2;
import tipwright.outline.OutlineGeometry;

/**
 * Finds the smallest gap between two outlines that move, and where they first touch. No point of them moves by more than is known
 * between two tilts, so a stretch that cannot hold a smaller gap is left out, and the others are halved: no contact and no gap
 * that is too small can hide between two tilts. Gaps that are large enough are halved to 20 mm of motion or a tenth of the gap only; the smallest is
 * then closed in on. Source: bound by the largest motion (Lipschitz); Brent, 'Algorithms for minimization without derivatives', 1973.
 */
final class GapSearch {
    /** m. */
    private static final double TOLERANCE = 0.02e-3;

    private static final double COARSE = 20e-3;
    private static final double SHARE = 0.1;
    private static final double ALIKE = 1e-12;
    private static final int MOST = 100;
    private static final int GUESSES = 4;

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

    /** A first guess of the smallest gap, m: by their boxes at a few tilts. */
    double guess() {
        double last = travel.length - 1;
        double guess = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= GUESSES; i++) {
            guess = Math.min(guess, boxes(placed(Math.rint(last * i / GUESSES))));
        }
        return guess;
    }

    /** The smallest gap from one pose to the last. */
    Gap smallest(double from) {
        Gap found = smallest(from, Double.POSITIVE_INFINITY);
        if (found == null) {
            throw new IllegalStateException("two outlines are endlessly far from each other");
        }
        return found;
    }

    /**
     * The smallest gap from one pose to the last, as far as it matters.
     *
     * @param below gap from which on it does not matter, m
     * @return null when it is not below that, or by less than what gaps are told apart by
     */
    @Nullable
    Gap smallest(double from, double below) {
        double last = travel.length - 1;
        best = below;
        where = Double.NaN;
        double start = bounded(from);
        double end = bounded(last);
        look(from, start, last, end);
        if (Double.isNaN(where)) {
            return null;
        }
        if (best > 0) {
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
        double boxes = boxes(pair);
        return boxes >= best ? boxes : tried(pose, pair[0].distance(pair[1]));
    }

    private static double boxes(Geometry[] pair) {
        return pair[0].getEnvelopeInternal().distance(pair[1].getEnvelopeInternal());
    }

    /** Brent's search round the best so far, over as much as it was halved to. */
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
        double moved = moved(low, high);
        if (moved <= 2 * TOLERANCE) {
            return;
        }
        double little = TOLERANCE * (high - low) / moved;
        double inside = Math.min(Math.max(where, low + little), high - little);
        double atEnd = best;
        if (inside != where && tried(inside) >= atEnd) {
            return; // it grows from an end on
        }
        new BrentOptimizer(ALIKE, little)
                .optimize(
                        GoalType.MINIMIZE,
                        new UnivariateObjectiveFunction(this::tried),
                        new SearchInterval(low, high, inside),
                        new MaxEval(MOST));
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
