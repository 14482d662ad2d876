// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import java.util.List;
import java.util.stream.Collectors;
import tipwright.quantity.Text;

/**
 * What is worst once something has gone wrong: the finding that another one stands for.
 *
 * @param worst of the findings then
 * @param cause what happens, in front of it: 'stuck fast, the drive pushes with 24 kN'; may be empty
 * @param others titles of what fails too
 */
public record Then(Finding worst, Text cause, List<String> others) {
    private static final int NAMED = 3;

    /** Copies the list. */
    public Then {
        others = List.copyOf(others);
    }

    /** 'closest to failing then: Actuator: push', with the cause before it and what fails too behind it. */
    public Text note() {
        String lead = worst.verdict() == Verdict.FAIL ? "worst then: " : "closest to failing then: ";
        return Text.join("; ", List.of(cause, Text.words(lead + worst.title()), also()));
    }

    /** The cause, and what the worst says in full; what fails too stands in the note. */
    public Text says(Text said) {
        return Text.join("; ", List.of(cause, said));
    }

    private Text also() {
        if (others.isEmpty()) {
            return Text.NONE;
        }
        String named = others.stream().limit(NAMED).collect(Collectors.joining(", "));
        int more = others.size() - Math.min(NAMED, others.size());
        return Text.words((others.size() == 1 ? "also fails: " : "also fail: ")
                + named
                + (more > 0 ? " and " + more + " more" : ""));
    }
}
