// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Outflow;
import tipwright.geometry.Vec3;
import tipwright.time.Rim;

/** Flow through openings against weir and orifice formulas of the handbooks. */
class WeirAndOrificeTest {
    private static final Vec3 UP = new Vec3(0, 1, 0);
    private static final double G = 9.80665;

    private static Opening rectangle(double width, double height, Vec3 normal, double coefficient) {
        return new Opening(
                "door",
                Opening.Rim.RECTANGLE,
                null,
                width,
                height,
                List.of(),
                Vec3.ZERO,
                normal,
                0,
                null,
                new Outflow(coefficient, 1));
    }

    private static Rim polygon(Vec3... points) {
        return new Rim(new Opening(
                "notch",
                Opening.Rim.POLYGON,
                null,
                null,
                null,
                List.of(points),
                null,
                null,
                0,
                null,
                new Outflow(0.62, 1)));
    }

    private static Rim upright(double width, double height, double coefficient) {
        return new Rim(rectangle(width, height, new Vec3(1, 0, 0), coefficient));
    }

    /** Triangular notch: Q = 8/15 Cd sqrt(2g) tan(half angle) h^2.5. Source: texts on hydraulics (from memory). */
    @Test
    void triangularNotch() {
        double half = Math.toRadians(30);
        double top = Math.tan(half);
        Rim notch = polygon(new Vec3(0, 0, 0), new Vec3(0, 1, top), new Vec3(0, 1, -top));
        double h = 0.3;
        double q = 8.0 / 15 * 0.62 * Math.sqrt(2 * G) * Math.tan(half) * Math.pow(h, 2.5);
        assertThat(notch.flow(UP, h)).isCloseTo(q, within(1e-9 * q));
    }

    /**
     * Upright round orifice: Q = Cd A sqrt(2 g H) (1 - x2/32 - 5 x4/1024 - ...), x = radius over head. Source: texts on hydraulics (from
     * memory); the series agrees with the integral to the term shown.
     */
    @Test
    void uprightRoundOrifice() {
        Opening hole = new Opening(
                "hole",
                Opening.Rim.CIRCLE,
                0.4,
                null,
                null,
                List.of(),
                Vec3.ZERO,
                new Vec3(1, 0, 0),
                0,
                null,
                new Outflow(0.62, 1));
        Rim rim = new Rim(hole);
        double x = 0.2 / 0.5;
        double q = 0.62 * rim.area() * Math.sqrt(2 * G * 0.5) * (1 - x * x / 32 - 5 * Math.pow(x, 4) / 1024);
        // the next term is 105/65536 x^6 = 7e-6; the rim is a polygon of 180 sides
        assertThat(rim.flow(UP, 0.5)).isCloseTo(q, within(1.5e-5 * q));
    }

    /** An opening that leans: heads follow from the true height of each strip; compared with a fine sum. */
    @Test
    void leaningOpeningAgainstAFineSum() {
        Vec3 up = new Vec3(Math.sin(0.7), Math.cos(0.7), 0);
        Rim rim = upright(0.5, 0.4, 0.62);
        double level = 0.1;
        double sum = 0;
        int n = 200_000;
        for (int i = 0; i < n; i++) {
            double y = -0.2 + 0.4 * (i + 0.5) / n;
            sum += Math.sqrt(Math.max(0, level - y * Math.cos(0.7))) * 0.5 * 0.4 / n;
        }
        double q = 0.62 * Math.sqrt(2 * G) * sum;
        assertThat(rim.flow(up, level)).isCloseTo(q, within(1e-6 * q));
    }
}
