// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.around.Receiver;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Text;

/** The landing place that is told of many, and its words; 100 mm inside the edge are wanted. */
class LandingSpotTest {
    private static final double G = 9.80665;
    private static final Design BOX = Examples.read(Examples.BOX);
    private static final Findings MAKE = new Findings(new LandingCheck(), BOX);
    private static final Receiver BIN = new Receiver("bin", new Vec2(1, 0), new Vec2(3, 0));

    private static String says(LandingSpot spot) {
        return LandingSpot.says("the jet", spot.finding(MAKE, "jet", "")).metric();
    }

    private static LandingSpot spot() {
        return new LandingSpot(BOX, BIN);
    }

    /** Of places 0.5 m, 0.3 m from the far edge and 0.4 m from the near one, the second is told. */
    @Test
    void theNearestToAnEdgeIsTold() {
        LandingSpot spot = spot();
        spot.offer(0.1, 0.75, 1, "held", null);
        spot.offer(0.2, 0.85, 2.5, "caked", MotionDirection.LOWERING);
        spot.offer(0.3, 0.2, 3, "heaped", null);
        Finding found = spot.finding(MAKE, "gate jet", "");
        assertThat(found.id()).isEqualTo("landing/gate-jet");
        assertThat(found.capacity()).isCloseTo(0.3, within(1e-12));
        assertThat(found.demand()).isEqualTo(0.1);
        assertThat(found.utilisation()).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(found.verdict()).isEqualTo(Verdict.PASS);
        assertThat(found.worst()).isEqualTo(new Extreme(found.capacity(), 0.2, "caked", MotionDirection.LOWERING));
        assertThat(found.note().metric())
                .isEqualTo("1700 mm past the near edge of the bin, which is 2000 mm wide, at 2.5 m/s");
        assertThat(says(spot)).isEqualTo("the jet lands 300 mm inside the edge of the pit or bin, 100 mm wanted");
    }

