// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import tipwright.analysis.Placement;
import tipwright.geometry.Mesh;
import tipwright.geometry.MeshCut;
import tipwright.geometry.Plane;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Makes and moves flat outlines. */
final class Flat {
    private static final int QUARTER = 8;
    private static final int DIRECTIONS = 32;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Flat() {}

    /** An area with these corners, either way round; a crossing outline is mended. */
    static Geometry polygon(List<Vec2> corners) {
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Vec2 p = corners.get(i % corners.size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        Geometry made = FACTORY.createPolygon(ring);
        return made.isValid() ? made : GeometryFixer.fix(made);
    }

    /** A rectangle along x from one end to the other, half its width to each side. */
    static Geometry bar(double from, double to, double half) {
        return polygon(List.of(new Vec2(from, -half), new Vec2(to, -half), new Vec2(to, half), new Vec2(from, half)));
    }

    private static Geometry disc(Vec2 middle, double radius) {
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
    static Geometry without(Geometry area, Vec2 middle, double radius) {
        boolean near = area.distance(FACTORY.createPoint(new Coordinate(middle.x(), middle.y()))) < radius;
        return near ? area.difference(disc(middle, radius)) : area;
    }

    /**
     * Silhouette along z of the part of a mesh that lies in a zone.
     *
     * @param convex whether the solid is, so that the hull of the points is the silhouette
     */
    static Geometry silhouette(Mesh mesh, Zone zone, boolean convex) {
        return convex ? hull(mesh, zone) : joined(mesh, zone);
    }

    private static Geometry hull(Mesh mesh, Zone zone) {
        List<Vec2> points = new ArrayList<>();
        double[] xyz = mesh.xyz();
        for (int i = 0; i < xyz.length; i += 3) {
            if (xyz[i + 2] >= zone.from() && xyz[i + 2] <= zone.to()) {
                points.add(new Vec2(xyz[i], xyz[i + 1]));
            }
        }
        for (int t = 0; t < mesh.triangles(); t++) {
            if (straddles(mesh, t, zone)) {
                points.addAll(clipped(mesh, t, zone));
            }
        }
        List<Vec2> hull = points.isEmpty() ? points : Footprint.hull(outermost(points));
        return hull.size() > 2 ? polygon(hull) : nothing();
    }

    /** Leaves out points that are plainly inside the others: inside the polygon of the farthest ones in a few directions. */
    private static List<Vec2> outermost(List<Vec2> points) {
        List<Vec2> far = new ArrayList<>();
        for (int k = 0; k < DIRECTIONS; k++) {
            Vec2 way = new Vec2(0, 1).tilted(2 * Math.PI * k / DIRECTIONS);
            Vec2 best = points.get(0);
            for (Vec2 p : points) {
                best = p.dot(way) > best.dot(way) ? p : best;
            }
            far.add(best);
        }
        List<Vec2> inner = Footprint.hull(far);
        List<Vec2> kept = new ArrayList<>(inner);
        for (Vec2 p : points) {
            if (!inside(p, inner)) {
                kept.add(p);
            }
        }
        return kept;
    }

    private static boolean inside(Vec2 p, List<Vec2> convex) {
        for (int i = 0; i < convex.size(); i++) {
            Vec2 a = convex.get(i);
            if (convex.get((i + 1) % convex.size()).minus(a).cross(p.minus(a)) <= 0) {
                return false;
            }
        }
        return convex.size() > 2;
    }

    private static boolean straddles(Mesh mesh, int t, Zone zone) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < 3; c++) {
            double z = mesh.xyz()[3 * mesh.corners()[3 * t + c] + 2];
            low = Math.min(low, z);
            high = Math.max(high, z);
        }
        return (low < zone.from() && high > zone.from()) || (low < zone.to() && high > zone.to());
    }

    /** The body between the two ends of the zone, closed there, so that the inside counts too. */
    private static Geometry joined(Mesh mesh, Zone zone) {
        Mesh part = cut(cut(mesh, 1, zone.to()), -1, -zone.from());
        List<Geometry> pieces = new ArrayList<>();
        for (int t = 0; t < part.triangles(); t++) {
            List<Vec2> piece = new ArrayList<>();
            for (int c = 0; c < 3; c++) {
                piece.add(part.vertex(part.corners()[3 * t + c]).xy());
            }
            List<Vec2> hull = Footprint.hull(piece);
            if (hull.size() > 2) {
                pieces.add(polygon(hull));
            }
        }
        return pieces.isEmpty() ? nothing() : OverlayNGRobust.union(pieces);
    }

    private static Mesh cut(Mesh mesh, int sign, double limit) {
        return Double.isInfinite(limit) ? mesh : MeshCut.below(mesh, new Plane(new Vec3(0, 0, sign), limit));
    }

    private static List<Vec2> clipped(Mesh mesh, int t, Zone zone) {
        List<Vec3> face = new ArrayList<>();
        for (int c = 0; c < 3; c++) {
            face.add(mesh.vertex(mesh.corners()[3 * t + c]));
        }
        return half(half(face, zone.from(), 1), zone.to(), -1).stream()
                .map(Vec3::xy)
                .toList();
    }

    private static List<Vec3> half(List<Vec3> face, double limit, int sign) {
        if (Double.isInfinite(limit)) {
            return face;
        }
        List<Vec3> kept = new ArrayList<>();
        for (int i = 0; i < face.size(); i++) {
            Vec3 a = face.get(i);
            Vec3 b = face.get((i + 1) % face.size());
            double ha = sign * (a.z() - limit);
            double hb = sign * (b.z() - limit);
            if (ha >= 0) {
                kept.add(a);
            }
            if (ha * hb < 0) {
                kept.add(a.plus(b.minus(a).times(ha / (ha - hb))));
            }
        }
        return kept;
    }

    /** A part in the axes of another: moved as the one is placed, then seen from the other. */
    static Geometry seenFrom(Geometry part, Placement placed, Placement viewer) {
        double turn = placed.turn() - viewer.turn();
        Vec2 shift = placed.origin().minus(viewer.origin()).tilted(-viewer.turn());
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        return new AffineTransformation(c, s, shift.x(), -s, c, shift.y()).transform(part);
    }
}
