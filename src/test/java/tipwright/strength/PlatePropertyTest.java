// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.strength.PlateUnderPressure.Edge;

/** What must hold for any flat wall. */
class PlatePropertyTest {
    private static final Edge HELD = Edge.SUPPORTED;
    private static final Edge FIXED = Edge.CLAMPED;

    private static PlateUnderPressure wall(double width, double height, Edge top) {
        return PlateUnderPressure.steel(width, height, 0.006, HELD, HELD, top);
    }

    /** Source: own input set, two ways: Navier's double series for supported edges, even and rising pressure. */
    @ParameterizedTest
    @CsvSource({"1, 1, 1, 1", "1, 1, 1, 0", "0.8, 2, 1, 0", "2, 0.7, 1, 0.3", "3, 1, 0, 1"})
    void navier(double width, double height, double low, double high) {
        double t = 0.006;
        double d = 200e9 * t * t * t / (12 * 0.91);
        double moved = 0;
        double direct = 0;
        for (int i = 1; i <= 30; i++) {
            double y = height * i / 60 * 2;
            double w = 0;
            double mx = 0;
            double my = 0;
            for (int m = 1; m < 160; m += 2) {
                for (int n = 1; n < 160; n++) {
                    double a = m * Math.PI / width;
                    double b = n * Math.PI / height;
                    double q = 8 / (Math.PI * Math.PI * m * n) * (low - high * Math.cos(n * Math.PI));
                    double term =
                            q / (d * (a * a + b * b) * (a * a + b * b)) * Math.sin(a * width / 2) * Math.sin(b * y);
                    w += term;
                    mx += d * (a * a + 0.3 * b * b) * term;
                    my += d * (b * b + 0.3 * a * a) * term;
                }
            }
            moved = Math.max(moved, w);
            direct = Math.max(direct, Math.max(mx, my) * 6 / (t * t));
        }
        PlateBending bent = wall(width, height, HELD).under(low, high);
        assertThat(bent.moved()).isCloseTo(moved, Percentage.withPercentage(0.2));
        assertThat(bent.direct()).isCloseTo(direct, Percentage.withPercentage(0.4));
    }

    @Test
    void turnedByAQuarterItIsTheSame() {
        PlateBending one = wall(1.7, 1, HELD).under(1e3, 1e3);
        PlateBending other = wall(1, 1.7, HELD).under(1e3, 1e3);
        assertThat(one.direct()).isCloseTo(other.direct(), Percentage.withPercentage(0.1));
        assertThat(one.moved()).isCloseTo(other.moved(), Percentage.withPercentage(0.1));
    }

    @Test
    void upsideDownItIsTheSame() {
        PlateBending one = wall(1.7, 1, HELD).under(1e3, 200);
        PlateBending other = wall(1.7, 1, HELD).under(200, 1e3);
        assertThat(one.direct()).isCloseTo(other.direct(), Percentage.withPercentage(1e-6));
        PlateBending top =
                PlateUnderPressure.steel(1.7, 1, 0.006, HELD, Edge.FREE, FIXED).under(1e3, 200);
        PlateBending bottom =
                PlateUnderPressure.steel(1.7, 1, 0.006, HELD, FIXED, Edge.FREE).under(200, 1e3);
        assertThat(top.equivalent()).isCloseTo(bottom.equivalent(), Percentage.withPercentage(1e-6));
    }

    @Test
    void goesWithPressureAndThickness() {
        PlateBending one = wall(1, 0.6, Edge.FREE).under(1e3, 100);
        PlateBending twice = wall(1, 0.6, Edge.FREE).under(2e3, 200);
        assertThat(twice.direct()).isCloseTo(2 * one.direct(), Percentage.withPercentage(1e-9));
        PlateBending inwards = wall(1, 0.6, Edge.FREE).under(-1e3, -100);
        assertThat(inwards.equivalent()).isCloseTo(one.equivalent(), Percentage.withPercentage(1e-9));
        PlateBending thick =
                PlateUnderPressure.steel(1, 0.6, 0.012, HELD, HELD, Edge.FREE).under(1e3, 100);
        assertThat(thick.direct()).isCloseTo(one.direct() / 4, Percentage.withPercentage(1e-6));
        assertThat(thick.moved()).isCloseTo(one.moved() / 8, Percentage.withPercentage(1e-6));
    }

    @Test
    void theMoreItIsHeldTheLessItMoves() {
        Edge[] edges = {Edge.FREE, HELD, FIXED};
        for (Edge sides : new Edge[] {HELD, FIXED}) {
            // A bottom that is free too may swing out further when the top is held.
            for (Edge bottom : new Edge[] {HELD, FIXED}) {
                double last = Double.POSITIVE_INFINITY;
                for (Edge top : edges) {
                    double moved = PlateUnderPressure.steel(1.2, 0.8, 0.006, sides, bottom, top)
                            .under(1e3, 500)
                            .moved();
                    assertThat(moved).isLessThan(last);
                    last = moved;
                }
            }
        }
    }

