// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * Where a yes turns into a no, by halving. Sixty halvings take any interval to the last digit of its numbers; a search that has not
 * ended after {@value #MOST} never would.
 */
public final class Bisection {
    private static final int MOST = 200;

    private Bisection() {}

    /**
     * Whether a value is on the good side.
     *
     * @param <E> what the question may throw
     */
    @FunctionalInterface
    public interface Question<E extends Exception> {
        /** Whether this value is good. */
        boolean good(double value) throws E;
    }

    /**
     * What is left of the interval.
     *
     * @param good the last value that is good
     * @param bad the next that is not
     */
    public record Interval(double good, double bad) {}

    /**
     * Halves the interval between a good and a bad value, whichever is larger, until it is no longer than 'close'.
     *
     * @param what is looked for, for the message: 'the tilt, rad, at which ...'
     * @throws NotConvergedException when it cannot get there: bounds that are not finite, or numbers too coarse for 'close'
     */
    public static <E extends Exception> Interval between(
            double good, double bad, double close, String what, Question<E> question) throws E {
        double yes = good;
        double no = bad;
        for (int i = 0; Math.abs(no - yes) > close; i++) {
            if (i == MOST) {
                throw new NotConvergedException(
                        "did not converge in " + MOST + " halvings: " + what + ", between " + yes + " and " + no);
            }
            double middle = 0.5 * (yes + no);
            if (question.good(middle)) {
                yes = middle;
            } else {
                no = middle;
            }
        }
        return new Interval(yes, no);
    }
}
