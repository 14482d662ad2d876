// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.List;

/** Closed outward meshes of plain parts, for pictures: rods, cones, arrows, beams. */
public final class Forms {
    private Forms() {}

    /**
     * A round bar between two points.
     *
     * @param a middle of one end, m
     * @param b middle of the other end, m
     * @param radius m
     * @param sides of the polygon that stands for the circle, 3 or more
     */
    public static Mesh rod(Vec3 a, Vec3 b, double radius, int sides) {
        return turned(List.of(a, a, b, b), new double[] {0, radius, radius, 0}, sides);
    }

    /**
     * An arrow with its tip at b; the head takes at most half of it.
     *
     * @param a tail, m
     * @param b tip, m
     * @param radius of the shaft, m
     */
    public static Mesh arrow(Vec3 a, Vec3 b, double radius, int sides) {
        double length = b.minus(a).norm();
        double head = Math.min(5 * radius, 0.5 * length);
        Vec3 neck = a.plus(b.minus(a).times(1 - head / length));
        return turned(List.of(a, a, neck, neck, b), new double[] {0, radius, radius, 2.3 * radius, 0}, sides);
    }

    /** A ball. */
    public static Mesh ball(Vec3 middle, double radius, int sides) {
        int rings = Math.max(3, sides / 2);
        Vec3[] along = new Vec3[rings + 1];
        double[] radii = new double[rings + 1];
        for (int i = 0; i <= rings; i++) {
            double t = Math.PI * i / rings;
            along[i] = middle.plus(new Vec3(0, -radius * Math.cos(t), 0));
            radii[i] = i == 0 || i == rings ? 0 : radius * Math.sin(t);
        }
        return turned(List.of(along), radii, sides);
    }

    /**
     * A body of revolution along a straight line.
     *
     * @param stations on the line, in order along it, m
     * @param radii at the stations, m; 0 at the first and the last
     */
    static Mesh turned(List<Vec3> stations, double[] radii, int sides) {
        int rings = radii.length - 2;
        Vec3 axis = stations.get(rings + 1).minus(stations.get(0)).unit();
        Vec3 u = Math.abs(axis.y()) < 0.9 ? new Vec3(0, 1, 0) : new Vec3(1, 0, 0);
        u = u.minus(axis.times(u.dot(axis))).unit();
        Vec3 v = axis.cross(u);
        double[] xyz = new double[3 * (rings * sides + 2)];
        for (int i = 0; i < rings; i++) {
            for (int j = 0; j < sides; j++) {
                double t = 2 * Math.PI * j / sides;
                Vec3 out = u.times(Math.cos(t)).plus(v.times(Math.sin(t)));
                put(xyz, i * sides + j, stations.get(i + 1).plus(out.times(radii[i + 1])));
            }
        }
        put(xyz, rings * sides, stations.get(0));
        put(xyz, rings * sides + 1, stations.get(rings + 1));
        return new Mesh(xyz, RevolvedMesh.corners(rings, sides));
    }

    /**
     * A round wire bent along a line of points, without a twist of its own.
     *
     * @param points two or more, each apart from the one before, m
     * @param radius m
     */
    public static Mesh wire(List<Vec3> points, double radius, int sides) {
        int rings = points.size();
        double[] xyz = new double[3 * (rings * sides + 2)];
        Vec3 u = Vec3.ZERO;
        for (int i = 0; i < rings; i++) {
            Vec3 before = points.get(Math.max(0, i - 1));
            Vec3 axis = points.get(Math.min(rings - 1, i + 1)).minus(before).unit();
            if (i == 0) {
                u = Math.abs(axis.y()) < 0.9 ? new Vec3(0, 1, 0) : new Vec3(1, 0, 0);
            }
            u = u.minus(axis.times(u.dot(axis))).unit();
            Vec3 v = axis.cross(u);
            for (int j = 0; j < sides; j++) {
                double t = 2 * Math.PI * j / sides;
                Vec3 out = u.times(Math.cos(t)).plus(v.times(Math.sin(t)));
                put(xyz, i * sides + j, points.get(i).plus(out.times(radius)));
            }
        }
        put(xyz, rings * sides, points.get(0));
        put(xyz, rings * sides + 1, points.get(rings - 1));
        return new Mesh(xyz, RevolvedMesh.corners(rings, sides));
    }

    /**
     * A square-edged bar between two points.
     *
     * @param a middle of one end, m
     * @param b middle of the other end, m
     * @param wide size square to the bar, along 'side', m
     * @param high size square to both, m
     * @param side any direction that is not along the bar
     */
    public static Mesh beam(Vec3 a, Vec3 b, double wide, double high, Vec3 side) {
        Vec3 along = b.minus(a).unit();
        Vec3 w = side.minus(along.times(side.dot(along))).unit();
        Vec3 h = along.cross(w).times(high / 2);
        w = w.times(wide / 2);
        double[] xyz = new double[24];
        int k = 0;
        for (Vec3 end : List.of(a, b)) {
            put(xyz, k++, end.minus(w).minus(h));
            put(xyz, k++, end.plus(w).minus(h));
            put(xyz, k++, end.plus(w).plus(h));
            put(xyz, k++, end.minus(w).plus(h));
        }
        int[] corners = {
            0, 2, 1, 0, 3, 2, 4, 5, 6, 4, 6, 7, 0, 1, 5, 0, 5, 4, 1, 2, 6, 1, 6, 5, 2, 3, 7, 2, 7, 6, 3, 0, 4, 3, 4, 7
        };
        return new Mesh(xyz, corners);
    }

    /**
     * A flat plate: an outline in space made thick, for doors and lids.
     *
     * @param outline flat and convex, counter-clockwise seen from where the normal points, m
     * @param normal unit vector
     * @param thick m, half to each side
     */
    public static Mesh plate(List<Vec3> outline, Vec3 normal, double thick) {
        int n = outline.size();
        double[] xyz = new double[6 * n];
        for (int i = 0; i < n; i++) {
            put(xyz, i, outline.get(i).plus(normal.times(-thick / 2)));
            put(xyz, i + n, outline.get(i).plus(normal.times(thick / 2)));
        }
        int[] corners = new int[3 * (4 * n - 4)];
        int k = 0;
        for (int i = 2; i < n; i++) {
            k = triangle(corners, k, 0, i, i - 1);
            k = triangle(corners, k, n, n + i - 1, n + i);
        }
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            k = triangle(corners, k, i, j, j + n);
            k = triangle(corners, k, i, j + n, i + n);
        }
        return new Mesh(xyz, corners);
    }

    /** Several meshes as one, each keeping its own vertices. */
    public static Mesh joined(List<Mesh> parts) {
        int coordinates = 0;
        int corners = 0;
        for (Mesh part : parts) {
            coordinates += part.xyz().length;
            corners += part.corners().length;
        }
        double[] xyz = new double[coordinates];
        int[] all = new int[corners];
        int at = 0;
        int k = 0;
        for (Mesh part : parts) {
            System.arraycopy(part.xyz(), 0, xyz, at, part.xyz().length);
            for (int corner : part.corners()) {
                all[k++] = corner + at / 3;
            }
            at += part.xyz().length;
        }
        return new Mesh(xyz, all);
    }

    private static int triangle(int[] corners, int k, int a, int b, int c) {
        corners[k] = a;
        corners[k + 1] = b;
        corners[k + 2] = c;
        return k + 3;
    }

    private static void put(double[] xyz, int vertex, Vec3 p) {
        xyz[3 * vertex] = p.x();
        xyz[3 * vertex + 1] = p.y();
        xyz[3 * vertex + 2] = p.z();
    }
}
