// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import java.util.Arrays;
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
        Actuator first = all.get(0).actuator();
        boolean alike = all.stream().allMatch(p -> p.actuator().equals(first));
        double[] areas = new double[all.size()];
        if (!alike && all.stream().allMatch(p -> p.actuator() instanceof Cylinder)) {
            Arrays.setAll(areas, i -> ((Cylinder) all.get(i).actuator()).oilArea(length, push));
        }
        double sum = Arrays.stream(areas).sum();
        Arrays.setAll(areas, i -> sum > 0 ? areas[i] / sum : 1.0 / areas.length);
        return areas;
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
