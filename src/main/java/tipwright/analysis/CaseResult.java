// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import tipwright.load.LoadCase;

/**
 * One load case over all tilts that the linkage reaches.
 *
 * @param load the case
 * @param rows [tilt]
 */
public record CaseResult(LoadCase load, List<Row> rows) {
    /** Copies the list. */
    public CaseResult {
        rows = List.copyOf(rows);
    }

    /** Name of the load case. */
    public String name() {
        return load.name();
    }
}
