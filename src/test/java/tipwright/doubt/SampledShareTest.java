// SPDX-License-Identifier: Apache-2.0
package tipwright.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The exact interval of a count, against its definition by sums of the binomial distribution and a printed example. */
class SampledShareTest {
    /** Source: 682 tall plants of 925 (Conover, Practical Nonparametric Statistics; the interval as statistics programs print it, from memory). */
    @Test
    void plantsOfAPrintedExample() {
        SampledShare share = SampledShare.of(682, 925);
        assertThat(share.low()).isCloseTo(0.7076683, within(5e-7));
        assertThat(share.high()).isCloseTo(0.7654066, within(5e-7));
    }

    /** At either end the count, or what is farther out, has a chance of 2.5 %. */
    @ParameterizedTest
    @CsvSource({"1, 100", "3, 100", "97, 100", "17, 200", "0, 60", "40, 40"})
    void tailsAreTwoAndAHalfPercent(int count, int samples) {
        SampledShare share = SampledShare.of(count, samples);
        if (count > 0) {
            assertThat(1 - atMost(count - 1, samples, share.low())).isCloseTo(0.025, within(1e-6));
        } else {
            assertThat(share.low()).isZero();
        }
        if (count < samples) {
            assertThat(atMost(count, samples, share.high())).isCloseTo(0.025, within(1e-6));
        } else {
            assertThat(share.high()).isEqualTo(1);
        }
    }

    /** Never seen in n: 1 - 0.025^(1/n). */
    @Test
    void neverSeenIsNotNever() {
        assertThat(SampledShare.of(0.0, 1000).high()).isCloseTo(1 - Math.pow(0.025, 1e-3), within(1e-9));
        assertThat(SampledShare.of(0, 1000).words()).isEqualTo("between 0 and 0.4 %, 95 % sure");
        // 1 - 0.025^(1/10000) = 0.0369 %
        assertThat(SampledShare.of(0, 10_000).words()).isEqualTo("between 0 and 0.04 %, 95 % sure");
        assertThat(SampledShare.of(10_000, 10_000).words()).isEqualTo("between 99.96 and 100 %, 95 % sure");
        assertThatThrownBy(() -> SampledShare.of(3, 2)).hasMessageContaining("from 0 to samples");
    }

    private static double atMost(int count, int samples, double chance) {
        double term = Math.pow(1 - chance, samples);
        double sum = term;
        for (int i = 1; i <= count; i++) {
            term *= (samples - i + 1.0) / i * chance / (1 - chance);
            sum += term;
        }
        return sum;
    }
}
