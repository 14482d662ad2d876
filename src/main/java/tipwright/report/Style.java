// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import tipwright.check.rule.Verdict;
import tipwright.quantity.UnitSystem;

/**
 * How a text is shown.
 *
 * @param colour whether the reader's terminal shows colours (ANSI sequences)
 * @param units that numbers are shown in
 */
public record Style(boolean colour, UnitSystem units) {
    /** Metric, no colour. */
    public static final Style PLAIN = new Style(false, UnitSystem.METRIC);

    private static final String END = "\u001b[0m";

    String heading(String text) {
        return colour ? "\u001b[1m" + text + END : text;
    }

    String verdict(Verdict verdict, String text) {
        if (!colour) {
            return text;
        }
        String start =
                switch (verdict) {
                    case PASS -> "\u001b[32m";
                    case CLOSE -> "\u001b[33m";
                    case FAIL -> "\u001b[1;31m";
                    case NOT_CHECKED -> "\u001b[35m";
                };
        return start + text + END;
    }
}
