// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;

/** Packs the loads of one tilt for the kernel; load cases that are the same there count once. */
final class Slots {
    private static final double SAME = 1e-12;

    private Slots() {}

    /** The loads of a tilt and way, {@link Kernel#FIGURES} numbers each. */
    static double[] of(TiltLoads loads, int tilt, int way) {
        List<double[]> distinct = new ArrayList<>();
        for (double[][][] load : loads.loads()) {
            double[] figures = load[tilt][way];
            if (distinct.stream().noneMatch(d -> same(d, figures))) {
                distinct.add(figures);
            }
        }
        double[] packed = new double[distinct.size() * Kernel.FIGURES];
        for (int i = 0; i < distinct.size(); i++) {
            double[] f = distinct.get(i);
            int k = i * Kernel.FIGURES;
            packed[k] = f[0];
            for (int g = 0; g < 4; g++) {
                packed[k + 1 + g] = 2 * loads.share()[g / 2] * f[1 + g];
            }
            packed[k + 5] = f[1] * f[1] + f[2] * f[2];
            packed[k + 6] = f[3] * f[3] + f[4] * f[4];
        }
        return packed;
    }

    private static boolean same(double[] a, double[] b) {
        double size = 0;
        double apart = 0;
        for (int i = 0; i < a.length; i++) {
            size = Math.max(size, Math.abs(a[i]));
            apart = Math.max(apart, Math.abs(a[i] - b[i]));
        }
        return apart <= SAME * size;
    }
}
