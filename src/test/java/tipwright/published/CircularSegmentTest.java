// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import tipwright.geometry.Head;
import tipwright.geometry.Level;
import tipwright.geometry.Moments;
import tipwright.geometry.Plane;
import tipwright.geometry.RevolvedTank;
import tipwright.geometry.Vec3;

/** Circular segments, as the cross-section of a horizontal drum with flat ends. */
class CircularSegmentTest {
    private static final Vec3 UP = new Vec3(0, 1, 0);

    private static RevolvedTank drum(double radius, double length) {
        return RevolvedTank.of(Vec3.ZERO, new Vec3(0, 0, 1), 2 * radius, length, Head.flat(), Head.flat());
    }

    @ParameterizedTest(name = "R {0}, h {1}")
    @CsvFileSource(resources = "circular-segment.csv")
    void areaAndCentroid(double radius, double depth, double area, double below) {
        Moments wet = drum(radius, 1).below(new Plane(UP, depth - radius));
        assertThat(wet.volume()).isCloseTo(area, within(1e-7));
        assertThat(wet.centroid().minus(new Vec3(0, -below, 0)).norm()).isLessThan(1e-7);
        // the chord, by Pythagoras
        assertThat(wet.section())
                .isCloseTo(2 * Math.sqrt(radius * radius - (depth - radius) * (depth - radius)), within(1e-12));
    }

    /**
     * A horizontal tank 10 m long whose surface is 1 m wide and 0.2 m below the top holds 15.138 m3.
     *
     * <p>Source: hackmath.net, math problem 3613; radius by Pythagoras 0.725 m.
     */
    @Test
    void tankOfThePublishedProblem() {
        double radius = (0.5 * 0.5 + 0.2 * 0.2) / (2 * 0.2);
        Moments wet = drum(radius, 10).below(new Plane(UP, radius - 0.2));
        assertThat(wet.section()).isCloseTo(10 * 1.0, within(1e-12));
        assertThat(wet.volume()).isCloseTo(15.138, within(5e-4));
    }

    /**
     * The same segment in another form: pi a^2 / 2 - a^2 asin(1 - h/a) - (a - h) sqrt(h (2a - h)).
     *
     * <p>Source: The Math Forum, Ask Dr. Math, library article 55223.
     */
    @Test
    void everyDepthAgreesWithTheOtherForm() {
        double a = 0.38;
        RevolvedTank drum = drum(a, 1.3);
        for (double h = 0.01; h < 2 * a; h += 0.01) {
            double area = Math.PI * a * a / 2 - a * a * Math.asin(1 - h / a) - (a - h) * Math.sqrt(h * (2 * a - h));
            assertThat(drum.below(new Plane(UP, h - a)).volume()).isCloseTo(1.3 * area, within(1e-14));
            assertThat(Level.holding(drum, UP, 1.3 * area, Double.NaN).level()).isCloseTo(h - a, within(1e-9));
        }
    }
}
