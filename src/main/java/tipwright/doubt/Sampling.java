// SPDX-License-Identifier: Apache-2.0
package tipwright.doubt;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.hipparchus.special.Erf;
import tipwright.design.file.Uncertain;

/**
 * A Latin hypercube of values that may be off: each value takes every hundredth of its normal distribution once, in an order of its
 * own. Source: M. D. McKay, R. J. Beckman, W. J. Conover, Technometrics 21 (1979) 239.
 */
final class Sampling {
    private static final double SQRT2 = Math.sqrt(2);

    private final List<Uncertain> values;
    private final double[][] offsets;

    /** So many samples; the same seed gives the same. */
    Sampling(List<Uncertain> values, int samples, long seed) {
        this.values = values;
        Random random = new Random(seed);
        offsets = new double[values.size()][samples];
        for (double[] own : offsets) {
            for (int i = 0; i < samples; i++) {
                own[i] = SQRT2 * Erf.erfInv(2 * (i + random.nextDouble()) / samples - 1);
            }
            for (int i = samples - 1; i > 0; i--) {
                int other = random.nextInt(i + 1);
                double kept = own[i];
                own[i] = own[other];
                own[other] = kept;
            }
        }
    }

    /** How many values may be off. */
    int values() {
        return values.size();
    }

    /** How far off a value is in a sample, in standard doubts. */
    double offset(int value, int sample) {
        return offsets[value][sample];
    }

    /** The values of a sample by their paths, SI. */
    Map<String, Double> sample(int number) {
        Map<String, Double> all = new HashMap<>();
        for (int i = 0; i < values.size(); i++) {
            Uncertain v = values.get(i);
            all.put(v.path(), v.value() + offsets[i][number] * v.doubt());
        }
        return all;
    }
}