    @Test
    void whatLandsOutsideIsToldByHowFar() {
        LandingSpot spot = spot();
        spot.offer(0.1, -0.125, 0.04, null, null);
        Finding found = spot.finding(MAKE, "", "before: ");
        assertThat(found.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(found.note().metric())
                .isEqualTo("before: -250 mm past the near edge of the bin, which is 2000 mm wide");
        assertThat(says(spot)).isEqualTo("the jet lands 250 mm outside the pit or bin; it has to land 100 mm inside");
        LandingSpot edge = spot();
        edge.offer(0.1, 1, 0.05, null, null);
        assertThat(says(edge)).isEqualTo("the jet lands 0 mm inside the edge of the pit or bin, 100 mm wanted");
        assertThat(edge.finding(MAKE, "", "").note().metric()).endsWith("which is 2000 mm wide, at 0.1 m/s");
    }

    @Test
    void whatNeverComesDownIsWorst() {
        LandingSpot spot = spot();
        spot.offer(0.1, 0.5, 1, "held", null);
        spot.offer(0.2, Double.NaN, 2, "held", null);
        spot.offer(0.3, 5, 3, "held", null);
        Finding found = spot.finding(MAKE, "jet", "");
        assertThat(found.capacity()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(found.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(found.tilt()).isEqualTo(0.2);
        assertThat(found.note().metric()).isEqualTo("it does not come down on the bin, at 2.0 m/s");
        assertThat(says(spot)).isEqualTo("the jet does not come down in the pit or bin");
    }

    @Test
    void nothingOfferedIsNotChecked() {
        LandingSpot spot = spot();
        assertThat(spot.any()).isFalse();
        Finding found = spot.finding(MAKE, "jet", "before: ");
        assertThat(found.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(found.missing()).isFalse();
        assertThat(found.note()).isEqualTo(Text.words("the opening is not open within the tilt range"));
        spot.offer(0, 0.5, 0, null, null);
        assertThat(spot.any()).isTrue();
    }

    /** Level jet from 1.2 m over the mouth: x = v sqrt(2 h / g). */
    @Test
    void thePlaceFollowsFromWhereItLeaves() {
        double x = 1.1 + 1.5 * Math.sqrt(2 * 1.2 / G);
        LandingSpot spot = spot();
        assertThat(spot.lands(new Vec2(1.1, 1.2), new Vec2(1.5, 0))).isCloseTo((x - 1) / 2, within(1e-12));
        assertThat(spot.lands(1.1, 1.2, 1.5, 0)).isCloseTo((x - 1) / 2, within(1e-12));
        spot.offer(0.1, new Vec3(1.1, 1.2, 7), new Vec2(1.5, 0), 1.5, null, null);
        assertThat(spot.finding(MAKE, "", "").capacity()).isCloseTo(Math.min(x - 1, 3 - x), within(1e-12));
        assertThat(spot.along(new Vec2(0.5, 7))).isEqualTo(1);
        assertThat(new LandingSpot(BOX, new Receiver("bin", new Vec2(3, 0), new Vec2(1, 0))).along(new Vec2(0.5, 7)))
                .isEqualTo(-1);
    }

    /** A mouth that stands on edge is never fallen into; a point under the line of the mouth is where it is. */
    @Test
    void nothingFallsIntoAMouthOnEdge() {
        Stream.Fall fall = new Stream.Fall(new Receiver("bin", new Vec2(1, 0), new Vec2(1, 1)), new Vec2(0, -G));
        assertThat(fall.lands(new Vec2(0, 5), new Vec2(-1, 0))).isNaN();
        Stream.Fall usual = new Stream.Fall(BIN, new Vec2(0, -G));
        assertThat(usual.lands(new Vec2(2, 0), new Vec2(9, 9))).isEqualTo(0.5);
    }

    /** On ground that slopes gravity pulls aside: x = x0 + v t + gx t^2 / 2 with t from the fall across the mouth's line. */
    @Test
    void gravityPullsAsideOnASlope() {
        double gx = 1.5;
        double gy = -9;
        double t = (2 + Math.sqrt(4 + 2 * 9 * 1.2)) / 9;
        double x = 1.1 + 0.5 * t + gx * t * t / 2;
        assertThat(new Stream.Fall(BIN, new Vec2(gx, gy)).lands(new Vec2(1.1, 1.2), new Vec2(0.5, 2)))
                .isCloseTo((x - 1) / 2, within(1e-12));
    }

    /** A mouth whose edges are not level: the fall is followed until it passes the line through both, found by halving. */
    @Test
    void theMouthMayLeanEitherWay() {
        for (Receiver sloped : new Receiver[] {
            new Receiver("bin", new Vec2(0.25, 0.125), new Vec2(4, -3)),
            new Receiver("bin", new Vec2(0.25, -2), new Vec2(4, 0.5)),
            new Receiver("bin", new Vec2(4, 0.5), new Vec2(0.25, -2))
        }) {
            Vec2 from = new Vec2(1.5, 1.75);
            Vec2 velocity = new Vec2(0.75, 1.25);
            Vec2 gravity = new Vec2(1.5, -9);
            Vec2 mouth = sloped.far().minus(sloped.near());
            double above = mouth.cross(from.minus(sloped.near()));
            double early = 0;
            double late = 10;
            Vec2 there = from;
            for (int i = 0; i < 100; i++) {
                double t = (early + late) / 2;
                there = from.plus(velocity.times(t)).plus(gravity.times(t * t / 2));
                boolean before = mouth.cross(there.minus(sloped.near())) * above > 0;
                early = before ? t : early;
                late = before ? late : t;
            }
            double place = there.minus(sloped.near()).dot(mouth) / mouth.dot(mouth);
            assertThat(new Stream.Fall(sloped, gravity).lands(from, velocity)).isCloseTo(place, within(1e-9));
            Vec2 below = new Vec2(1.5, -4);
            double under = below.minus(sloped.near()).dot(mouth) / mouth.dot(mouth);
            assertThat(new Stream.Fall(sloped, gravity).lands(below, velocity)).isCloseTo(under, within(1e-12));
        }
    }

    /** v^2 = 2 g L (sin a - tan b cos a); none where friction holds it. */
    @Test
    void slidingIsHeldByFriction() {
        double slope = Math.toRadians(35);
        double friction = Math.toRadians(20);
        double v = Math.sqrt(2 * G * 1.6 * (Math.sin(slope) - Math.tan(friction) * Math.cos(slope)));
        assertThat(Stream.sliding(1.6, slope, friction)).isCloseTo(v, within(1e-12));
        assertThat(Stream.sliding(1.6, friction, slope)).isZero();
    }
}
