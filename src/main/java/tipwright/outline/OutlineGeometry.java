// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import tipwright.analysis.BodyPosition;
import tipwright.geometry.Hull;
import tipwright.geometry.Mesh;
import tipwright.geometry.MeshCut;
import tipwright.geometry.Plane;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Makes and moves flat outlines as areas. */
public final class OutlineGeometry {
    private static final int QUARTER = 8;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private OutlineGeometry() {}

    /** An area with these corners, either way round; a crossing outline is mended. */
    public static Geometry polygon(List<Vec2> corners) {
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Vec2 p = corners.get(i % corners.size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        Geometry made = FACTORY.createPolygon(ring);
        return made.isValid() ? made : GeometryFixer.fix(made);
    }

    /** Corners of a rectangle along x from one end to the other, half its width to each side. */
    static List<Vec2> barCorners(double from, double to, double half) {
        return List.of(new Vec2(from, -half), new Vec2(to, -half), new Vec2(to, half), new Vec2(from, half));
    }

    static Geometry disc(Vec2 middle, double radius) {
        return FACTORY.createPoint(new Coordinate(middle.x(), middle.y())).buffer(radius, QUARTER);
    }

    static Geometry nothing() {
        return FACTORY.createPolygon();
    }

    /** Swollen by a wall. */
    static Geometry thick(Geometry area, double wall) {
        return wall > 0 && !area.isEmpty() ? area.buffer(wall, QUARTER) : area;
    }

    /** Without what lies within a radius of a point; itself when nothing does. */
    public static Geometry without(Geometry area, Vec2 middle, double radius) {
        boolean near = area.distance(FACTORY.createPoint(new Coordinate(middle.x(), middle.y()))) < radius;
        return near ? OverlayNGRobust.overlay(area, disc(middle, radius), OverlayNG.DIFFERENCE) : area;
    }

    /**
     * Silhouette along z of the part of a mesh that lies in a zone.
     *
     * @param convex whether the solid is, so that the hull of the points is the silhouette
     */
    static Geometry silhouette(Mesh mesh, ZRange zone, boolean convex) {
        return convex ? hull(mesh, zone) : between(mesh, zone);
    }

    /** Of the corners in the zone, and of where the edges go through its ends. */
    private static Geometry hull(Mesh mesh, ZRange zone) {
        double[] xyz = mesh.xyz();
        int[] corners = mesh.corners();
        double[] points = new double[2 * (xyz.length / 3 + 2 * corners.length)];
        int count = 0;
        for (int i = 0; i < xyz.length; i += 3) {
            if (xyz[i + 2] >= zone.from() && xyz[i + 2] <= zone.to()) {
                points[2 * count] = xyz[i];
                points[2 * count++ + 1] = xyz[i + 1];
            }
        }
        for (int edge = 0; edge < corners.length; edge++) {
            int a = 3 * corners[edge];
            int b = 3 * corners[edge % 3 == 2 ? edge - 2 : edge + 1];
            count = crossing(points, count, xyz, a, b, zone.from());
            count = crossing(points, count, xyz, a, b, zone.to());
        }
        Geometry hull = Hull.around(points, count);
        return hull.getDimension() == 2 ? hull : nothing();
    }

    /** Adds where an edge goes through an end of a zone, if it does; gives how many points there are then. */
    private static int crossing(double[] points, int count, double[] xyz, int a, int b, double z) {
        double share = (z - xyz[a + 2]) / (xyz[b + 2] - xyz[a + 2]);
        if (!(share > 0 && share < 1)) {
            return count;
        }
        points[2 * count] = xyz[a] + (xyz[b] - xyz[a]) * share;
        points[2 * count + 1] = xyz[a + 1] + (xyz[b + 1] - xyz[a + 1]) * share;
        return count + 1;
    }

    /** The body between the two ends of the zone, closed there, so that the inside counts too. */
    private static Geometry between(Mesh mesh, ZRange zone) {
        Mesh part = cut(cut(mesh, 1, zone.to()), -1, -zone.from());
        List<Vec2> places = new ArrayList<>();
        for (int i = 0; i < part.xyz().length / 3; i++) {
            places.add(part.vertex(i).xy());
        }
        return union(part, places);
    }

    /**
     * Silhouette of a whole mesh in a view.
     *
     * @param place where a point of it is in the view
     * @param convex whether the solid is
     */
    static Geometry seen(Mesh mesh, Function<Vec3, Vec2> place, boolean convex) {
        List<Vec2> points = new ArrayList<>();
        for (int i = 0; i < mesh.xyz().length / 3; i++) {
            points.add(place.apply(mesh.vertex(i)));
        }
        if (convex) {
            List<Vec2> hull = Hull.around(points);
            return hull.size() > 2 ? polygon(hull) : nothing();
        }
        return union(mesh, points);
    }

    /** All triangles of a mesh, joined. */
    private static Geometry union(Mesh mesh, List<Vec2> places) {
        List<Geometry> pieces = new ArrayList<>();
        for (int t = 0; t < mesh.triangles(); t++) {
            List<Vec2> piece = new ArrayList<>();
            for (int c = 0; c < 3; c++) {
                piece.add(places.get(mesh.corners()[3 * t + c]));
            }
            List<Vec2> hull = Hull.around(piece);
            if (hull.size() > 2) {
                pieces.add(polygon(hull));
            }
        }
        return pieces.isEmpty() ? nothing() : OverlayNGRobust.union(pieces);
    }

    /** Corners without those that the line needs not to stay within a tolerance, m. */
    static List<Vec2> simpler(List<Vec2> corners, boolean closed, double tolerance) {
        int n = corners.size();
        if (n < 3) {
            return corners;
        }
        Coordinate[] line = new Coordinate[closed ? n + 1 : n];
        for (int i = 0; i < line.length; i++) {
            Vec2 p = corners.get(i % n);
            line[i] = new Coordinate(p.x(), p.y());
        }
        Coordinate[] kept = DouglasPeuckerSimplifier.simplify(FACTORY.createLineString(line), tolerance)
                .getCoordinates();
        List<Vec2> all = new ArrayList<>();
        for (int i = 0; i < (closed ? kept.length - 1 : kept.length); i++) {
            all.add(new Vec2(kept[i].x, kept[i].y));
        }
        return all;
    }

    /** Several areas as one. */
    static Geometry joined(List<Geometry> pieces) {
        return pieces.isEmpty() ? nothing() : OverlayNGRobust.union(pieces);
    }

    /** The lines around an area, m: of each piece the outside, then its holes; the first corner is not repeated. */
    static List<List<Vec2>> rings(Geometry area) {
        List<List<Vec2>> rings = new ArrayList<>();
        for (Object found : PolygonExtracter.getPolygons(area)) {
            Polygon polygon = (Polygon) found;
            rings.add(corners(polygon.getExteriorRing()));
            for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                rings.add(corners(polygon.getInteriorRingN(i)));
            }
        }
        return rings;
    }

    private static List<Vec2> corners(LinearRing ring) {
        List<Vec2> corners = new ArrayList<>();
        for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
            Coordinate c = ring.getCoordinateN(i);
            corners.add(new Vec2(c.x, c.y));
        }
        return corners;
    }

    private static Mesh cut(Mesh mesh, int sign, double limit) {
        return Double.isInfinite(limit) ? mesh : MeshCut.below(mesh, new Plane(new Vec3(0, 0, sign), limit));
    }

    /** A part in the axes of another: moved as the one is placed, then seen from the other. */
    public static Geometry seenFrom(Geometry part, BodyPosition placed, BodyPosition viewer) {
        double turn = placed.turn() - viewer.turn();
        Vec2 shift = viewer.stowed(placed.origin());
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        return new AffineTransformation(c, s, shift.x(), -s, c, shift.y()).transform(part);
    }
}
