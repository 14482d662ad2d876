// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.remedy.TriedFix;
import tipwright.remedy.TriedFixes;

/** The head of a report and the list below it tell the same change first. */
class FixTextTest {
    private static Checked checked;
    private static Finding push;

    @BeforeAll
    static void check() throws CannotComputeException {
        checked = ShippedResults.checked("too-small");
        push = checked.result().findings().stream()
                .filter(f -> f.id().equals("push") && f.verdict() == Verdict.FAIL)
                .findFirst()
                .orElseThrow();
    }

    private static TriedFix fill(int percent, boolean close) {
        Design design = checked.result().analysis().design();
        Set<String> fixes = Set.of(push.id());
        return new TriedFix(
                "fill",
                Text.words("fill it to " + percent + " % at most"),
                Text.NONE,
                1 - percent / 100.0,
                design,
                fixes,
                close ? fixes : Set.of(),
                true);
    }

    private static List<String> head(TriedFix... fixes) {
        Checked with = new Checked(
                checked.result(), List.of(), List.of(), new TriedFixes(List.of(fixes), true, true), null, List.of());
        return FixText.everything(with, UnitSystem.METRIC);
    }

    private static String least(TriedFix... fixes) {
        return FixText.least(push, new TriedFixes(List.of(fixes), true, true), UnitSystem.METRIC);
    }

    @Test
    void theChangeThatLeavesAReserveComesFirstInBoth() {
        assertThat(head(fill(65, true), fill(50, false)))
                .containsExactly("With this change alone every check passes: fill it to 50 % at most.");
        assertThat(least(fill(65, true), fill(50, false)))
                .isEqualTo("Fix, tried: fill it to 50 % at most; then every check passes.");
    }

    @Test
    void whatPassesCloselyIsSaidToInBoth() {
        assertThat(head(fill(65, true)))
                .containsExactly("With this change alone every check passes, if closely: fill it to 65 % at most.");
        assertThat(least(fill(65, true)))
                .isEqualTo("Fix, tried: fill it to 65 % at most; then every check passes, this one closely.");
        assertThat(FixText.of(push, new TriedFixes(List.of(fill(65, true)), true, true), UnitSystem.METRIC))
                .isEqualTo("Fix, tried: fill it to 65 % at most (then it is close).");
    }
}
