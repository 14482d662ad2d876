// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Halving ends, whatever it is asked. */
class BisectionTest {
    @Test
    void findsTheTurnFromEitherSide() {
        Bisection.Interval up = Bisection.between(0, 2, 1e-12, "root of two", x -> x * x <= 2);
        assertThat(up.good()).isCloseTo(Math.sqrt(2), within(1e-12)).isLessThanOrEqualTo(up.bad());
        Bisection.Interval down = Bisection.between(2, 0, 1e-12, "root of two", x -> x * x > 2);
        assertThat(down.good()).isCloseTo(Math.sqrt(2), within(1e-12)).isGreaterThanOrEqualTo(down.bad());
    }

    @Test
    void givesUpWhereNumbersAreTooCoarse() {
        assertThatThrownBy(() -> Bisection.between(1e20, 3e20, 1e-3, "the force, N, that it bears", x -> x < 2e20))
                .isInstanceOf(NotConvergedException.class)
                .hasMessageStartingWith("did not converge in 200 halvings: the force, N, that it bears, between ");
        assertThatThrownBy(() -> Bisection.between(0, Double.POSITIVE_INFINITY, 1, "anything", x -> false))
                .isInstanceOf(NotConvergedException.class);
    }
}
