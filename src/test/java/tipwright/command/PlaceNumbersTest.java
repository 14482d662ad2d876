// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the search for mounts prints are numbers. */
class PlaceNumbersTest {
    @ParameterizedTest
    @CsvSource({"silt-trailer, metric", "silt-trailer, us"})
    void noneOfThemIsNoNumber(String design, String units) {
        Cli.Outcome outcome = Cli.run("place", design, "--candidates", "8000", "--units", units);
        assertThat(outcome.code()).as(outcome.err()).isLessThanOrEqualTo(1);
        assertThat(outcome.out() + outcome.err())
                .isNotBlank()
                .doesNotContainPattern("(?i)(?<![a-z])(nan|inf|infinity)(?![a-z])");
        assertThat(outcome.out()).contains("Pin to pin, tank stowed");
        // every place is on a mark of the tape: whole millimetres, or 1/16 in
        String mark = units.equals("us") ? "-?[0-9]+( [0-9]+/[0-9]+)? in|-?[0-9]+/(2|4|8|16) in" : "-?[0-9]+ mm";
        Matcher places = Pattern.compile("\\[([^\\]]+), ([^\\]]+)\\]").matcher(outcome.out());
        int found = 0;
        while (places.find()) {
            assertThat(places.group(1)).matches(mark);
            assertThat(places.group(2)).matches(mark);
            found++;
        }
        assertThat(found).isGreaterThan(4);
    }
}
