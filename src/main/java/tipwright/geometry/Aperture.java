// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.List;

/** Cuts a hole into the wall of a mesh, for pictures: the mesh stays open there. */
public final class Aperture {
    private static final int DEEPEST = 10;

    private final List<Vec2> rim = new ArrayList<>();
    private final Vec3 normal;
    private final Vec3 u;
    private final Vec3 v;
    private final double low;
    private final double fine;
    private final double reach;
    private final Vec2 middle;
    private final List<Vec3> kept = new ArrayList<>();

    private Aperture(List<Vec3> outline, Vec3 normal, double depth, double fine) {
        this.normal = normal;
        this.fine = fine;
        Vec3 side = Math.abs(normal.z()) < 0.9 ? new Vec3(0, 0, 1) : new Vec3(1, 0, 0);
        u = side.minus(normal.times(side.dot(normal))).unit();
        v = normal.cross(u);
        low = normal.dot(outline.get(0)) - depth;
        double farthest = 0;
        Vec2 sum = Vec2.ZERO;
        for (Vec3 p : outline) {
            rim.add(flat(p));
            sum = sum.plus(flat(p));
        }
        middle = sum.times(1.0 / outline.size());
        for (Vec2 p : rim) {
            farthest = Math.max(farthest, p.minus(middle).norm());
        }
        reach = farthest;
    }

    /**
     * The mesh without what lies inside the outline, seen along the normal, on the side of the wall that faces out there.
     *
     * @param outline of the hole, flat, in order, m
     * @param normal unit vector out of the wall
     * @param depth how far behind the outline the wall may lie, m
     * @param fine largest side of a triangle along the edge of the hole, m
     */
    public static Mesh cut(Mesh mesh, List<Vec3> outline, Vec3 normal, double depth, double fine) {
        if (outline.size() < 3) {
            return mesh;
        }
        Aperture hole = new Aperture(outline, normal, depth, fine);
        for (int t = 0; t < mesh.triangles(); t++) {
            Vec3 a = mesh.vertex(mesh.corners()[3 * t]);
            Vec3 b = mesh.vertex(mesh.corners()[3 * t + 1]);
            Vec3 c = mesh.vertex(mesh.corners()[3 * t + 2]);
            if (b.minus(a).cross(c.minus(a)).dot(normal) <= 0) {
                hole.keep(a, b, c);
            } else {
                hole.split(a, b, c, 0);
            }
        }
        return hole.mesh();
    }

    private void split(Vec3 a, Vec3 b, Vec3 c, int depth) {
        double ab = b.minus(a).norm();
        double bc = c.minus(b).norm();
        double ca = a.minus(c).norm();
        double longest = Math.max(ab, Math.max(bc, ca));
        Vec3 centre = a.plus(b).plus(c).times(1.0 / 3);
        Vec2 flat = flat(centre);
        if (normal.dot(centre) < low || flat.minus(middle).norm() > reach + longest) {
            keep(a, b, c);
        } else if (longest <= fine || depth >= DEEPEST) {
            if (!inside(flat)) {
                keep(a, b, c);
            }
        } else if (ab >= bc && ab >= ca) {
            Vec3 m = a.plus(b).times(0.5);
            split(a, m, c, depth + 1);
            split(m, b, c, depth + 1);
        } else if (bc >= ca) {
            Vec3 m = b.plus(c).times(0.5);
            split(a, b, m, depth + 1);
            split(a, m, c, depth + 1);
        } else {
            Vec3 m = c.plus(a).times(0.5);
            split(a, b, m, depth + 1);
            split(m, b, c, depth + 1);
        }
    }

    private Vec2 flat(Vec3 p) {
        return new Vec2(u.dot(p), v.dot(p));
    }

    private boolean inside(Vec2 p) {
        boolean in = false;
        for (int i = 0, j = rim.size() - 1; i < rim.size(); j = i++) {
            Vec2 a = rim.get(i);
            Vec2 b = rim.get(j);
            if (a.y() > p.y() != b.y() > p.y() && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                in = !in;
            }
        }
        return in;
    }

    private void keep(Vec3 a, Vec3 b, Vec3 c) {
        kept.add(a);
        kept.add(b);
        kept.add(c);
    }

    private Mesh mesh() {
        double[] xyz = new double[3 * kept.size()];
        int[] corners = new int[kept.size()];
        for (int i = 0; i < kept.size(); i++) {
            xyz[3 * i] = kept.get(i).x();
            xyz[3 * i + 1] = kept.get(i).y();
            xyz[3 * i + 2] = kept.get(i).z();
            corners[i] = i;
        }
        return new Mesh(xyz, corners).welded();
    }
}
