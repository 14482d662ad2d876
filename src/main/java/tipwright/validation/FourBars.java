// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import java.util.List;
import tipwright.geometry.Vec2;
import tipwright.linkage.Configuration;
import tipwright.linkage.Joint;
import tipwright.linkage.Linkage;
import tipwright.linkage.LinkageException;
import tipwright.linkage.Skeleton;
import tipwright.linkage.Strut;

/**
 * Four-bars of known answers: crank a, coupler b, rocker c, ground d; angles counterclockwise from the ground link. The drawing is
 * closed by two circles at one crank angle, and the general solver turns the crank from there to the angle asked for.
 */
final class FourBars {
    private FourBars() {}

    private record Angles(double coupler, double rocker) {}

    static void addTo(Figures figures) {
        figures.add("norton-open-coupler", () -> norton(1).coupler());
        figures.add("norton-open-rocker", () -> norton(1).rocker());
        figures.add("norton-crossed-rocker", () -> norton(-1).rocker());
        figures.add("transmission", FourBars::transmission);
    }

    private static Angles norton(int branch) throws LinkageException {
        return turned(new double[] {40, 120, 80, 100}, 75, 40, branch);
    }

    private static double transmission() throws LinkageException {
        Angles at = turned(new double[] {40, 90, 70, 100}, 100, 45, 1);
        return at.rocker() - at.coupler();
    }

    /** Angles of coupler and rocker, degrees, with the crank turned from one angle to another. */
    private static Angles turned(double[] bars, double from, double to, int branch) throws LinkageException {
        Vec2 crank = at(from).times(bars[0]);
        Vec2 ground = new Vec2(bars[3], 0);
        Vec2 other = closing(crank, ground, bars[1], bars[2], branch);
        // The actuator pulls across the crank's middle position, so that it keeps its arm on the way.
        Vec2 middle = at((from + to) / 2);
        Vec2 framePin = new Vec2(middle.y(), -middle.x()).times(5 * bars[0]);
        Skeleton skeleton = new Skeleton(
                List.of("frame", "crank", "coupler", "rocker"),
                1,
                List.of(
                        new Joint.Pin(Skeleton.PIVOT, 0, 1, Vec2.ZERO),
                        new Joint.Pin("crank-coupler", 1, 2, crank),
                        new Joint.Pin("coupler-rocker", 2, 3, other),
                        new Joint.Pin("rocker-frame", 0, 3, ground)),
                new Strut("actuator", 0, framePin, 1, crank));
        double tilt = Math.toRadians(from - to);
        Configuration p = Linkage.of(skeleton)
                .sweep(new double[] {0, tilt / 2, tilt})
                .configurations()
                .get(2);
        return new Angles(
                angle(other.minus(crank)) - Math.toDegrees(p.turn(2)),
                angle(other.minus(ground)) - Math.toDegrees(p.turn(3)));
    }

    /** Where coupler and rocker meet, on the side that the branch (1 open, -1 crossed) says. */
    private static Vec2 closing(Vec2 crank, Vec2 ground, double coupler, double rocker, int branch) {
        Vec2 to = ground.minus(crank);
        double far = to.norm();
        double along = (coupler * coupler - rocker * rocker + far * far) / (2 * far);
        double across = branch * Math.sqrt(coupler * coupler - along * along);
        Vec2 u = to.unit();
        return crank.plus(u.times(along)).plus(new Vec2(-u.y(), u.x()).times(across));
    }

    private static Vec2 at(double degrees) {
        return new Vec2(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees)));
    }

    private static double angle(Vec2 v) {
        return Math.toDegrees(Math.atan2(v.y(), v.x()));
    }
}
