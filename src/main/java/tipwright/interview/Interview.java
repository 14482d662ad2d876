// SPDX-License-Identifier: Apache-2.0
package tipwright.interview;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;

/** How far an interview has come; each answer gives a new one. */
public record Interview(Answers answers) {
    /** Before the first question. */
    public static Interview start() {
        return new Interview(new Answers(Map.of()));
    }

    /** What is asked next; null: nothing more. */
    public @Nullable Question next() {
        return Questions.ALL.stream()
                .filter(q -> q.wanted().test(answers) && !answers.has(q.id()))
                .findFirst()
                .orElse(null);
    }

    /** How many questions there are, as far as the answers tell. */
    public int questions() {
        return (int)
                Questions.ALL.stream().filter(q -> q.wanted().test(answers)).count();
    }

    /** How many answers were given. */
    public int given() {
        return answers.texts().size();
    }

    /** What is taken when nothing is typed; empty when nothing more is asked. */
    public String usual() {
        Question question = next();
        return question == null ? "" : question.usual().apply(answers);
    }

    /** Where to hold the tape for the question at hand, or where else its answer is found; empty when nothing more is asked. */
    public String tape() {
        Question question = next();
        return question == null ? "" : question.tape().apply(answers);
    }

    /**
     * With an answer to the question at hand.
     *
     * @param typed blank: the usual one
     * @throws QuantityException when it is not understood or does not go with the others; the message says how to fix it
     */
    public Interview answer(String typed) throws QuantityException {
        Question question = next();
        if (question == null) {
            return this;
        }
        String kept = question.reader().read(typed.isBlank() ? usual() : typed, answers);
        Answers more = answers.with(question.id(), kept);
        Together.check(question.id(), more);
        return new Interview(more);
    }

    /** Without the last answer; the same at the start. */
    public Interview back() {
        Map<String, String> fewer = new LinkedHashMap<>(answers.texts());
        List<String> ids = new ArrayList<>(fewer.keySet());
        if (!ids.isEmpty()) {
            fewer.remove(ids.get(ids.size() - 1));
        }
        return new Interview(new Answers(fewer));
    }

    /** The side view as far as it is known, in lines of text; empty before there is anything to see. */
    public String picture() {
        return SideText.of(sketch());
    }

    /** The side view as far as it is known. */
    public SideSketch sketch() {
        return SideSketch.of(answers);
    }

    /** What the tape shows; inches before that is asked. */
    public UnitSystem units() {
        return answers.unit().equals("in") ? UnitSystem.US : UnitSystem.METRIC;
    }

    /** The design file; call it when nothing more is asked. */
    public String design() {
        return DesignText.of(answers);
    }

    /** All answers as lines of text, to go on from another day. */
    public String saved() {
        StringBuilder lines = new StringBuilder();
        answers.texts()
                .forEach(
                        (id, text) -> lines.append(id).append(": ").append(text).append('\n'));
        return lines.toString();
    }

    /** Goes on from answers that were saved; what is not understood, and all behind it, is asked again. */
    public static Interview resumed(String saved) {
        Interview interview = start();
        for (String line : saved.lines().toList()) {
            Question question = interview.next();
            int colon = line.indexOf(": ");
            if (question == null || colon < 0 || !line.substring(0, colon).equals(question.id())) {
                return interview;
            }
            try {
                interview = interview.answer(line.substring(colon + 2));
            } catch (QuantityException unclear) {
                return interview;
            }
        }
        return interview;
    }
}
