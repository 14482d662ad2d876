// SPDX-License-Identifier: Apache-2.0
package tipwright.doubt;

import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * How sure a share is that was counted in samples: the true one lies between both ends in at least 95 of 100 such counts.
 *
 * <p>Source: C. J. Clopper, E. S. Pearson, Biometrika 26 (1934) 404 (from memory): quantiles of the beta distribution.
 *
 * @param low 0 to 1
 * @param high 0 to 1
 */
public record SampledShare(double low, double high) {
    private static final double OUTSIDE = 0.05;

    /**
     * The interval of a count; of no samples at all nothing is known.
     *
     * @throws IllegalArgumentException when the count is not from 0 to the samples
     */
    public static SampledShare of(long count, int samples) {
        if (count < 0 || count > samples) {
            throw new IllegalArgumentException("count must be from 0 to samples");
        }
        double low = count == 0
                ? 0
                : new BetaDistribution(count, samples - count + 1.0).inverseCumulativeProbability(OUTSIDE / 2);
        double high = count == samples
                ? 1
                : new BetaDistribution(count + 1.0, samples - count).inverseCumulativeProbability(1 - OUTSIDE / 2);
        return new SampledShare(low, high);
    }

    /** The same of a share that was counted. */
    public static SampledShare of(double share, int samples) {
        return of(Math.round(share * samples), samples);
    }

    /** 'between 2.1 and 4.2 %, 95 % sure'. */
    public String words() {
        return "between " + percent(low, Math.floor(1e4 * low)) + " and " + percent(high, Math.ceil(1e4 * high))
                + " %, 95 % sure";
    }

    /**
     * To a tenth of a per cent; where that would read as none or all, to the hundredth further out.
     *
     * @param hundredths of a per cent, rounded outwards
     */
    private static String percent(double share, double hundredths) {
        double tenths = Math.round(1000 * share) / 10.0;
        boolean none = tenths == 0 && share > 0;
        boolean all = tenths == 100 && share < 1;
        double shown = none || all ? hundredths / 100 : tenths;
        return shown == Math.rint(shown) ? Long.toString(Math.round(shown)) : Double.toString(shown);
    }
}