    @Test
    void aRimIsBetweenFreeAndHeld() {
        PlateUnderPressure open = wall(1, 0.5, Edge.FREE);
        PlateBending free = open.under(1e3, 0);
        PlateBending held = wall(1, 0.5, HELD).under(1e3, 0);
        double last = free.moved();
        for (double rim = 1; rim < 1e9; rim *= 10) {
            PlateBending bent = open.withRim(rim).under(1e3, 0);
            assertThat(bent.moved()).isLessThanOrEqualTo(last).isGreaterThanOrEqualTo(held.moved() * (1 - 1e-3));
            assertThat(bent.edgeMoment()).isPositive();
            last = bent.moved();
        }
        PlateBending stiff = open.withRim(1e10).under(1e3, 0);
        assertThat(stiff.moved()).isCloseTo(held.moved(), Percentage.withPercentage(0.2));
        assertThat(stiff.direct()).isCloseTo(held.direct(), Percentage.withPercentage(0.5));
        assertThat(free.edgeMoment()).isZero();
        // The stiff rim carries what a held edge does; at most all of the pressure as a beam, q0 H/6 L2/8.
        assertThat(stiff.edgeMoment()).isBetween(0.5 * 1e3 * 0.5 / 6 / 8, 1e3 * 0.5 / 6 / 8);
    }

    /** Without sides and with Poisson's ratio 0 it is a beam. */
    @Test
    void beam() {
        PlateUnderPressure strip = new PlateUnderPressure(0.5, 2, 0.02, 200e9, 0, Edge.FREE, HELD, HELD, 0);
        double inertia = Math.pow(0.02, 3) / 12;
        PlateBending bent = strip.under(1e3, 1e3);
        assertThat(bent.direct()).isCloseTo(1e3 * 4 / 8 * 6 / 4e-4, Percentage.withPercentage(1e-3));
        assertThat(bent.moved()).isCloseTo(5 * 1e3 * 16 / (384 * 200e9 * inertia), Percentage.withPercentage(1e-3));
        PlateUnderPressure canti = new PlateUnderPressure(0.5, 1, 0.02, 200e9, 0, Edge.FREE, FIXED, Edge.FREE, 0);
        assertThat(canti.under(1e3, 0).moved())
                .isCloseTo(1e3 / (30 * 200e9 * inertia), Percentage.withPercentage(1e-3));
        assertThat(canti.under(1e3, 0).direct()).isCloseTo(1e3 / 6 * 6 / 4e-4, Percentage.withPercentage(1e-3));
    }

    @Test
    void saysWhereLinearTheoryEnds() {
        double sag = wall(1, 1, HELD).under(1, 1).moved();
        double limit = 0.003 / sag;
        assertThat(wall(1, 1, HELD)
                        .under(limit * (1 - 1e-9), limit * (1 - 1e-9))
                        .linear())
                .isTrue();
        assertThat(wall(1, 1, HELD)
                        .under(limit * (1 + 1e-9), limit * (1 + 1e-9))
                        .linear())
                .isFalse();
    }

    @Test
    void refusesWhatIsNoWall() {
        assertThatThrownBy(() -> wall(1, 8.1, HELD)).hasMessageContaining("height over width");
        assertThat(wall(1, 8, HELD).under(1, 0).moved()).isPositive();
        assertThatThrownBy(() -> wall(0, 1, HELD)).hasMessageContaining("width");
        assertThatThrownBy(() -> PlateUnderPressure.steel(1, 1, 0.01, Edge.FREE, HELD, Edge.FREE))
                .hasMessageContaining("held");
        assertThatThrownBy(() -> wall(1, 1, Edge.FREE).withRim(-1)).hasMessageContaining("rim");
    }

    @Test
    void roundEnds() {
        PlateBending fixed = CircularPlate.steel(0.6, 0.006, true).under(5e3);
        PlateBending held = CircularPlate.steel(0.6, 0.006, false).under(5e3);
        assertThat(fixed.direct()).isLessThan(held.direct());
        assertThat(fixed.moved()).isLessThan(held.moved());
        assertThat(CircularPlate.steel(0.6, 0.006, true).under(-5e3)).isEqualTo(fixed);
        assertThat(fixed.equivalent()).isLessThan(fixed.direct());
        // A square plate just around the round one moves more.
        double square = PlateUnderPressure.steel(1.2, 1.2, 0.006, HELD, HELD, HELD)
                .under(5e3, 5e3)
                .moved();
        assertThat(CircularPlate.steel(0.6, 0.006, false).under(5e3).moved()).isBetween(0.8 * square, 1.2 * square);
        assertThatThrownBy(() -> CircularPlate.steel(0.6, 0, true)).hasMessageContaining("thickness");
    }
}
