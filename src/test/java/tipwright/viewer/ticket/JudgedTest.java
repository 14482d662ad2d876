// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.check.StagedCheck;
import tipwright.check.rule.Verdict;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.report.Checked;
import tipwright.viewer.Trial;
import tipwright.viewer.editor.Solved;

/** A pass that is not yet known is not told, a failure is told as soon as it is certain. */
class JudgedTest {
    private static Solved solved(String text) throws CannotComputeException {
        return Solved.of(((Reading.Good) DesignFile.read("trial.yaml", text, NamedFiles.shipped())).design());
    }

    @Test
    void whatPassesIsNotToldBeforeAllChecksAreMade() throws CannotComputeException {
        Solved solved = solved(Trial.text());
        Judged quick = Judged.asked(solved);
        assertThat(quick.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(quick.waits()).contains("still being worked out");
        assertThat(Judged.moving(solved).verdict()).isEqualTo(Verdict.NOT_CHECKED);
        StagedCheck check = StagedCheck.of(solved.analysis());
        Judged rest = quick.atRest(check.atRest());
        assertThat(rest.early().fails()).isFalse();
        assertThat(rest.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(rest.waits()).contains("dump in time").contains("still being worked out");
        assertThat(quick.findings()).noneMatch(f -> f.id().equals("clearance"));
        assertThat(rest.findings()).anyMatch(f -> f.id().equals("clearance"));
        Result all = check.inTime();
        Judged checked = rest.checked(new Checked(all, List.of(), List.of()));
        assertThat(checked.verdict()).isEqualTo(all.verdict()).isNotEqualTo(Verdict.NOT_CHECKED);
        assertThat(checked.waits()).contains("how full");
        // nothing is handed over before it is known how full it may be
        assertThat(checked.checked()).isNull();
        Result whole = check.whole();
        assertThat(whole).isEqualTo(Checker.check(solved.design()));
        assertThat(checked.filled(new Checked(whole, List.of(), List.of()), List.of(), "")
                        .checked())
                .isNotNull();
    }

    @Test
    void whatFailsAtOnceIsToldAtOnce() throws CannotComputeException {
        Solved thin =
                solved(swap(Trial.text(), "frame-pin-joint: {diameter: 25 mm", "frame-pin-joint: {diameter: 14 mm"));
        assertThat(Judged.asked(thin).verdict()).isEqualTo(Verdict.FAIL);
    }
}
