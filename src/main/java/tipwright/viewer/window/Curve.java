// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import java.util.function.DoubleFunction;

/**
 * A value against tilt.
 *
 * @param tilts rad, rising
 * @param values SI [tilt]
 * @param limits lines across
 * @param words a value with its unit
 */
@SuppressWarnings("ArrayRecordComponent")
record Curve(double[] tilts, double[] values, List<Limit> limits, DoubleFunction<String> words) {
    /**
     * A line across.
     *
     * @param at SI
     * @param name in the trade's words
     */
    record Limit(double at, String name) {}

    /** Smallest value to be seen, SI. */
    double low() {
        double low = Math.min(0, values[0]);
        for (double v : values) {
            low = Math.min(low, v);
        }
        return low;
    }

    /** Largest value to be seen, SI: a limit out of all proportion is left out. */
    double high() {
        double high = 0;
        for (double v : values) {
            high = Math.max(high, v);
        }
        for (Limit limit : limits) {
            if (limit.at < 2.2 * high) {
                high = Math.max(high, limit.at);
            }
        }
        return high > low() ? high * 1.06 : low() + 1;
    }
}
