// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * A moving mass stopped by something elastic.
 *
 * <p>Source: energy of the mass goes into the spring (worked examples on public pages, read). Without damping and with a stop of no
 * mass, so on the safe side.
 */
public final class Impact {
    private Impact() {}

    /**
     * How many times the static load a dropped weight presses: 1 + sqrt(1 + 2 h / d). From no height at all, 2.
     *
     * @param height of the drop, m
     * @param sag of the stop under the weight at rest, m
     */
    public static double factor(double height, double sag) {
        Precondition.notNegative("height", height);
        Precondition.positive("sag", sag);
        return 1 + Math.sqrt(1 + 2 * height / sag);
    }

    /**
     * Greatest force on a stop when no other force drives the mass on, N: v sqrt(k m).
     *
     * @param mass kg
     * @param speed m/s
     * @param stiffness N/m
     */
    public static double force(double mass, double speed, double stiffness) {
        return force(mass, speed, stiffness, 0);
    }

    /**
     * Greatest force on a stop, N, when a steady force drives the mass on: F + sqrt(F^2 + k m v^2).
     *
     * @param mass kg
     * @param speed m/s
     * @param stiffness N/m
     * @param steady weight or drive that goes on pushing, N
     */
    public static double force(double mass, double speed, double stiffness, double steady) {
        Precondition.notNegative("mass", mass);
        Precondition.positive("stiffness", stiffness);
        Precondition.notNegative("steady", steady);
        return steady + Math.sqrt(steady * steady + stiffness * mass * speed * speed);
    }

    /** Stiffness of springs one behind the other, N/m; one that cannot give is infinite. */
    public static double inSeries(double... stiffnesses) {
        double give = 0;
        for (double k : stiffnesses) {
            if (!(k > 0)) {
                throw new IllegalArgumentException("stiffness must be above 0, is " + k);
            }
            give += 1 / k;
        }
        return 1 / give;
    }

    /**
     * Mass that a turning body has at a place that moves along a line, kg: J w^2 / v^2 = J / r^2.
     *
     * @param inertia about its axis, kg m2
     * @param arm how far that place moves for one radian, m
     */
    public static double referred(double inertia, double arm) {
        Precondition.notNegative("inertia", inertia);
        Precondition.positive("arm", Math.abs(arm));
        return inertia / (arm * arm);
    }
}
