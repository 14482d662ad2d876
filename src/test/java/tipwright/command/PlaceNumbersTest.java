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
        Cli.Outcome outcome = Cli.run("place", design, "--candidates", "4000", "--units", units);
        assertThat(outcome.code()).as(outcome.err()).isLessThanOrEqualTo(1);
        assertThat(outcome.out() + outcome.err())
                .isNotBlank()
                .doesNotContainPattern("(?i)(?<![a-z])(nan|inf|infinity)(?![a-z])");
        assertThat(outcome.out()).contains("Pin to pin, tank stowed");
        // every place is on a mark of the tape: whole millimetres, or 1/16 in
        String mark = units.equals("us") ? "-?[0-9]+( [0-9]+/[0-9]+)? in|-?[0-9]+/(2|4|8|16) in" : "-?[0-9]+ mm";
        Matcher places = Pattern.compile("\\[([^\\]]+)\\]").matcher(outcome.out());
        int brackets = outcome.out().indexOf("\nfastenings:");
        int found = 0;
        while (places.find()) {
            // what is drawn in millimetres and goes along with a pin by sixteenths is on no mark
            boolean mixed = units.equals("us") && brackets >= 0 && places.start() > brackets;
            for (String value : places.group(1).split(", ")) {
                assertThat(value).matches(mixed ? mark + "|-?[0-9]+\\.[0-9]{1,3} in" : mark);
            }
            found++;
        }
        assertThat(found).isGreaterThan(4);
    }
}
