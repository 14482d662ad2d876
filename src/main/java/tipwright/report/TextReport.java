// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.check.Result;
import tipwright.design.file.Assumption;

/** A result as a text that needs no manual: verdict first, then why. */
public final class TextReport {
    private TextReport() {}

    /**
     * The whole text, lines ended by a line feed.
     *
     * @param style colours and units
     */
    public static String of(Checked checked, Style style) {
        Result result = checked.result();
        Analysis analysis = result.analysis();
        List<String> lines = new ArrayList<>(new HeadSection(checked, style).lines());
        lines.add("");
        lines.addAll(new CheckSection(style).lines(result.findings()));
        lines.add("");
        lines.addAll(new ForceSection(analysis, style).lines());
        lines.add("");
        lines.addAll(new EnvelopeSection(analysis, style).lines());
        lines.add("");
        lines.addAll(new FillSection(style).lines(result));
        if (!checked.assumptions().isEmpty()) {
            lines.add("");
            lines.add(style.heading("Taken as usual; set them in the design file if yours differ"));
            lines.addAll(Prose.wrap("  ", sentence(checked.assumptions())));
        }
        lines.add("");
        lines.add(style.heading("Before you tip it"));
        for (String caution : Cautions.all()) {
            lines.addAll(Prose.wrap("  * ", caution));
        }
        return String.join("\n", lines) + "\n";
    }

    private static String sentence(List<Assumption> assumptions) {
        List<String> words = new ArrayList<>();
        for (Assumption a : assumptions) {
            words.add(a.path() + " " + a.value());
        }
        return String.join("; ", words);
    }
}
