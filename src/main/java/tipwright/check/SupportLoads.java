// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.Arrays;
import java.util.List;
import tipwright.geometry.Vec2;

/**
 * Shares a force square to the ground between supports: equal springs under a stiff frame, so R = a + b x + c z; one that would
 * be pulled up carries nothing. With three supports this is plain statics. Source: elementary statics; equal springs: common
 * practice, no source.
 */
public final class SupportLoads {
    private SupportLoads() {}

    /**
     * Force on each support, N; all NaN when the force acts outside of them, so that it tips over.
     *
     * @param supports x and z, m
     * @param force N, pressing
     * @param at x and z where it acts on the ground, m
     */
    public static double[] of(List<Vec2> supports, double force, Vec2 at) {
        double[] loads = new double[supports.size()];
        boolean[] stands = new boolean[supports.size()];
        Arrays.fill(stands, true);
        for (int round = 0; round < supports.size(); round++) {
            Arrays.fill(loads, 0);
            if (!share(supports, stands, force, at, loads)) {
                Arrays.fill(loads, Double.NaN);
                return loads;
            }
            int worst = 0;
            for (int i = 1; i < loads.length; i++) {
                worst = loads[i] < loads[worst] ? i : worst;
            }
            if (loads[worst] >= -1e-9 * force) {
                return loads;
            }
            stands[worst] = false;
        }
        Arrays.fill(loads, Double.NaN);
        return loads;
    }

    private static boolean share(List<Vec2> supports, boolean[] stands, double force, Vec2 at, double[] loads) {
        int n = 0;
        Vec2 sum = Vec2.ZERO;
        for (int i = 0; i < stands.length; i++) {
            if (stands[i]) {
                n++;
                sum = sum.plus(supports.get(i));
            }
        }
        Vec2 middle = sum.times(1.0 / Math.max(1, n));
        double xx = 0;
        double xz = 0;
        double zz = 0;
        for (int i = 0; i < stands.length; i++) {
            if (stands[i]) {
                Vec2 p = supports.get(i).minus(middle);
                xx += p.x() * p.x();
                xz += p.x() * p.y();
                zz += p.y() * p.y();
            }
        }
        Vec2 off = at.minus(middle);
        double det = xx * zz - xz * xz;
        if (!(det > 1e-12 * (xx + zz) * (xx + zz))) {
            return false;
        }
        double b = force * (zz * off.x() - xz * off.y()) / det;
        double c = force * (xx * off.y() - xz * off.x()) / det;
        for (int i = 0; i < stands.length; i++) {
            if (stands[i]) {
                Vec2 p = supports.get(i).minus(middle);
                loads[i] = force / n + b * p.x() + c * p.y();
            }
        }
        return true;
    }
}
