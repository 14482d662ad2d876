// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import tipwright.design.key.NameId;
import tipwright.geometry.Head;
import tipwright.geometry.Moments;
import tipwright.geometry.Plane;
import tipwright.geometry.RevolvedTank;
import tipwright.geometry.Vec3;

/** Volumes and centroids of tanks and what is in them. */
final class Hydrostatics {
    private static final Vec3 UP = new Vec3(0, 1, 0);
    private static final Vec3 AXIS = new Vec3(1, 0, 0);
    private static final double INCH = 0.0254;
    private static final double CUBIC_INCH = INCH * INCH * INCH;
    private static final double GALLON = 231 * CUBIC_INCH;

    private Hydrostatics() {}

    static void addTo(Figures figures) {
        for (String[] line : ReferenceTables.lines("horizontal-tank-volume.csv", ",")) {
            figures.add(id(line), () -> gallons(line));
        }
        figures.add("segment-half", () -> segment().volume());
        figures.add("segment-centroid", () -> -segment().centroid().y());
        figures.add("lying-tank", Hydrostatics::lyingTank);
        figures.add("cap-volume", () -> cap().volume());
        figures.add("cap-centroid", () -> -cap().centroid().y());
        figures.add("ellipsoidal-head", () -> head(Head.semiEllipsoidal(), 48 * INCH) / CUBIC_INCH);
        figures.add("dished-depth", () -> new Head.Torispherical(0.9, 0.2).depth(96));
        figures.add("kloepper-volume", () -> head(new Head.Torispherical(1, 0.1), 1));
        figures.add(
                "drum-us",
                () -> drum(24 * INCH, 72 * INCH)
                                .below(new Plane(UP, -12 * INCH))
                                .volume()
                        / GALLON);
        figures.add("drum-tilted", Hydrostatics::tilted);
    }

    /** The id of a line of the table of lying tanks. */
    static String id(String[] line) {
        return "tank-" + NameId.of(line[0]) + "-" + line[2];
    }

    private static RevolvedTank drum(double radius, double length) {
        return RevolvedTank.of(Vec3.ZERO, AXIS, 2 * radius, length, Head.flat(), Head.flat());
    }

    private static double gallons(String[] line) {
        double diameter = 108;
        double depth = Double.parseDouble(line[1]) / diameter;
        Head head =
                switch (line[0]) {
                    case "flat" -> Head.flat();
                    case "conical" -> new Head.Conical(depth);
                    case "ellipsoidal" -> new Head.Ellipsoidal(depth);
                    case "spherical cap" -> new Head.Dished(depth);
                    default -> Head.torispherical();
                };
        RevolvedTank tank = RevolvedTank.of(Vec3.ZERO, AXIS, diameter * INCH, 156 * INCH, head, head);
        double level = (Double.parseDouble(line[2]) - diameter / 2) * INCH;
        return tank.below(new Plane(UP, level)).volume() / GALLON;
    }

    private static Moments segment() {
        return drum(1, 1).below(new Plane(UP, -0.5));
    }

    /** The radius follows from half the width of the surface and its distance from the top, by Pythagoras. */
    private static double lyingTank() {
        double radius = (0.5 * 0.5 + 0.2 * 0.2) / (2 * 0.2);
        return drum(radius, 10).below(new Plane(UP, radius - 0.2)).volume();
    }

    /** A cap cut off a ball of radius 1.2 m. */
    private static Moments cap() {
        RevolvedTank ball = RevolvedTank.of(Vec3.ZERO, AXIS, 2.4, 0, Head.hemispherical(), Head.hemispherical());
        return ball.below(new Plane(UP, 0.3 - 1.2));
    }

    private static double head(Head head, double diameter) {
        return RevolvedTank.of(Vec3.ZERO, AXIS, diameter, 0, Head.flat(), head)
                .whole()
                .volume();
    }

    private static double tilted() {
        double tilt = Math.toRadians(10);
        Plane surface = new Plane(new Vec3(Math.sin(tilt), Math.cos(tilt), 0), 0);
        return -drum(0.5, 2).below(surface).centroid().x();
    }
}
