// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import tipwright.geometry.Vec3;

/**
 * A prism tank in the side view, cut by an independent library of plane geometry; levels by bisection of the area. Source: JTS
 * Topology Suite.
 */
final class FlatTank {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final double FAR = 50;

    private final double[] outline;

    /** Corners x, y, x, y in metres. */
    FlatTank(double... outline) {
        this.outline = outline;
    }

    /** A hopper up to 1.5 m: flat bottom, two sloping sides, a wider top; seeded. */
    static FlatTank hopper(Random random) {
        double left = -0.3 - 0.5 * random.nextDouble();
        double right = 0.3 + 0.5 * random.nextDouble();
        double high = 1.5;
        return new FlatTank(
                -0.2, 0.5, 0.1 + 0.2 * random.nextDouble(), 0.5, right, 0.9, right, high, left, high, left, 0.8);
    }

    Geometry room() {
        return polygon(outline);
    }

    String yaml() {
        StringBuilder text = new StringBuilder("{shape: prism, width: 1 m, outline: [");
        for (int i = 0; i < outline.length; i += 2) {
            text.append(i > 0 ? ", [" : "[")
                    .append(outline[i])
                    .append(" m, ")
                    .append(outline[i + 1])
                    .append(" m]");
        }
        return text.append("]}").toString();
    }

    /** The lowest part of a room that has an area; 'up' leans from +y towards +x by an angle. */
    static Geometry lowest(Geometry room, double lean, double area) {
        double low = -FAR / 2;
        double high = FAR / 2;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (both(room, below(lean, middle)).getArea() < area) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return both(room, below(lean, 0.5 * (low + high)));
    }

    static Geometry both(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION);
    }

    static Geometry without(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(a, b, OverlayNG.DIFFERENCE);
    }

    /** A large square whose upper side is a level. */
    static Geometry below(double lean, double level) {
        double ux = Math.sin(lean);
        double uy = Math.cos(lean);
        double x = ux * level;
        double y = uy * level;
        return polygon(
                x - uy * FAR,
                y + ux * FAR,
                x + uy * FAR,
                y - ux * FAR,
                x + uy * FAR - ux * FAR,
                y - ux * FAR - uy * FAR,
                x - uy * FAR - ux * FAR,
                y + ux * FAR - uy * FAR);
    }

    private static Geometry polygon(double... xy) {
        Coordinate[] ring = new Coordinate[xy.length / 2 + 1];
        for (int i = 0; i < ring.length; i++) {
            int k = 2 * (i % (xy.length / 2));
            ring[i] = new Coordinate(xy[k], xy[k + 1]);
        }
        return JTS.createPolygon(ring);
    }

    /** First moment of mass of something as wide as the tank, kg m. */
    static Vec3 moment(Geometry part, double density) {
        double mass = part.getArea() * density;
        return part.isEmpty()
                ? Vec3.ZERO
                : new Vec3(part.getCentroid().getX(), part.getCentroid().getY(), 0).times(mass);
    }
}
