// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Drums with flat ends; inputs of our own, answers computed by a second way. */
class DrumTest {
    private static final double INCH = 0.0254;

    /** Segment formula by hand: 48 in diameter, 72 in long, 12 in deep: 25 471.47 in3. */
    @Test
    void quarterFullInInches() {
        RevolvedTank drum =
                RevolvedTank.of(new Vec3(3, 2, 1), new Vec3(1, 0, 0), 48 * INCH, 72 * INCH, Head.flat(), Head.flat());
        Moments wet = drum.below(new Plane(new Vec3(0, 1, 0), 2 - 12 * INCH));
        double inches = wet.volume() / (INCH * INCH * INCH);
        assertThat(inches).isCloseTo(25_471.47, within(5e-3));
        assertThat(inches / 231).isCloseTo(110.2661, within(5e-5));
    }

    /** Radius 0.5, length 2, tilted by 10 degrees, surface through the middle; numerical strip integral. */
    @Test
    void halfFullAndTilted() {
        RevolvedTank drum = RevolvedTank.of(Vec3.ZERO, new Vec3(1, 0, 0), 1, 2, Head.flat(), Head.flat());
        double tilt = Math.toRadians(10);
        Moments wet = drum.below(new Plane(new Vec3(Math.sin(tilt), Math.cos(tilt), 0), 0));
        assertThat(wet.volume()).isCloseTo(0.7853982, within(5e-8));
        assertThat(wet.centroid().x()).isCloseTo(-0.1477839, within(5e-8));
        assertThat(wet.centroid().y()).isCloseTo(-0.1992610, within(5e-8));
        assertThat(wet.centroid().z()).isCloseTo(0, within(1e-15));
        // first order, waterplane inertia over volume: 0.1497
        double first = 1.0 * Math.pow(2, 3) / 12 / wet.volume() * Math.tan(tilt);
        assertThat(first).isCloseTo(0.1497, within(5e-5));
    }

    /** Flat surface of a tilted drum that touches neither end: an ellipse, pi R^2 / cos of the angle to the axis. */
    @Test
    void steepCutIsAnEllipse() {
        RevolvedTank drum = RevolvedTank.of(Vec3.ZERO, new Vec3(1, 0, 0), 1, 2, Head.flat(), Head.flat());
        double angle = Math.toRadians(50);
        Moments wet = drum.below(new Plane(new Vec3(Math.cos(angle), 0, Math.sin(angle)), 0.1));
        assertThat(wet.section()).isCloseTo(Math.PI * 0.25 / Math.cos(angle), within(1e-9));
        assertThat(wet.volume()).isCloseTo(Math.PI * 0.25 * (1 + 0.1 / Math.cos(angle)), within(1e-10));
    }
}
