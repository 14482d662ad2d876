// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the search for mounts prints are numbers. */
class PlaceNumbersTest {
    @ParameterizedTest
    @CsvSource({"silt-trailer, metric", "silt-trailer, us"})
    void noneOfThemIsNoNumber(String design, String units) {
        Cli.Outcome outcome = Cli.run("place", design, "--candidates", "20000", "--units", units);
        assertThat(outcome.code()).as(outcome.err()).isLessThanOrEqualTo(1);
        assertThat(outcome.out() + outcome.err())
                .isNotBlank()
                .doesNotContainPattern("(?i)(?<![a-z])(nan|inf|infinity)(?![a-z])");
    }
}
