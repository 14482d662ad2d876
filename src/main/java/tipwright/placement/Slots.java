// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;

/**
 * Packs the loads of one tilt for the kernel, less those that cannot govern.
 *
 * <p>For one drive at one tilt every force and bearing load is a convex function of (moment, weight on the bearings), and doubles
 * when those double. So a load that is a mix of others with shares of 0 or more that add up to less than 1 never gives the largest:
 * the empty tank mostly is such a mix. A cross slope makes it a mix but for little, which counts against the shares. A load left
 * out here can only make a candidate look better than it is; every tilt of every load is looked at before a candidate is taken. So
 * of loads that are as good as the same, a fill to the brim and one just under it, one is enough.
 * Source: maximum of a convex function over a polytope is at a corner.
 */
final class Slots {
    /** Shares may add up to this: a load that is left out is no more than a thousandth worse than those that it is told by. */
    private static final double ALIKE = 1.001;

    private static final double ARM = 0.3;

    private Slots() {}

    /** The loads of a tilt, {@link Kernel#FIGURES} numbers each. */
    static double[] of(TiltLoads loads, int tilt) {
        List<double[][]> left = new ArrayList<>();
        for (double[][][] load : loads.loads()) {
            if (left.stream().noneMatch(d -> same(d, load[tilt]))) {
                left.add(load[tilt]);
            }
        }
        for (int i = left.size() - 1; i >= 0; i--) {
            List<double[]> others = new ArrayList<>();
            for (int k = 0; k < left.size(); k++) {
                if (k != i) {
                    others.add(both(left.get(k)));
                }
            }
            if (left.size() > 1 && Combination.least(others, both(left.get(i))) < ALIKE) {
                left.remove(i);
            }
        }
        double[] packed = new double[left.size() * Kernel.FIGURES];
        for (int i = 0; i < left.size(); i++) {
            int k = i * Kernel.FIGURES;
            double[][] ways = left.get(i);
            packed[k] = java.util.Arrays.equals(ways[1], ways[2]) ? 0 : 1;
            pack(ways[1], loads.share(), packed, k + Kernel.RAISE);
            pack(ways[2], loads.share(), packed, k + Kernel.LOWER);
        }
        return packed;
    }

    private static void pack(double[] f, double[] share, double[] packed, int k) {
        packed[k] = f[0];
        for (int g = 0; g < 4; g++) {
            packed[k + 1 + g] = 2 * share[g / 2] * f[1 + g];
        }
        packed[k + 5] = f[1] * f[1] + f[2] * f[2];
        packed[k + 6] = f[3] * f[3] + f[4] * f[4];
    }

    /** Raise and lower in a row, in N: the moment over a usual arm. */
    private static double[] both(double[][] ways) {
        double[] all = new double[2 * TiltLoads.FIGURES];
        for (int way = 0; way < 2; way++) {
            System.arraycopy(ways[way + 1], 0, all, way * TiltLoads.FIGURES, TiltLoads.FIGURES);
            all[way * TiltLoads.FIGURES] /= ARM;
        }
        return all;
    }

    private static boolean same(double[][] a, double[][] b) {
        return java.util.Arrays.deepEquals(a, b);
    }
}
