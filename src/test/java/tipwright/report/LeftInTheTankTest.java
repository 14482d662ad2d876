// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.quantity.UnitSystem;
import tipwright.remedy.FixSearch;
import tipwright.remedy.Shop;
import tipwright.remedy.TriedFix;
import tipwright.remedy.TriedFixes;

/** A tub on one cylinder that keeps grit in it at full tilt: the short answer tells what was tried and helps, or what it takes. */
class LeftInTheTankTest {
    private static String text() throws IOException {
        try (InputStream in = LeftInTheTankTest.class.getResourceAsStream("one-cylinder-tub.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static Checked tried(String text) throws CannotComputeException {
        Checked checked = ShippedResults.of(text);
        Finding left = left(checked);
        assertThat(left.verdict()).isEqualTo(Verdict.FAIL);
        TriedFixes fixes = FixSearch.of(
                checked.result(), () -> new Shop(UnitSystem.METRIC, List.of(), List.of()), left, () -> true);
        return new Checked(
                checked.result(), checked.assumptions(), checked.remarks(), fixes, checked.sure(), checked.sizes());
    }

    private static Finding left(Checked checked) {
        return checked.result().findings().stream()
                .filter(f -> f.id().equals("empties/settled-solids"))
                .findFirst()
                .orElseThrow();
    }

    /** The stroke ends soon after full tilt: it takes more tilt and a pin elsewhere at once. */
    @Test
    void moreTiltGoesWithAPinThatLetsTheActuatorGetThere() throws Exception {
        Checked checked = tried(text());
        TriedFix fix = checked.fixes().of(left(checked)).get(0);
        assertThat(fix.words().metric()).matches("tilt it to 6[05] deg and move the (pivot|frame pin|tank pin) .*");
        assertThat(ShortReport.of(checked, new Style(false, UnitSystem.METRIC)))
                .contains("Fix, tried: tilt it to 6")
                .doesNotContain("No one change");
    }

    /** Steep grit in a tub whose floor would have to stand on end. */
    @Test
    void whereNothingHelpsItTellsWhatItTakes() throws Exception {
        Checked checked = tried(swap(text(), "repose: 14 deg", "repose: 30 deg"));
        assertThat(checked.fixes().of(left(checked))).isEmpty();
        assertThat(ShortReport.of(checked, new Style(false, UnitSystem.METRIC)).replaceAll("\\s+", " "))
                .contains(
                        "No one change that was tried fixes it: it has to tilt further, have a steeper floor or let the load"
                                + " out lower down (empty from 75.8 deg of tilt on).");
    }
}
