// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.Set;
import tipwright.design.Design;
import tipwright.quantity.Text;

/**
 * A change that has been tried: what it fixes passes with it, nothing that passed fails, and nothing that fails gets much worse.
 *
 * @param kind of change: of one kind only the least need be told
 * @param words what to do, as short as on a button
 * @param detail what follows it where there is room: '(to x = 220 mm, y = -405 mm)'; may be empty
 * @param change how much it changes, to rank by
 * @param design with the change
 * @param fixes ids of the findings that pass with it
 * @param close ids of those that pass closely
 * @param everything whether no check fails with it
 */
public record TriedFix(
        String kind,
        Text words,
        Text detail,
        double change,
        Design design,
        Set<String> fixes,
        Set<String> close,
        boolean everything) {
    /** Copies the sets. */
    public TriedFix {
        fixes = Set.copyOf(fixes);
        close = Set.copyOf(close);
    }

    /** What to do, in full. */
    public Text said() {
        return detail.isEmpty() ? words : words.plus(" ").plus(detail);
    }
}
