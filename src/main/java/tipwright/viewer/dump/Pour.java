// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import java.util.ArrayList;
import java.util.List;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec3;

/**
 * What runs out over the lip, as a falling sheet.
 *
 * @param lip where it leaves, m, in space
 * @param way level unit vector away from the tank
 * @param flow m3/s, above 0
 * @param width of the sheet at the lip, m
 */
public record Pour(Vec3 lip, Vec3 way, double flow, double width) {
    private static final double G = 9.80665;
    private static final int STEPS = 14;

    /**
     * Speed over the lip, m/s: that of critical flow, (g q)^(1/3) with q the flow per width. Source: flow over a free overfall,
     * open-channel hydraulics textbooks (from memory).
     */
    public double speed() {
        return Math.cbrt(G * flow / width);
    }

    /** Depth over the lip, m. */
    public double depth() {
        return flow / (width * speed());
    }

    /**
     * The sheet from the lip to the ground, falling freely and thinning as it speeds up.
     *
     * @param ground height, m
     */
    public Mesh mesh(double ground) {
        double fall = Math.max(0.01, lip.y() - ground);
        double time = Math.sqrt(2 * fall / G);
        Vec3 across = new Vec3(way.z(), 0, -way.x());
        List<Vec3> ring = new ArrayList<>();
        double v0 = speed();
        for (int i = 0; i <= STEPS; i++) {
            double t = time * i / STEPS;
            Vec3 velocity = way.times(v0).plus(new Vec3(0, -G * t, 0));
            double v = velocity.norm();
            Vec3 middle = lip.plus(way.times(v0 * t)).plus(new Vec3(0, -0.5 * G * t * t, 0));
            Vec3 thick = across.cross(velocity).unit();
            double half = width / 2 * Math.sqrt(Math.sqrt(v0 / v));
            double depth = Math.max(0.004, flow / (2 * half * v));
            Vec3 top = middle.plus(thick.times(thick.y() < 0 ? -depth : depth));
            ring.add(middle.minus(across.times(half)));
            ring.add(middle.plus(across.times(half)));
            ring.add(top.plus(across.times(half * 0.92)));
            ring.add(top.minus(across.times(half * 0.92)));
        }
        return sheet(ring);
    }

    private static Mesh sheet(List<Vec3> ring) {
        double[] xyz = new double[3 * ring.size()];
        for (int i = 0; i < ring.size(); i++) {
            xyz[3 * i] = ring.get(i).x();
            xyz[3 * i + 1] = ring.get(i).y();
            xyz[3 * i + 2] = ring.get(i).z();
        }
        int[] corners = new int[3 * (8 * STEPS + 4)];
        int k = 0;
        for (int i = 0; i < STEPS; i++) {
            for (int j = 0; j < 4; j++) {
                int a = 4 * i + j;
                int b = 4 * i + (j + 1) % 4;
                for (int corner : new int[] {a, b, b + 4, a, b + 4, a + 4}) {
                    corners[k++] = corner;
                }
            }
        }
        int last = 4 * STEPS;
        for (int corner : new int[] {0, 2, 1, 0, 3, 2, last, last + 1, last + 2, last, last + 2, last + 3}) {
            corners[k++] = corner;
        }
        Mesh mesh = new Mesh(xyz, corners);
        return mesh.volume() >= 0 ? mesh : mesh.turnedOut();
    }
}
