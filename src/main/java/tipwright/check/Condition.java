// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Wind;

/**
 * What a machine has to work under at rest: with so much in it, on such ground, in such wind.
 *
 * @param calm with that fill on that ground
 * @param wind null: none
 */
public record Condition(Analysis calm, @Nullable Wind wind) {
    /** Calm and in each of some winds. */
    static List<Condition> of(Analysis calm, List<Wind> winds) {
        List<Condition> all = new ArrayList<>();
        all.add(new Condition(calm, null));
        winds.forEach(w -> all.add(new Condition(calm, w)));
        return all;
    }

    /** The machine in that wind, as analysed here or with its pins elsewhere. */
    public Analysis blown(Analysis machine) throws CannotComputeException {
        return wind == null ? machine : Analyser.blown(machine, wind);
    }
}
