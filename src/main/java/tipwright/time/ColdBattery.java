// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

/**
 * What cold leaves of a lead battery, as shares of what it has at 25 C. Between the points of the tables it is a straight line.
 */
public final class ColdBattery {
    /** Temperature at which the rated values hold, K. */
    public static final double RATED = 298.15;

    /** Coldest that the tables know, K: -20 C, less what may be lost when a temperature is converted. */
    public static final double COLDEST = 253.15 - 1e-6;

    private static final double ZERO = 273.15;
    private static final double[] CELSIUS = {-20, -17.8, -3.9, -1.1, 4.4, 10, 15.6, 25};
    private static final double[] CAPACITY = {0.40, 0.50, 1 / 1.52, 1 / 1.43, 1 / 1.30, 1 / 1.19, 1 / 1.11, 1};
    private static final double[] FEW = {-20, 0, 25};
    private static final double[] RESISTANCE = {2, 1.4, 1};

    private ColdBattery() {}

    /**
     * Share of its capacity that a battery gives at a temperature in K; 1 from 25 C on.
     *
     * <p>Source: sizing factors of IEEE 485 down to 25 F (from memory); half at 0 F and 40 % at -20 C from two public pages on
     * batteries (read). A battery that is old or not full gives less.
     *
     * @throws IllegalArgumentException below {@link #COLDEST}
     */
    public static double capacity(double kelvin) {
        return between(CELSIUS, CAPACITY, kelvin);
    }

    /**
     * How many times the inner resistance of 25 C a battery has at a temperature in K; 1 from 25 C on.
     *
     * <p>Source: common practice, no source: 1.4 times at 0 C, twice at -20 C.
     *
     * @throws IllegalArgumentException below {@link #COLDEST}
     */
    public static double resistance(double kelvin) {
        return between(FEW, RESISTANCE, kelvin);
    }

    private static double between(double[] places, double[] values, double kelvin) {
        if (!(kelvin >= COLDEST)) {
            throw new IllegalArgumentException("no figures below -20 C");
        }
        double celsius = kelvin - ZERO;
        for (int i = 1; i < places.length; i++) {
            if (celsius < places[i]) {
                double share = Math.max(0, (celsius - places[i - 1]) / (places[i] - places[i - 1]));
                return values[i - 1] + share * (values[i] - values[i - 1]);
            }
        }
        return values[values.length - 1];
    }
}
