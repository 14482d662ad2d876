// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Examples;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Outflow;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** How what drains leaves an opening, by Torricelli and by the laws of weirs and critical depth (texts on open channels, from memory). */
class DepartureTest {
    private static final double G = 9.80665;
    private static final Offset<Double> EXACT = within(1e-12);
    private static final Design BOX = Examples.read(Examples.BOX);

    private static Opening hole(double opensAt, double coefficient, Vec3... rim) {
        return new Opening(
                "hole",
                Opening.Rim.POLYGON,
                null,
                null,
                null,
                List.of(rim),
                null,
                null,
                opensAt,
                null,
                new Outflow(coefficient, 1));
    }

    /** Upright at x, 0.4 m wide, from y = 0.6 m to 0.8 m, facing +x where x is the dump end. */
    private static Opening slot(double x, double opensAt, double coefficient) {
        double z = x > 0 ? 0.2 : -0.2;
        return hole(
                opensAt,
                coefficient,
                new Vec3(x, 0.6, z),
                new Vec3(x, 0.6, -z),
                new Vec3(x, 0.8, -z),
                new Vec3(x, 0.8, z));
    }

    /** Lying in the bottom of the box, facing down. */
    private static Opening drain() {
        return hole(
                0,
                0.62,
                new Vec3(-0.2, 0.5, -0.2),
                new Vec3(0.2, 0.5, -0.2),
                new Vec3(0.2, 0.5, 0.2),
                new Vec3(-0.2, 0.5, 0.2));
    }

    private static Departure leaves(Opening opening, double tilt, double level) {
        return Objects.requireNonNull(Departure.of(BOX, opening, tilt, level));
    }

    private static @Nullable Departure grit(Opening opening, double tilt, double flow) {
        return Departure.ofGrit(BOX, opening, tilt, flow);
    }

    private static void isAbout(Vec2 actual, double x, double y) {
        assertThat(actual.x()).isCloseTo(x, EXACT);
        assertThat(actual.y()).isCloseTo(y, EXACT);
    }

    /** Q = Cd b 2/3 sqrt(2 g) (h1^1.5 - h2^1.5), v = sqrt(2 g h1). */
    @Test
    void underTheSurfaceItLeavesAsAJet() {
        for (double level : new double[] {0.8, 1}) {
            Departure jet = leaves(slot(0.5, 0, 0.62), 0, level);
            assertThat(jet.jet()).isTrue();
            assertThat(jet.lip().x()).isEqualTo(0.5);
            assertThat(jet.lip().y()).isEqualTo(0.6);
            assertThat(jet.depth()).isCloseTo(0.2, EXACT);
            assertThat(jet.speed()).isCloseTo(Math.sqrt(2 * G * (level - 0.6)), EXACT);
            double flow =
                    0.62 * 0.4 * 2 / 3 * Math.sqrt(2 * G) * (Math.pow(level - 0.6, 1.5) - Math.pow(level - 0.8, 1.5));
            assertThat(jet.flow()).isCloseTo(flow, EXACT);
            assertThat(jet.ways()).hasSize(1);
            isAbout(jet.ways().get(0), 1, 0);
        }
    }

    /** Past y^3 = q^2 / g at 1.5 times the speed there. */
    @Test
    void overTheLipItPassesTheCriticalDepth() {
        Departure over = leaves(slot(0.5, 0, 0.62), 0, 0.7);
        double q = 0.62 * 2 / 3 * Math.sqrt(2 * G) * Math.pow(0.1, 1.5);
        double depth = Math.cbrt(q * q / G);
        assertThat(over.jet()).isFalse();
        assertThat(over.flow()).isCloseTo(0.4 * q, EXACT);
        assertThat(over.depth()).isCloseTo(depth, within(2e-3 * depth));
        assertThat(over.speed()).isCloseTo(1.5 * q / depth, within(3e-3 * q / depth));
        assertThat(over.ways()).hasSize(1);
        isAbout(over.ways().get(0), 1, 0);
    }

    /** Without losses 1.5 sqrt(g y), y = (8/9)^(1/3) h, would be 1.47 sqrt(g h), more than the head gives. */
    @Test
    void itIsNoFasterThanTheHeadGives() {
        Departure over = leaves(slot(0.5, 0, 1), 0, 0.7);
        assertThat(over.speed()).isCloseTo(Math.sqrt(2 * G * 0.1), EXACT);
        double depth = Math.cbrt(8.0 / 9) * 0.1;
        assertThat(over.depth()).isCloseTo(depth, within(2e-3 * depth));
    }

