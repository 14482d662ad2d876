// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;

/**
 * What the search found.
 *
 * @param answers best first for each aim, then other compromises that nothing beats, all of which pass every check; empty: nothing
 *     fits
 * @param nearly when there are no answers: what keeps every limit of the mounts, but fails another check
 * @param misses when nothing fits: what would open it, least change first
 * @param notes in plain words: checks that fail wherever the mounts are, a search that was stopped
 * @param candidates how many places of the mounts were looked at, times the actuators
 * @param fitting how many of them passed
 * @param step of the grid, m
 * @param whole how many would have been looked at by the end
 * @param stopped whether it was stopped before its end; then no answers do not mean that nothing fits
 */
public record Placement(
        List<Answer> answers,
        List<Answer> nearly,
        List<String> misses,
        List<String> notes,
        long candidates,
        long fitting,
        double step,
        long whole,
        boolean stopped) {
    /** Copies the lists. */
    public Placement {
        answers = List.copyOf(answers);
        nearly = List.copyOf(nearly);
        misses = List.copyOf(misses);
        notes = List.copyOf(notes);
    }

    /** Whether it was stopped before it found anything. */
    public boolean unknown() {
        return stopped && answers.isEmpty() && nearly.isEmpty();
    }
}
