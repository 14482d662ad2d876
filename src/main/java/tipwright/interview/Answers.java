// SPDX-License-Identifier: Apache-2.0
package tipwright.interview;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;

/** The answers so far, by the question's id, in the order in which they were given. */
public record Answers(Map<String, String> texts) {
    /** What places are measured from. */
    static final String MARK = "mark";

    /** Places that are asked for, in the order of the questions; the tape may start at any that is known. */
    static final List<String> PLACES = List.of(
            "tank-low",
            "tank-high",
            "bottom-front",
            "bottom-dump",
            "top-dump",
            "top-front",
            "pivot",
            "frame-pin",
            "tank-pin");

    /** Copies them. */
    public Answers {
        texts = new LinkedHashMap<>(texts);
    }

    Answers with(String id, String text) {
        Map<String, String> more = new LinkedHashMap<>(texts);
        more.put(id, text);
        return new Answers(more);
    }

    boolean has(String id) {
        return texts.containsKey(id);
    }

    /** As kept; empty where it was not asked. */
    String text(String id) {
        return texts.getOrDefault(id, "");
    }

    boolean is(String id, String word) {
        return text(id).equals(word);
    }

    /** The unit of length of the tape: 'in' or 'mm'. */
    String unit() {
        return texts.getOrDefault("unit", "in");
    }

    /** A part of an answer that has several, from 0. */
    String part(String id, int number) {
        String[] parts = text(id).split("\\s*,\\s*");
        return number < parts.length ? parts[number] : "";
    }

    /** A length that was understood, m. */
    double metres(String text) {
        try {
            return Quantities.thickness(text, "").si();
        } catch (QuantityException e) {
            throw new IllegalStateException("kept without being understood: " + text, e);
        }
    }

    /** A length worked out, in the unit of the tape. */
    String length(double metres) {
        return Quantities.show(metres, Quantities.unit(Kind.LENGTH, unit()));
    }

    /** Where a place is, m, from the mark; null where it is not known yet. */
    @Nullable
    Vec2 at(String id) {
        return has(id) ? TapePlace.kept(text(id), this).at() : null;
    }
}
