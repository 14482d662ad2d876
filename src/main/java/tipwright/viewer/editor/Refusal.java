// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tipwright.design.file.Problem;

/** Why a change of a field is not taken. */
final class Refusal {
    private Refusal() {}

    /**
     * What the change made worse: where all was sound before anything, else only what has to do with the field, since one fault may
     * have hidden another.
     *
     * @param before what was wrong
     * @param after what would be wrong
     * @param path of the field
     * @return sentences as they stand beside the field; empty: it is taken
     */
    static List<String> of(List<Problem> before, List<Problem> after, String path) {
        Set<String> known = new HashSet<>();
        before.forEach(p -> known.add(p.path() + ": " + p.message()));
        List<String> all = new ArrayList<>();
        for (Problem p : after) {
            boolean own = p.path().startsWith(path) || (!p.path().isEmpty() && path.startsWith(p.path() + "."));
            if ((own || known.isEmpty()) && !known.contains(p.path() + ": " + p.message())) {
                all.add(p.path().equals(path) || p.path().isEmpty() ? p.message() : p.path() + ": " + p.message());
            }
        }
        return all;
    }
}
