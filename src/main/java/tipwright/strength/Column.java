// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.Rod;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.actuator.Tube;

/**
 * Buckling load of an actuator as a column pinned at both ends.
 *
 * <p>One section: Euler P = pi^2 E I / L^2, or Johnson P = A Sy (1 - Sy (L/k)^2 / (4 pi^2 E)) where L/k is under sqrt(2 pi^2 E /
 * Sy). Rod and tube: lowest root of sin(k1 L1) cos(k2 L2) / k1 + cos(k1 L1) sin(k2 L2) / k2 = 0, k = sqrt(P / E I); of more sections the
 * same by passing bow and slope on from one to the next. Source:
 * elastic column theory, as in R. C. Hibbeler, Mechanics of Materials, chapter 13; J. B. Johnson's parabola as in V. M. Faires,
 * Design of Machine Elements; the stepped form from beam theory (from memory).
 */
public final class Column {
    /** As near as a buckling load is worked out, as a share of it. */
    private static final double ROUNDING = 1e-9;

    private Column() {}

    /**
     * Buckling load of one section, N.
     *
     * @param length pin to pin, m
     * @param area m2
     * @param inertia m4
     * @param modulus Pa
     * @param yield Pa
     */
    public static double uniform(double length, double area, double inertia, double modulus, double yield) {
        double slenderness = length / Math.sqrt(inertia / area);
        double change = Math.sqrt(2 * Math.PI * Math.PI * modulus / yield);
        if (slenderness < change) {
            return area * yield * (1 - yield * slenderness * slenderness / (4 * Math.PI * Math.PI * modulus));
        }
        return Math.PI * Math.PI * modulus * inertia / (length * length);
    }

    /**
     * Elastic buckling load of two sections in line, pinned at the far ends, N.
     *
     * @param stiffness1 E I of the first, N m2
     * @param length1 m
     * @param stiffness2 E I of the second, N m2
     * @param length2 m
     */
    public static double stepped(double stiffness1, double length1, double stiffness2, double length2) {
        return stepped(new double[] {stiffness1, stiffness2}, new double[] {length1, length2});
    }

    /**
     * Elastic buckling load of any number of sections in line, pinned at the far ends, N.
     *
     * <p>In a section the bow is A sin(k x + phase), k = sqrt(P / E I); bow and slope go on unbroken into the next. The lowest load
     * is that at which the bow that leaves the first pin comes back to the line at the last one; under less it stays on its side,
     * under more it comes back earlier (Sturm), so that narrowing it down skips none.
     *
     * @param stiffness E I, N m2 [section]; not modified
     * @param length m, over 0 [section]; not modified
     */
    public static double stepped(double[] stiffness, double[] length) {
        // The whole of the weakest section buckles no later than it really does; a section of half a wave alone no
        // earlier.
        double whole = 0;
        double least = Double.POSITIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int i = 0; i < stiffness.length; i++) {
            whole += length[i];
            least = Math.min(least, stiffness[i]);
            high = Math.min(high, Math.PI * Math.PI * stiffness[i] / (length[i] * length[i]));
        }
        double low = Math.PI * Math.PI * least / (whole * whole) * (1 - 1e-12);
        double below = past(low, stiffness, length);
        double above = past(high, stiffness, length);
        int kept = 0;
        for (int i = 0; i < 200 && high - low > 1e-13 * high; i++) {
            boolean halve = i % 3 == 2 || !(below < 0) || !(above > 0);
            double share = halve ? 0.5 : -below / (above - below);
            double middle = low + Math.max(1e-14, Math.min(1 - 1e-14, share)) * (high - low);
            double there = past(middle, stiffness, length);
            if (there == 0) {
                return middle;
            }
            // Illinois: an end that stays twice running counts half, or it would stay for good.
            if (there > 0) {
                high = middle;
                above = there;
                below = kept > 0 ? below / 2 : below;
                kept = 1;
            } else {
                low = middle;
                below = there;
                above = kept < 0 ? above / 2 : above;
                kept = -1;
            }
        }
        return 0.5 * (low + high);
    }

    /** How far past half a wave the bow is at the end, rad, or where it comes back to the line before; under 0: not yet there. */
    private static double past(double load, double[] stiffness, double[] length) {
        double bow = 0;
        double slope = 1;
        double past = 0;
        for (int i = 0; i < stiffness.length; i++) {
            double k = Math.sqrt(load / stiffness[i]);
            double phase = Math.atan2(k * bow, slope) + k * length[i];
            past = phase - Math.PI;
            if (past >= 0) {
                return past;
            }
            bow = Math.sin(phase);
            slope = k * Math.cos(phase);
        }
        return past;
    }

    /**
     * Buckling load of sections of one steel in line, N: stepped, passing over to the squash load of the smallest section as
     * Johnson's parabola does.
     *
     * @param modulus Pa
     * @param yield Pa
     */
    public static double stages(List<TelescopicCylinder.Part> parts, double modulus, double yield) {
        double elastic = stepped(
                parts.stream().mapToDouble(p -> modulus * p.inertia()).toArray(),
                parts.stream().mapToDouble(TelescopicCylinder.Part::length).toArray());
        double squash = yield
                * parts.stream()
                        .mapToDouble(TelescopicCylinder.Part::area)
                        .min()
                        .orElseThrow();
        return elastic > squash / 2 ? squash * (1 - squash / (4 * elastic)) : elastic;
    }

    /** Whether enough is known of an actuator to tell its buckling load. */
    public static boolean known(Actuator actuator) {
        return actuator.rod() != null || byStages(actuator);
    }

    /** Whether an actuator is taken stage by stage. */
    public static boolean byStages(Actuator actuator) {
        return actuator instanceof TelescopicCylinder t && !t.column(t.closed()).isEmpty();
    }

    /**
     * Buckling load of an actuator at a pin-to-pin length in m, N: a telescopic cylinder stage by stage where their bores are known,
     * else rod and body; NaN when nothing is known.
     */
    public static double actuator(Actuator actuator, double length) {
        if (actuator instanceof TelescopicCylinder t) {
            List<TelescopicCylinder.Part> parts = t.column(length);
            if (!parts.isEmpty()) {
                return stages(parts, t.modulus(), t.yield());
            }
        }
        Rod rod = actuator.rod();
        return rod == null ? Double.NaN : actuator(rod, actuator.tube(), length);
    }

    /**
     * What an actuator bears without buckling at every pin-to-pin length of a range, N: that at the longest; 0 where more length does
     * not always mean less, stage by stage or where the bare rod stands for rod and body.
     */
    public static double least(Actuator actuator, double shortest, double longest) {
        Tube tube = actuator.tube();
        boolean falls = !byStages(actuator) && (tube == null || tube.length() < shortest);
        return falls ? actuator(actuator, longest) * (1 - ROUNDING) : 0;
    }

    /**
     * Buckling load of a rod at a pin-to-pin length, N: stepped with its tube where that is known, never more than the bare rod's
     * yield; else the rod over the whole length.
     */
    public static double actuator(Rod rod, @Nullable Tube tube, double length) {
        if (tube == null || tube.length() >= length) {
            return uniform(length, rod.area(), rod.inertia(), rod.modulus(), rod.yield());
        }
        double free = length - tube.length();
        double elastic = stepped(rod.modulus() * rod.inertia(), free, rod.modulus() * tube.inertia(), tube.length());
        double equal = Math.PI * Math.sqrt(rod.modulus() * rod.inertia() / elastic);
        return uniform(equal, rod.area(), rod.inertia(), rod.modulus(), rod.yield());
    }
}
