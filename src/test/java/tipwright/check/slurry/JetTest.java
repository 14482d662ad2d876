// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.Examples;
import tipwright.check.rule.Findings;
import tipwright.design.Design;
import tipwright.design.around.Receiver;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Outflow;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Where a jet lands of all points of its rim, by Torricelli and free fall point by point. */
class JetTest {
    private static final double G = 9.80665;
    private static final Design BOX = Examples.read(Examples.BOX);
    private static final Findings MAKE = new Findings(new LandingCheck(), BOX);

    private static Opening polygon(Vec3... rim) {
        return new Opening(
                "slot", Opening.Rim.POLYGON, null, null, null, List.of(rim), null, null, 0, null, new Outflow(0.62, 1));
    }

    /** 0.5 m wide, from y = 0.5 m up to 1 m, its upper edge so far out, m. */
    private static Opening slot(double lean) {
        return polygon(
                new Vec3(0.5, 0.5, 0.25),
                new Vec3(0.5, 0.5, -0.25),
                new Vec3(0.5 + lean, 1, -0.25),
                new Vec3(0.5 + lean, 1, 0.25));
    }

    private static LandingSpot offered(Opening opening, Receiver pit, double turn, Vec3 up, double level) {
        LandingSpot spot = new LandingSpot(BOX, pit);
        BodyPosition tank = new BodyPosition("tank", new Vec2(0.25, 0.125), turn);
        new Jet(opening).offer(spot, new Jet.Standing(turn, tank, up, level), "held", null);
        return spot;
    }

    private static double landing(Opening opening, Receiver pit, double turn, Vec3 up, double level) {
        return offered(opening, pit, turn, up, level).finding(MAKE, "jet", "").capacity();
    }

    /** The x at which a point's jet passes the height of the pit, which lies level. */
    private static double reach(Vec3 p, Vec3 out, double turn, double depth, double height) {
        Vec2 from = p.tilted(turn).xy().plus(new Vec2(0.25, 0.125));
        Vec2 v = out.tilted(turn).xy().times(Math.sqrt(2 * G * depth));
        double t = (v.y() + Math.sqrt(v.y() * v.y() + 2 * G * (from.y() - height))) / G;
        return from.x() + v.x() * t;
    }

    /** All sixteen points of each side that are wet; beside an open surface only what goes farther than what leaves the lip. */
    private static double byHand(Opening opening, Receiver pit, double turn, Vec3 up, double level) {
        List<Vec3> corners = opening.rimPoints();
        Vec3 out = opening.outward();
        double height = pit.near().y();
        double lip = reach(opening.lipPoint(up), out, turn, level - opening.lip(up), height);
        List<Double> all = new ArrayList<>(List.of(lip));
        boolean drowned = corners.stream().allMatch(p -> up.dot(p) < level);
        for (int i = 0; i < corners.size(); i++) {
            Vec3 a = corners.get(i);
            Vec3 b = corners.get((i + 1) % corners.size());
            for (int k = 0; k < 16; k++) {
                Vec3 p = a.plus(b.minus(a).times(k / 16.0));
                double depth = level - up.dot(p);
                if (depth > 0) {
                    double x = reach(p, out, turn, depth, height);
                    if (drowned || (out.tilted(turn).x() > 0 ? x > lip : x < lip)) {
                        all.add(x);
                    }
                }
            }
        }
        double low = Math.min(pit.near().x(), pit.far().x());
        double high = Math.max(pit.near().x(), pit.far().x());
        return all.stream().mapToDouble(x -> Math.min(x - low, high - x)).min().orElseThrow();
    }

