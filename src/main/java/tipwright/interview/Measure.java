// SPDX-License-Identifier: Apache-2.0
package tipwright.interview;

import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.Spelling;

/** What may be typed for an answer: words to choose from, and readings with or without their unit. */
final class Measure {
    private static final int LONGEST = 200;

    private Measure() {}

    /** A length as typed; a bare number is in the unit of the tape. */
    static String length(String typed, Answers before) throws QuantityException {
        String text = withUnit(typed, before);
        Quantities.estimate(text, Kind.LENGTH, before.unit());
        return text;
    }

    private static String withUnit(String typed, Answers before) {
        String text = typed.strip();
        return text.matches("[-+]?[0-9][0-9 ./-]*") ? text + " " + before.unit() : text;
    }

    /** A length above nothing. */
    static Question.Reader size() {
        return (typed, before) -> above(length(typed, before), Kind.LENGTH);
    }

    /** The thickness of sheet or plate. */
    static Question.Reader thickness() {
        return (typed, before) -> {
            String text = withUnit(typed, before);
            if (!(Quantities.thickness(text, before.unit()).si() > 0)) {
                throw new QuantityException("'" + typed + "' is not more than nothing");
            }
            return text;
        };
    }

    /** A quantity of some kind with its unit, above nothing. */
    static Question.Reader of(Kind kind) {
        return (typed, before) -> above(typed.strip(), kind);
    }

    /** Several quantities, with commas between them. */
    static Question.Reader several(Kind... kinds) {
        return (typed, before) -> {
            String[] parts = typed.strip().split("\\s*,\\s*");
            if (parts.length != kinds.length) {
                StringJoiner sample = new StringJoiner(", ");
                List.of(kinds).forEach(k -> sample.add(k.example()));
                throw new QuantityException(kinds.length + " answers with commas between them are needed, such as '"
                        + sample + "'; found " + (typed.isBlank() ? "none" : "'" + typed.strip() + "'"));
            }
            StringJoiner kept = new StringJoiner(", ");
            for (int i = 0; i < kinds.length; i++) {
                kept.add(above(kinds[i] == Kind.LENGTH ? length(parts[i], before) : parts[i], kinds[i]));
            }
            return kept.toString();
        };
    }

    /** One of these words, or its beginning. */
    static Question.Reader word(String... words) {
        return (typed, before) -> {
            String text = typed.strip().toLowerCase(Locale.ROOT);
            for (String word : words) {
                if (word.equals(text) || (!text.isEmpty() && word.startsWith(text))) {
                    return word;
                }
            }
            String near = Spelling.nearest(text, List.of(words));
            throw new QuantityException("'" + typed.strip() + "' is none of " + String.join(", ", words)
                    + (near == null ? "" : "; did you mean '" + near + "'?"));
        };
    }

    /** A line of text. */
    static Question.Reader line() {
        return (typed, before) -> {
            String text = typed.strip();
            if (text.isEmpty() || text.length() > LONGEST || text.chars().anyMatch(Character::isISOControl)) {
                throw new QuantityException("a line of 1 to " + LONGEST + " letters is needed");
            }
            return text;
        };
    }

    private static String above(String text, Kind kind) throws QuantityException {
        if (!(Quantities.estimate(text, kind, "").si() > 0)) {
            throw new QuantityException("'" + text + "' is not more than nothing; such as '" + kind.example() + "'");
        }
        return text;
    }
}
