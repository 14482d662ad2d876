// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import tipwright.check.Part;
import tipwright.check.Result;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.doubt.Sureness;
import tipwright.quantity.Text;

/** What the job is, and the verdict in its two halves. */
final class HeadSection {
    private final Checked checked;
    private final Result result;
    private final Style style;

    HeadSection(Checked checked, Style style) {
        this.checked = checked;
        this.result = checked.result();
        this.style = style;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>(job());
        lines.add("");
        lines.addAll(verdict());
        lines.addAll(remarks());
        return lines;
    }

    List<String> job() {
        List<String> lines = new ArrayList<>();
        Design design = result.analysis().design();
        lines.add(style.heading(Prose.safe(design.name())));
        if (design.about() != null) {
            lines.addAll(Prose.wrap("  ", Prose.safe(design.about())));
        }
        lines.addAll(Prose.wrap("  ", new Job(design, style.units()).sentence()));
        return lines;
    }

    List<String> remarks() {
        List<String> lines = new ArrayList<>();
        Sureness sure = checked.sure();
        if (sure != null) {
            SurenessText.of(sure, style.units()).forEach(text -> lines.addAll(Prose.wrap("  ", text)));
        }
        FixText.everything(checked, style.units()).forEach(text -> lines.addAll(Prose.wrap("  ", Prose.safe(text))));
        for (Text mistake : checked.mistakes()) {
            lines.addAll(Prose.wrap("  ! ", Prose.safe(mistake.show(style.units()))));
        }
        for (String warning : checked.warnings()) {
            lines.addAll(Prose.wrap("  ! ", Prose.safe(warning)));
        }
        return lines;
    }

    List<String> verdict() {
        VerdictText text = new VerdictText(result, style.units());
        List<String> lines = new ArrayList<>();
        lines.add(verdictLine(result, style));
        for (Part part : result.parts().both()) {
            lines.addAll(Prose.wrap("  " + CheckSection.sign(part.verdict()) + " ", text.sentence(part)));
        }
        return lines;
    }

    /** '+ VERDICT: PASSES SO FAR, 2 checks cannot tell'. */
    static String verdictLine(Result result, Style style) {
        Verdict verdict = result.verdict();
        return style.verdict(verdict, CheckSection.sign(verdict) + " VERDICT: " + VerdictText.word(result));
    }
}