    /** A pit whose near or far edge is the nearer, drowned or not, tilted or not, on ground that leans aside or not. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 1.5, -1, 0, 9",
        "0, 0, 1.5, -1, -9, 3",
        "0.4, 0, 1.25, -1, 0, 9",
        "0.4, 0, 1.25, -1, -9, 3",
        "0.4, 0, 0.75, -1, 0, 9",
        "0.4, 0, 0.75, -1, -9, 3",
        "-0.3, 0, 1.5, -0.5, 0, 9",
        "-0.3, 0, 1.5, -0.5, -9, 4",
        "0.2, 0.1, 1.25, -1, 0, 9",
        "0.2, 0.1, 1.25, -1, -9, 3",
        "0.2, -0.1, 1.25, -1, -9, 3",
        "0.2, -0.1, 0.75, -1, -9, 3",
        "0.2, 0.1, 0.75, -1, 0, 9"
    })
    void everyPointOfTheRimCounts(double turn, double aside, double level, double height, double near, double far) {
        Vec3 up = new Vec3(0, Math.cos(aside), Math.sin(aside)).tilted(-turn);
        for (double lean : new double[] {0, 0.125, -0.125}) {
            for (Receiver pit : List.of(
                    new Receiver("pit", new Vec2(near, height), new Vec2(far, height)),
                    new Receiver("pit", new Vec2(far, height), new Vec2(near, height)))) {
                double hand = byHand(slot(lean), pit, turn, up, level);
                assertThat(landing(slot(lean), pit, turn, up, level)).isCloseTo(hand, within(1e-9));
            }
        }
    }

    /** At the height of its upper edge the surface is open: what is high up is drawn down over the lip. */
    @Test
    void anOpeningUpToTheSurfaceIsNotDrowned() {
        Receiver pit = new Receiver("pit", new Vec2(1, -0.25), new Vec2(9, -0.25));
        Vec3 up = new Vec3(0, 1, 0);
        double lip = reach(new Vec3(0.5, 0.5, 0), new Vec3(1, 0, 0), 0, 0.5, -0.25);
        assertThat(landing(slot(0), pit, 0, up, 1)).isCloseTo(lip - 1, within(1e-12));
        assertThat(landing(slot(0), pit, 0, up, 1.0001)).isLessThan(lip - 1.1);
    }

    /** What is level with the surface does not run, however far out it is. */
    @Test
    void nothingLeavesAtTheSurface() {
        Receiver pit = new Receiver("pit", new Vec2(0, 0.5), new Vec2(9, 0.5));
        Vec3 up = new Vec3(0, 1, 0);
        Opening ledge = polygon(new Vec3(0.5, 0.5, 0), new Vec3(4, 0.75, 0.25), new Vec3(4, 0.75, -0.25));
        Receiver narrow = new Receiver("pit", new Vec2(0, 0.5), new Vec2(4.5, 0.5));
        double atSurface = landing(ledge, narrow, 0, up, 0.75);
        assertThat(atSurface).isCloseTo(byHand(ledge, narrow, 0, up, 0.75), within(1e-12));
        assertThat(atSurface).isGreaterThan(4.5 - 4.25 + 0.01);
        assertThat(offered(slot(0), pit, 0, up, 0.5).any()).isFalse();
        assertThat(offered(slot(0), pit, 0, up, 0.5625).any()).isTrue();
    }

    /** The lowest point of a circle on ground that leans a degree aside lies between those that are looked at. */
    @Test
    void theLipItselfAlwaysCounts() {
        Opening round = new Opening(
                "hole",
                Opening.Rim.CIRCLE,
                1.0,
                null,
                null,
                List.of(),
                new Vec3(0.5, 1, 0),
                new Vec3(1, 0, 0),
                0,
                null,
                new Outflow(0.62, 1));
        Vec3 up = new Vec3(0, Math.cos(Math.toRadians(1)), Math.sin(Math.toRadians(1)));
        Receiver pit = new Receiver("pit", new Vec2(0, -1), new Vec2(9, -1));
        Vec3 lip = round.lipPoint(up);
        double depth = 3e-5;
        double level = up.dot(lip) + depth;
        assertThat(round.rimPoints()).noneMatch(p -> up.dot(p) < level);
        double x = reach(lip, new Vec3(1, 0, 0), 0, depth, -1);
        assertThat(landing(round, pit, 0, up, level)).isCloseTo(x, within(1e-9));
    }

    @Test
    void straightIsSquareOutOfTheTiltedOpening() {
        assertThat(new Jet(slot(0)).straight(0.5).x()).isCloseTo(Math.cos(0.5), within(1e-12));
        assertThat(new Jet(slot(0)).straight(0.5).y()).isCloseTo(-Math.sin(0.5), within(1e-12));
    }
}
