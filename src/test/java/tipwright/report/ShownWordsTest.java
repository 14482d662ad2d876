// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Result;
import tipwright.quantity.UnitSystem;

/**
 * Every word that is printed of the shipped designs is one that 'explain' knows, one of the design's own, or ordinary English: those are
 * in ordinary-words.txt, and a new one is put there by hand, with a thought whether a welder would know it.
 */
class ShownWordsTest {
    @Test
    void everyPrintedWordIsKnown() throws CannotComputeException {
        for (String name : ShippedResults.names()) {
            Checked checked = ShippedResults.checked(name);
            Result result = checked.result();
            StringBuilder printed = new StringBuilder();
            for (UnitSystem units : UnitSystem.values()) {
                Style style = new Style(false, units);
                printed.append(ShortReport.of(checked, style))
                        .append(beforeTheAssumptions(TextReport.of(checked, style)))
                        .append(TimeReport.of(result.analysis(), result.timing(), style));
            }
            Vocabulary.assertKnown("check and time of " + name, printed.toString(), ShippedResults.text(name));
        }
    }

    /** The barrel is poured over its rim: nothing on it can be shut. The trailer has a door. */
    @Test
    void whatHasNoOutletIsNotToldOfOne() throws CannotComputeException {
        Style style = new Style(false, UnitSystem.METRIC);
        Checked barrel = ShippedResults.checked("lime-barrel");
        String told = ShortReport.of(barrel, style)
                + TextReport.of(barrel, style)
                + TimeReport.of(barrel.result().analysis(), barrel.result().timing(), style);
        assertThat(told)
                .contains("full, load still in it", "pouring over the lip", "grit slid to the lip")
                .doesNotContainIgnoringCase("outlet");
        Checked trailer = ShippedResults.checked("silt-trailer");
        assertThat(trailer.result().analysis().design().tank().pours()).isFalse();
        assertThat(TextReport.of(trailer, style)).contains("full, outlet shut").doesNotContain("load still in it");
    }

    @Test
    void oldNamesAndThoseOfTheFileAreKnownToo() {
        for (String word :
                new String[] {"held", "caked", "brim", "arm", "demand", "transmission", "to mend", "Stowed"}) {
            assertThat(Term.find(word)).as(word).isPresent();
        }
        assertThat(Term.find("held").orElseThrow().word()).isEqualTo("full, outlet shut");
        assertThat(Term.find("nonsense")).isEmpty();
    }

    @Test
    void noWordIsExplainedTwice() {
        for (Term term : Term.all()) {
            assertThat(Term.find(term.word()).orElseThrow()).isEqualTo(term);
        }
    }

    /** The keys of the design file, which stand after this heading, are explained by the schema. */
    private static String beforeTheAssumptions(String text) {
        int end = text.indexOf("Assumed, because");
        return end < 0 ? text : text.substring(0, end);
    }
}
