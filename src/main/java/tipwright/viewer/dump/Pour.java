// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.BodyPosition;
import tipwright.check.slurry.Departure;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;
import tipwright.load.Gravity;

/**
 * What runs out of an opening, as a falling sheet.
 *
 * @param lip where it leaves, m, in space
 * @param velocity with which it leaves, m/s
 * @param gravity as it pulls on the site, m/s2
 * @param flow m3/s, above 0
 * @param width of the sheet where it leaves, m
 */
public record Pour(Vec3 lip, Vec3 velocity, Vec3 gravity, double flow, double width) {
    private static final double LEAST = 1e-6;
    private static final double THINNEST = 0.004;
    private static final int STEPS = 14;

    /**
     * The streams at a tilt; they leave as the check of the landing has it.
     *
     * @param fill what it leaves behind; grit slides out
     * @param level of the surface that drives them, m; NaN: nothing is known to leave
     * @param flow of all together, m3/s; none below a cubic centimetre a second
     */
    static List<Pour> at(
            Design design, BodyPosition tank, double tilt, @Nullable Fill fill, double level, double flow) {
        List<Pour> all = new ArrayList<>();
        Vec3 gravity = design.site().up().times(-Gravity.G);
        double sum = 0;
        for (Opening opening : design.tank().openings()) {
            Departure leaving = flow > LEAST ? leaving(design, opening, tilt, fill, level, flow) : null;
            if (leaving != null) {
                Vec2 way = leaving.ways().get(leaving.ways().size() - 1).times(leaving.speed());
                double depth = Math.max(THINNEST, leaving.depth());
                double width = Math.min(wide(opening), leaving.flow() / (leaving.speed() * depth));
                all.add(new Pour(
                        tank.place(leaving.lip()),
                        new Vec3(way.x(), way.y(), 0),
                        gravity,
                        leaving.flow(),
                        Math.max(THINNEST, width)));
                sum += leaving.flow();
            }
        }
        double share = sum > 0 ? flow / sum : 0;
        return all.stream()
                .map(p -> new Pour(p.lip, p.velocity, p.gravity, share * p.flow, p.width))
                .toList();
    }

    /** How wide an opening is across the way that its stream takes, m; of one that lies in the side view as wide as need be. */
    private static double wide(Opening opening) {
        DoubleSummaryStatistics across =
                opening.rimPoints().stream().mapToDouble(Vec3::z).summaryStatistics();
        double wide = across.getMax() - across.getMin();
        return wide > THINNEST ? wide : Double.POSITIVE_INFINITY;
    }

    private static @Nullable Departure leaving(
            Design design, Opening opening, double tilt, @Nullable Fill fill, double level, double flow) {
        if (fill != null && fill.stuff() == Fill.Stuff.CAKE) {
            return Departure.ofGrit(design, opening, tilt, flow);
        }
        return Double.isNaN(level) ? null : Departure.of(design, opening, tilt, level);
    }

    /** Speed with which it leaves, m/s. */
    public double speed() {
        return velocity.norm();
    }

    /** Depth where it leaves, m. */
    public double depth() {
        return flow / (width * speed());
    }

    /** How long it falls to a height, s. */
    private double falls(double ground) {
        double fall = Math.max(0.01, lip.y() - ground);
        double up = velocity.y();
        double g = -gravity.y();
        return (up + Math.sqrt(up * up + 2 * g * fall)) / g;
    }

    private Vec3 at(double time) {
        return lip.plus(velocity.times(time)).plus(gravity.times(0.5 * time * time));
    }

    /** Where it comes down on the ground, m. */
    public Vec3 lands(double ground) {
        Vec3 p = at(falls(ground));
        return new Vec3(p.x(), ground, p.z());
    }

    /**
     * The sheet to the ground, falling freely and thinning as it speeds up.
     *
     * @param ground height, m
     */
    public Mesh mesh(double ground) {
        double time = falls(ground);
        Vec3 level = new Vec3(velocity.x(), 0, velocity.z());
        Vec3 way = level.norm() > 1e-9 ? level.unit() : new Vec3(1, 0, 0);
        Vec3 across = new Vec3(way.z(), 0, -way.x());
        double v0 = speed();
        List<Vec3> ring = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double t = time * i / STEPS;
            Vec3 now = velocity.plus(gravity.times(t));
            double v = now.norm();
            Vec3 middle = at(t);
            Vec3 thick = across.cross(now).unit();
            double half = width / 2 * Math.sqrt(Math.sqrt(v0 / v));
            double depth = Math.max(THINNEST, flow / (2 * half * v));
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