    /**
     * A notch without losses, sides of slope m: Q = 8/15 m sqrt(2 g) h^2.5 is 0.754 m sqrt(g) h^2.5, and the critical flow at a depth y
     * 0.707 m sqrt(g) y^2.5, so y = 1.026 h is more than the head (momentum: 5/3 of the speed there); at 0.99 of its height the notch is
     * too low for it, and the head alone gives the speed.
     */
    @Test
    void itIsNoDeeperThanTheHead() {
        Opening notch = hole(0, 1, new Vec3(0.5, 0.6, 0), new Vec3(0.5, 0.8, 0.2), new Vec3(0.5, 0.8, -0.2));
        for (double head : new double[] {0.1, 0.99 * 0.2}) {
            Departure over = leaves(notch, 0, 0.6 + head);
            assertThat(over.jet()).isFalse();
            assertThat(over.flow()).isCloseTo(8.0 / 15 * Math.sqrt(2 * G) * Math.pow(head, 2.5), within(1e-9));
            assertThat(over.depth()).isCloseTo(head, EXACT);
            double critical = Math.pow(2 * over.flow() * over.flow() / G, 0.2);
            double speed = critical > 0.2 ? Math.sqrt(2 * G * head) : over.flow() / (critical * critical) * 5 / 3;
            assertThat(over.speed()).isCloseTo(speed, within(5e-3 * speed));
        }
    }

    /** Level out, and square out where that points down. */
    @Test
    void aTiltedOpeningLetsItGoTwoWays() {
        double tilt = Math.toRadians(30);
        Vec3 up = new Vec3(0, 1, 0).tilted(-tilt);
        Departure over = leaves(slot(0.5, 0, 0.62), tilt, up.dot(new Vec3(0.5, 0.65, 0)));
        assertThat(over.jet()).isFalse();
        assertThat(over.lip().y()).isEqualTo(0.6);
        assertThat(over.ways()).hasSize(2);
        isAbout(over.ways().get(0), 1, 0);
        isAbout(over.ways().get(1), Math.cos(tilt), -Math.sin(tilt));
        // at the other end it leads up, and leaves level towards -x alone
        Departure back = leaves(slot(-0.5, 0, 0.62), tilt, up.dot(new Vec3(-0.5, 0.65, 0)));
        assertThat(back.ways()).hasSize(1);
        isAbout(back.ways().get(0), -1, 0);
    }

    /** Facing straight down but for half a thousandth, what leaves over the lip goes where the lip is. */
    @Test
    void outOfTheBottomItGoesToTheSideOfTheLip() {
        double tilt = 5e-4;
        Vec3 up = new Vec3(0, 1, 0).tilted(-tilt);
        Departure over = leaves(drain(), tilt, up.dot(new Vec3(0.1, 0.5, 0)));
        assertThat(over.jet()).isFalse();
        assertThat(over.lip().x()).isEqualTo(0.2);
        assertThat(over.ways()).hasSize(2);
        isAbout(over.ways().get(0), 1, 0);
        isAbout(over.ways().get(1), -Math.sin(tilt), -Math.cos(tilt));
        // tilted twice as far as that side counts, its own way counts
        double more = 2e-3;
        Vec3 then = new Vec3(0, 1, 0).tilted(-more);
        Departure slanted = leaves(drain(), more, then.dot(new Vec3(0.1, 0.5, 0)));
        isAbout(slanted.ways().get(0), -1, 0);
    }

    @Test
    void nothingLeavesAShutDoorOrFromBelowTheLip() {
        double opensAt = Math.toRadians(20);
        assertThat(Departure.of(BOX, slot(0.5, opensAt, 0.62), Math.toRadians(19.9), 1))
                .isNull();
        assertThat(leaves(slot(0.5, opensAt, 0.62), opensAt, 1.2).flow()).isPositive();
        assertThat(Departure.of(BOX, slot(0.5, 0, 0.62), 0, 0.59)).isNull();
        assertThat(Departure.of(BOX, slot(0.5, 0, 0.62), 0, 0.6)).isNull();
        assertThat(Departure.of(BOX, slot(0.5, 0, 0.62), 0, Double.NaN)).isNull();
    }

