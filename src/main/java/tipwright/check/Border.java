// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/**
 * Where passing turns to failing.
 *
 * @param good the last value that is known to pass
 * @param findings there
 * @param bad the first that is known to fail, or the end of the range
 */
record Border(double good, List<Finding> findings, double bad) {
    private static final int TRIES = 30;
    /** A try goes no nearer to an end than this share of the range, or half of what is close enough. */
    private static final double EDGE = 0.05;

    /** A line that points further away than this many times what is close enough is not trusted at first. */
    private static final double FAR = 20;

    private static final double THIRDS = 2.0 / 3;

    /** What is found with a value. */
    interface Findings {
        List<Finding> of(double value) throws CannotComputeException;
    }

    /**
     * Between a value that passes and one that fails, in either order: a straight line through the utilisations of the check that
     * fails tells where to look next, a little to either side of it in turn, so that both ends come near.
     *
     * @param close how near the two have to come
     */
    static Border between(
            double passes, List<Finding> passing, double fails, List<Finding> failing, double close, Findings look)
            throws CannotComputeException {
        double good = passes;
        double bad = fails;
        List<Finding> low = passing;
        List<Finding> high = failing;
        for (int i = 0; i < TRIES && Math.abs(bad - good) > close; i++) {
            double wide = Math.abs(bad - good);
            double share = share(low, high);
            double aside = 0.45 * close / wide;
            double aimed = Double.isNaN(share) || i % 4 == 3 ? 0.5 : share + (i % 2 == 0 ? -aside : aside);
            double edge = Math.min(0.5, Math.max(EDGE / 5, aside));
            double next = good + (bad - good) * Math.max(edge, Math.min(1 - edge, aimed));
            List<Finding> found = look.of(next);
            if (FillSweep.failure(found) == null) {
                good = next;
                low = found;
            } else {
                bad = next;
                high = found;
            }
        }
        return new Border(good, low, bad);
    }

    /** What is found with two values of which the second is of no use where the first fails; then it may be left out. */
    interface Pair {
        List<List<Finding>> of(double first, double second) throws CannotComputeException;
    }

    /**
     * The same by two values at a time, for two threads: on both sides of where the straight line points; at first, where it points far
     * away and little is known, there and half way to it; in thirds where that has not helped twice.
     */
    static Border byTwo(
            double passes, List<Finding> passing, double fails, List<Finding> failing, double close, Pair look)
            throws CannotComputeException {
        double good = passes;
        double bad = fails;
        List<Finding> low = passing;
        List<Finding> high = failing;
        int slow = 0;
        for (int i = 0; i < TRIES && Math.abs(bad - good) > close; i++) {
            double share = share(low, high);
            double aside = 0.45 * close / Math.abs(bad - good);
            double edge = Math.min(0.5, Math.max(EDGE / 5, aside));
            boolean thirds = Double.isNaN(share) || slow == 2;
            boolean away = i == 0 && share > FAR * aside;
            double near = thirds ? 1 - THIRDS : away ? share / 2 : share - aside;
            double far = thirds ? THIRDS : away ? share : share + aside;
            near = Math.max(edge, Math.min(1 - 2 * edge, near));
            far = Math.max(near + edge, Math.min(1 - edge, far));
            double wide = Math.abs(bad - good);
            double first = good + (bad - good) * near;
            double second = good + (bad - good) * far;
            List<List<Finding>> found = look.of(first, second);
            if (FillSweep.failure(found.get(0)) != null) {
                bad = first;
                high = found.get(0);
            } else {
                boolean both = FillSweep.failure(found.get(1)) == null;
                good = both ? second : first;
                low = found.get(both ? 1 : 0);
                bad = both ? bad : second;
                high = both ? high : found.get(1);
            }
            slow = !thirds && Math.abs(bad - good) > wide / 2 ? slow + 1 : 0;
        }
        return new Border(good, low, bad);
    }

    /** Share of the way from passing to failing at which a check's utilisation comes to 1 first; NaN: no check tells. */
    private static double share(List<Finding> low, List<Finding> high) {
        double first = Double.NaN;
        for (Finding f : high) {
            double over = f.utilisation();
            if (f.verdict() == Verdict.FAIL && over > 1 && Double.isFinite(over)) {
                double under = low.stream()
                        .filter(g -> g.id().equals(f.id()))
                        .mapToDouble(Finding::utilisation)
                        .filter(u -> u <= 1)
                        .findFirst()
                        .orElse(Double.NaN);
                double share = (1 - under) / (over - under);
                first = !(share >= first) && !Double.isNaN(share) ? share : first;
            }
        }
        return first;
    }
}
