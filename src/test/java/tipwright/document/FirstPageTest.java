// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.design.file.Uncertain;
import tipwright.doubt.Sureness;
import tipwright.quantity.Kind;
import tipwright.remedy.TriedFixes;
import tipwright.report.Checked;

/** What stands on the first page of a report. */
class FirstPageTest {
    private static String page(Result result, @Nullable Sureness sure) {
        Checked checked = new Checked(result, List.of(), List.of(), TriedFixes.NONE, sure, List.of());
        Origin origin = Dossiers.of("wash-tub").origin();
        Dossier dossier = new Dossier(checked, origin, Stills.none("none"));
        Markup markup = new Markup();
        new FirstPage(dossier, Dossiers.A4).to(markup);
        return markup.text();
    }

    /** How sure the verdict is stands right under it, in the same words as on the terminal; nothing where no value may be off. */
    @Test
    void howSureStandsUnderTheVerdict() throws Exception {
        Result result = Checker.check(Examples.read(Examples.BOX));
        Uncertain density = new Uncertain("slurry.density", "1400 kg/m3 +- 100", Kind.DENSITY, 1400, 50);
        Sureness sure =
                new Sureness(97, 100, "Actuator: push", 0.95, 0.04, List.of(new Sureness.Influence(density, 0.04)), 25);
        String page = page(result, sure);
        assertThat(page)
                .contains("How sure: it passes in 97 of 100", "Weigh a bucket of it.")
                .containsSubsequence("class=\"verdict ", "How sure", "Numbers, with what there is");
        assertThat(page(result, null)).doesNotContain("How sure");
    }
}