    /** The level is the one with which both openings together let out so much; what is shut has no share. */
    @Test
    void theLevelLetsOutTheFlow() {
        String both = swap(
                Examples.BOX.replaceFirst(
                        "- \\{name: top.*\\}",
                        "- {name: left, rim: rectangle, width: 400 mm, height: 200 mm, centre: [500 mm, 700 mm, -200 mm],"
                                + " normal: x}\n    - {name: right, rim: rectangle, width: 200 mm, height: 200 mm,"
                                + " centre: [500 mm, 800 mm, 200 mm], normal: x, opens-at: 10 deg}"),
                "fill: 100 %",
                "fill: 80 %");
        Design design = Examples.read(both);
        double one = 0.62 * 0.4 * 2 / 3 * Math.sqrt(2 * G) * (Math.pow(0.5, 1.5) - Math.pow(0.3, 1.5));
        assertThat(Departure.level(design, 0, one)).isCloseTo(1.1, within(1e-8));
        double tilt = Math.toRadians(10);
        // along the slanted wall the depth is cos a times the way up it
        double cos = Math.cos(tilt);
        double first = 0.62 * 0.4 * 2 / 3 * Math.sqrt(2 * G * cos) * (Math.pow(0.5, 1.5) - Math.pow(0.3, 1.5));
        double second = 0.62 * 0.2 * 2 / 3 * Math.sqrt(2 * G * cos) * (Math.pow(0.4, 1.5) - Math.pow(0.2, 1.5));
        assertThat(Departure.level(design, tilt, first + second))
                .isCloseTo(1.1 * cos - 0.5 * Math.sin(tilt), within(1e-8));
        assertThat(Departure.level(design, 0, 0)).isNaN();
        Design shut = Examples.read(swap(
                both,
                "centre: [500 mm, 700 mm, -200 mm], normal: x",
                "centre: [500 mm, 700 mm," + " -200 mm], normal: x, opens-at: 10 deg"));
        assertThat(Departure.level(shut, 0, 0.1)).isNaN();
    }

    /** Half of v^2 = 2 g L (sin a - tan b cos a), b = 11 deg by preset, L = 1 m; as wide as the root of the opening's area. */
    @Test
    void gritSlidesOutAlongTheFloor() {
        double a = Math.toRadians(40);
        Departure out = Objects.requireNonNull(grit(slot(0.5, 0, 0.62), a, 0.02));
        double speed = 0.5 * Math.sqrt(2 * G * (Math.sin(a) - Math.tan(Math.toRadians(11)) * Math.cos(a)));
        assertThat(out.speed()).isCloseTo(speed, EXACT);
        assertThat(out.depth()).isCloseTo(0.02 / (speed * Math.sqrt(0.08)), EXACT);
        assertThat(out.flow()).isEqualTo(0.02);
        assertThat(out.lip().y()).isEqualTo(0.6);
        assertThat(out.jet()).isFalse();
        assertThat(out.ways()).hasSize(1);
        isAbout(out.ways().get(0), Math.cos(a), -Math.sin(a));
    }

    /** At 5 deg friction would hold it: it creeps out at 0.2 m/s. */
    @Test
    void gritCreepsWhereFrictionHoldsIt() {
        Departure out = Objects.requireNonNull(grit(slot(0.5, 0, 0.62), Math.toRadians(5), 0.02));
        assertThat(out.speed()).isEqualTo(0.2);
        assertThat(out.depth()).isCloseTo(0.1 / Math.sqrt(0.08), EXACT);
    }

    @Test
    void gritLeavesOnlyDownhillThroughWhatIsOpenThere() {
        double a = Math.toRadians(40);
        assertThat(grit(slot(0.5, Math.toRadians(41), 0.62), a, 0.02)).isNull();
        assertThat(grit(slot(-0.5, 0, 0.62), a, 0.02)).isNull();
        assertThat(grit(slot(0.5, 0, 0.62), 0, 0.02)).isNull();
        assertThat(grit(slot(0.5, 0, 0.62), -a, 0.02)).isNull();
        // its lip lies at the very back, so nothing slides there
        Opening top = hole(
                0,
                0.62,
                new Vec3(-0.5, 0.6, 0.2),
                new Vec3(-0.5, 0.6, -0.2),
                new Vec3(-0.5, 0.8, -0.2),
                new Vec3(-0.5, 0.8, 0.2));
        assertThat(top.outward().x()).isEqualTo(1);
        assertThat(grit(top, a, 0.02)).isNull();
        // what faces straight down stands in no one's way
        assertThat(Objects.requireNonNull(grit(drain(), a, 0.02)).lip().x()).isEqualTo(0.2);
    }
}
