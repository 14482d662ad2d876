// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import tipwright.design.actuator.HydraulicActuator;
import tipwright.design.actuator.Rod;
import tipwright.design.supply.Cable;

/** Cables and cylinders. */
final class Supplies {
    private static final double INCH = 0.0254;
    private static final double PSI = 6894.757293168361;
    private static final double LBF = 4.4482216152605;
    private static final double FOOT = 0.3048;
    private static final double ROOM = 293.15;

    private Supplies() {}

    static void addTo(Figures figures) {
        for (int awg : new int[] {14, 12, 10, 8, 0}) {
            // Out and back, so half the length.
            figures.add("awg-" + awg, () -> copper(awg, 500 * FOOT).resistance());
        }
        figures.add("drop", () -> 20 * copper(10, 25 * FOOT).resistance());
        HydraulicActuator metric = cylinder(0.050, 0.028, 160e5);
        HydraulicActuator customary = cylinder(2 * INCH, 1.125 * INCH, 2000 * PSI);
        figures.add("push", () -> metric.ratedPush() / 1000);
        figures.add("pull", () -> metric.ratedPull() / 1000);
        figures.add("push-us", () -> customary.ratedPush() / LBF);
        figures.add("pull-us", () -> customary.ratedPull() / LBF);
        figures.add("master-slave", () -> 1.38e4 / cylinder(0.025, 0.012, 1).boreArea() / 1e6);
        double gallonsPerMinute = 231 * INCH * INCH * INCH / 60;
        figures.add("speed-us", () -> 2 * gallonsPerMinute / customary.boreArea() / INCH * 60);
    }

    private static Cable copper(double awg, double length) {
        return new Cable(awg, null, length, ROOM, Cable.Metal.COPPER, 1, null);
    }

    /** Without losses. */
    private static HydraulicActuator cylinder(double bore, double rod, double pressure) {
        return new HydraulicActuator(
                bore,
                new Rod(rod, 0, null, 355e6, 205e9),
                0.5,
                0.5,
                pressure,
                null,
                HydraulicActuator.Acting.DOUBLE,
                null,
                null,
                null,
                1,
                null);
    }
}
