// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import java.util.List;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Outflow;
import tipwright.geometry.Vec3;
import tipwright.time.Rim;

/** Weirs and orifices. */
final class Flows {
    private static final Vec3 UP = new Vec3(0, 1, 0);
    private static final Vec3 SIDEWAYS = new Vec3(1, 0, 0);
    private static final double FOOT = 0.3048;

    private Flows() {}

    static void addTo(Figures figures) {
        figures.add("weir-si", () -> door(1, 1, SIDEWAYS, 0.62).flow(UP, -0.5 + 0.2));
        figures.add("francis", Flows::francis);
        // Square and level, of the same area as the round hole.
        double side = Math.sqrt(Math.PI) / 20;
        figures.add("orifice", () -> door(side, side, new Vec3(0, -1, 0), 0.62).flow(UP, 1));
        figures.add("deep-opening", () -> door(0.3, 0.3, SIDEWAYS, 0.62).flow(UP, 0.15 + 0.2));
        figures.add("notch", Flows::notch);
    }

    private static Rim door(double width, double height, Vec3 normal, double coefficient) {
        Outflow outflow = new Outflow(coefficient, 1);
        return new Rim(new Opening(
                "door", Opening.Rim.RECTANGLE, null, width, height, List.of(), Vec3.ZERO, normal, 0, null, outflow));
    }

    /** ft3/s; 3.33 in US units is a coefficient of 0.62268 at g 32.174 ft/s2. */
    private static double francis() {
        return door(4 * FOOT, 4 * FOOT, SIDEWAYS, 0.62268).flow(UP, (-2 + 1) * FOOT) / (FOOT * FOOT * FOOT);
    }

    private static double notch() {
        double top = Math.tan(Math.toRadians(30));
        List<Vec3> corners = List.of(Vec3.ZERO, new Vec3(0, 1, top), new Vec3(0, 1, -top));
        Outflow outflow = new Outflow(0.62, 1);
        Rim notch = new Rim(
                new Opening("notch", Opening.Rim.POLYGON, null, null, null, corners, null, null, 0, null, outflow));
        return notch.flow(UP, 0.3);
    }
}
