// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Stiffeners with the wall that helps them. */
class StiffenedWallTest {
    private static final StiffenedWall WALL =
            new StiffenedWall(StiffenerBar.flat(0.006, 0.060), 0.004, 0.4, 1.2, 200e9, 235e6);

    /** Source: parallel-axis sum by hand: 30 x 4 = 120 mm of wall; neutral line 11.714 mm up, 319 291.4 mm4. */
    @Test
    void barAndWallTogether() {
        assertThat(WALL.helpingWidth()).isCloseTo(0.120, within(1e-12));
        assertThat(WALL.neutral() * 1e3).isCloseTo((360 * 30 - 480 * 2) / 840.0, within(1e-9));
        assertThat(WALL.inertia() * 1e12).isCloseTo(319_291.43, within(0.01));
        assertThat(WALL.modulusOfSection()).isCloseTo(WALL.inertia() / (0.060 - WALL.neutral()), within(1e-15));
    }

    /** Source: beam tables (AISC Manual, Roark, from memory): w L2/8 and q L2/(9 sqrt 3), 5/384 and 0.00652. */
    @Test
    void momentsOfTheTables() {
        assertThat(WALL.moment(1e3, 1e3)).isCloseTo(400 * 1.44 / 8, within(1e-9));
        assertThat(WALL.moment(0, 1e3)).isCloseTo(400 * 1.44 / (9 * Math.sqrt(3)), within(1e-9));
        assertThat(WALL.moment(1e3, 0)).isEqualTo(WALL.moment(0, 1e3));
        assertThat(WALL.moment(0, 0)).isZero();
        double ei = 200e9 * WALL.inertia();
        assertThat(WALL.moved(1e3, 1e3)).isCloseTo(5.0 / 384 * 400 * Math.pow(1.2, 4) / ei, within(1e-12));
        assertThat(WALL.moved(0, 1e3)).isCloseTo(0.006522 * 400 * Math.pow(1.2, 4) / ei, within(1e-12));
        assertThat(WALL.stress(0, 1e3)).isCloseTo(WALL.moment(0, 1e3) / WALL.modulusOfSection(), within(1e-6));
        assertThatThrownBy(() -> WALL.moment(-1, 0)).hasMessageContaining("pressure");
    }

    /** Source: own input set, two ways: the greatest moment of a slanted load by trying 2000 places. */
    @Test
    void slantedPressure() {
        for (double low : new double[] {0, 100, 500, 900}) {
            double most = 0;
            double first = 400e-3 * 1.2 * (2 * low + 1000) / 6;
            for (int i = 0; i <= 2000; i++) {
                double x = 1.2 * i / 2000;
                double moment = first * x - 0.4 * (low * x * x / 2 + (1000 - low) * x * x * x / (6 * 1.2));
                most = Math.max(most, moment);
            }
            double exact = 0.4 * 1.2 * (2 * low + 1000) / 6;
            assertThat(first).isCloseTo(exact, within(1e-9));
            assertThat(WALL.moment(low, 1000)).isCloseTo(most, Percentage.withPercentage(1e-3));
        }
    }

    @Test
    void wallHelpsAtMostToHalfWay() {
        StiffenedWall close = new StiffenedWall(StiffenerBar.flat(0.006, 0.06), 0.004, 0.1, 1, 200e9, 235e6);
        assertThat(close.helpingWidth()).isEqualTo(0.1);
        StiffenedWall strong = new StiffenedWall(StiffenerBar.flat(0.006, 0.06), 0.004, 0.4, 1, 200e9, 940e6);
        assertThat(strong.helpingWidth()).isCloseTo(0.060, within(1e-12));
    }

    /** Source: own input set, two ways: sections cut into thin slices. */
    @Test
    void barsBySlices() {
        sliced(StiffenerBar.flat(0.006, 0.06), 0.06, y -> 0.006);
        sliced(StiffenerBar.tube(0.05, 0.03, 0.003), 0.05, y -> y < 0.003 || y > 0.047 ? 0.03 : 0.006);
        sliced(StiffenerBar.angle(0.06, 0.04, 0.005), 0.06, y -> y > 0.055 ? 0.04 : 0.005);
    }

    private static void sliced(StiffenerBar bar, double height, java.util.function.DoubleUnaryOperator width) {
        int n = 6000;
        double area = 0;
        double first = 0;
        double second = 0;
        for (int i = 0; i < n; i++) {
            double y = height * (i + 0.5) / n;
            double da = width.applyAsDouble(y) * height / n;
            area += da;
            first += y * da;
            second += y * y * da;
        }
        assertThat(bar.area()).isCloseTo(area, Percentage.withPercentage(0.01));
        assertThat(bar.middle()).isCloseTo(first / area, Percentage.withPercentage(0.01));
        assertThat(bar.inertia()).isCloseTo(second - first * first / area, Percentage.withPercentage(0.05));
        assertThat(bar.height()).isEqualTo(height);
    }
}
