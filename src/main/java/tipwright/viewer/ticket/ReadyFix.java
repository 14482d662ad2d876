// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Finding;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.remedy.TriedFix;
import tipwright.report.FixText;

/**
 * A fix that was tried, and the design's text with it.
 *
 * @param fix what was tried
 * @param text read again and checked again with the same outcome; null: it cannot be written into the text by itself
 */
public record ReadyFix(TriedFix fix, @Nullable String text) {
    /** For a button: 'Move the frame pin 10 mm down'. */
    String label(UnitSystem units) {
        String brief = fix.words().show(units);
        String first = brief.split(" ", 2)[0];
        boolean thing = first.equals("the") || first.equals("a") || first.equals("an") || first.equals("two");
        return thing ? "Use " + brief : Text.capital(brief);
    }

    /** What the button leaves out, and what comes of it: '(to x = 220 mm, y = -405 mm), then every check passes'; may be empty. */
    String rest(Finding f, UnitSystem units) {
        String more = fix.detail().show(units);
        String comes = FixText.comesOf(fix, f);
        return more + (more.isEmpty() || comes.isEmpty() ? "" : ", ") + comes;
    }

    /** In full, with what comes of it: '...; then every check passes'. */
    String says(Finding f, UnitSystem units) {
        return FixText.said(fix, f, units);
    }
}
