// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import java.util.List;

/**
 * How actuators side by side share their force. Cylinders stand on one line with one pressure and share by area; others carry the
 * same each. Source: p = F / A.
 */
public final class Sharing {
    private Sharing() {}

    /**
     * Share of each in the force of all [actuator]; together 1.
     *
     * @param all at least one
     * @param length pin to pin, m
     * @param push whether they push, else they pull
     */
    public static double[] shares(List<PlacedActuator> all, double length, boolean push) {
        if (all.size() == 1) {
            return new double[] {1};
        }
        double[] shares = new double[all.size()];
        double sum = 0;
        if (byArea(all)) {
            for (int i = 0; i < shares.length; i++) {
                shares[i] = ((Cylinder) all.get(i).actuator()).oilArea(length, push);
                sum += shares[i];
            }
        }
        for (int i = 0; i < shares.length; i++) {
            shares[i] = sum > 0 ? shares[i] / sum : 1.0 / shares.length;
        }
        return shares;
    }

    /** Largest share of one of them, with the same parameters. */
    public static double largest(List<PlacedActuator> all, double length, boolean push) {
        double most = 0;
        for (double share : shares(all, length, push)) {
            most = Math.max(most, share);
        }
        return most;
    }

    /** Whether all are cylinders. */
    private static boolean byArea(List<PlacedActuator> all) {
        for (PlacedActuator placed : all) {
            if (!(placed.actuator() instanceof Cylinder)) {
                return false;
            }
        }
        return true;
    }

    /** Place along z at which the force of all acts, m. */
    public static double middle(List<PlacedActuator> all, double length, boolean push) {
        double[] shares = shares(all, length, push);
        double z = 0;
        for (int i = 0; i < shares.length; i++) {
            z += shares[i] * all.get(i).z();
        }
        return z;
    }
}
