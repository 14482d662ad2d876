// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Verdict;
import tipwright.quantity.UnitSystem;

/** One screen that tells what matters. */
class ShortReportTest {
    static Stream<String> designs() {
        return ShippedResults.names().stream();
    }

    @ParameterizedTest
    @MethodSource("designs")
    void fitsOneScreenInBothUnits(String name) throws CannotComputeException {
        Checked checked = ShippedResults.checked(name);
        for (UnitSystem units : UnitSystem.values()) {
            List<String> lines =
                    ShortReport.of(checked, new Style(false, units)).lines().toList();
            assertThat(lines).hasSizeLessThanOrEqualTo(ShortReport.SCREEN);
            assertThat(lines).allMatch(l -> l.length() <= 100);
        }
    }

    @Test
    void tellsBothHalvesTheNumbersAndTheFix() throws CannotComputeException {
        String text = ShortReport.of(ShippedResults.withFixes("too-small"), Style.PLAIN);
        assertThat(text)
                .contains("X VERDICT: FAILS")
                .contains("X Normal dump: fails. ")
                .contains("X If something goes wrong: fails. ")
                .contains("it is 467 mm short", "Fix, tried: the same.")
                .contains("Push         9.14 kN of 6 kN")
                .containsPattern(
                        "With this change alone every check passes: the actuator\\s+'mid-12-long' of the parts box")
                .containsPattern("Fix, tried: the actuator\\s+'mid-12-long' of the parts box \\(push\\s+12 kN")
                .contains("Never go under a raised tank");
    }

    /** The name of a trouble is not said twice where its load says more than the name. */
    @Test
    void aTroubleIsNamedOnce() throws CannotComputeException {
        String text = ShortReport.of(ShippedResults.checked("crank-cart"), Style.PLAIN);
        assertThat(text.replaceAll("\\s+", " "))
                .contains("Outlet blocks on the way (41.8 % full, at 45 deg): the tank");
    }

    @Test
    void saysNothingOfFixesThatWereNotTried() throws CannotComputeException {
        assertThat(ShortReport.of(ShippedResults.checked("too-small"), Style.PLAIN))
                .contains("the actuator must push 9.142 kN and is good for 6 kN")
                .doesNotContain("Fix");
    }

    @Test
    void whatIsSkippedIsSaid() throws CannotComputeException {
        String text = ShippedResults.text("too-small");
        String bare = text.substring(0, text.indexOf("fastenings:"));
        Checked checked = ShippedResults.of(bare + "\ncases: {skip: [held]}\n");
        assertThat(ShortReport.of(checked, Style.PLAIN).replaceAll("\\s+", " "))
                .contains("? Cannot tell: welds, bolts, lugs")
                .contains("the file says that it does not happen: full, outlet shut");
    }

    @Test
    void aTroubleThatCannotHappenIsSaid() throws CannotComputeException {
        Checked checked = ShippedResults.of(ShippedResults.text("too-small")
                .replace("what-if: {", "what-if: {never: [full-of-rainwater, wheel-sinks], "));
        assertThat(checked.result().findings())
                .noneMatch(f -> f.id().equals("what-if/full-of-rainwater") || f.id().equals("what-if/wheel-sinks"));
        assertThat(checked.result().findings()).anyMatch(f -> f.id().equals("what-if/lost-power"));
        assertThat(ShortReport.of(checked, Style.PLAIN).replaceAll("\\s+", " "))
                .contains("the file says that it does not happen: the tank is full of rainwater; a wheel sinks.");
    }

    @Test
    void aFindingWithoutHarmHasNoPercentage() throws CannotComputeException {
        Checked checked = ShippedResults.checked("lime-barrel");
        assertThat(TextReport.of(checked, Style.PLAIN)).doesNotContainPattern("close .*1[0-9][0-9]%");
        assertThat(checked.result().findings())
                .filteredOn(f -> f.id().equals("what-if/one-carries-all"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.verdict()).isEqualTo(Verdict.CLOSE);
                    assertThat(f.toldByShare(0.85)).isFalse();
                    assertThat(f.note().metric()).contains("stalls", "but holds");
                });
    }
}
