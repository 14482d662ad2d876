// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LevelTest {
    private static final Vec3 Y = new Vec3(0, 1, 0);
    private static final RevolvedTank TANK = RevolvedTank.of(
            new Vec3(0, 5, 0), new Vec3(1, 0.2, 0), 0.8, 1.4, Head.semiEllipsoidal(), Head.torispherical());

    static DoubleStream shares() {
        return DoubleStream.of(1e-9, 1e-6, 1e-3, 0.05, 0.19, 0.21, 0.5, 0.79, 0.81, 0.95, 0.999, 1 - 1e-6, 1 - 1e-9);
    }

    @ParameterizedTest
    @MethodSource("shares")
    void findsAnyShareFromAnyGuess(double share) {
        for (Solid solid : new Solid[] {TANK, Shapes.comb(), Polyhedron.box(new Vec3(1, 1, 1), Vec3.ZERO)}) {
            double whole = solid.whole().volume();
            Range range = solid.extent(Y);
            double[] guesses = {
                Double.NaN, range.low(), range.high(), range.low() + 1e-9, range.high() - 1e-9, -100, 100
            };
            for (double guess : guesses) {
                Filled filled = Level.filling(solid, Y, share * whole, guess);
                assertThat(filled.moments().volume()).isCloseTo(share * whole, within(1e-10 * whole));
                assertThat(filled.moments()).isEqualTo(solid.below(filled.plane()));
            }
        }
    }

    /** The comb's teeth stand on a slab 0.2 high of 3.5 x 0.7; above it the area is 4 x 0.5 x 0.7. */
    @Test
    void aSolidWithALedgeIsFilledPastIt() {
        double slab = 3.5 * 0.7 * 0.2;
        Plane plane = Level.holding(Shapes.comb(), Y, slab + 0.3 * 1.4, Double.NaN);
        assertThat(plane.level()).isCloseTo(0.5, within(1e-9));
        assertThat(Level.holding(Shapes.comb(), Y, slab, Double.NaN).level()).isCloseTo(0.2, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NEGATIVE_INFINITY})
    void noVolumeTouchesTheBottom(double volume) {
        Filled filled = Level.filling(TANK, Y, volume, 5);
        assertThat(filled.plane().level()).isEqualTo(TANK.extent(Y).low());
        assertThat(filled.moments()).isEqualTo(Moments.NOTHING);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1 + 1e-12, 2, Double.POSITIVE_INFINITY})
    void allOfItOrMoreTouchesTheTop(double share) {
        Filled filled = Level.filling(TANK, Y, share * TANK.whole().volume(), Double.NaN);
        assertThat(filled.plane().level()).isEqualTo(TANK.extent(Y).high());
        assertThat(filled.moments()).isEqualTo(TANK.whole());
    }

    @Test
    void whatIsNotANumberIsRefused() {
        assertThatThrownBy(() -> Level.holding(TANK, Y, Double.NaN, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Level.holding(TANK, Vec3.ZERO.unit(), 0.1, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
