// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading.Good;

/**
 * A design's text and what came of it. Immutable.
 *
 * @param text of the file
 * @param solved null when the text is no design or cannot be computed
 * @param problems why not, one sentence each; empty when it was solved
 * @param faults those of the problems that have their places in the text
 * @param read what the text says; null when it is no design
 */
public record EditedDesign(
        String text, @Nullable Solved solved, List<String> problems, List<Problem> faults, @Nullable Good read) {
    /** Copies the lists. */
    public EditedDesign {
        problems = List.copyOf(problems);
        faults = List.copyOf(faults);
    }

    static EditedDesign bad(String text, List<Problem> problems) {
        return new EditedDesign(text, null, problems.stream().map(Problem::text).toList(), problems, null);
    }
}
