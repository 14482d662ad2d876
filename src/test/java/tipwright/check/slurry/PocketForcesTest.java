// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** Forces are worked out with one surface in the tank: where pockets hold others, nobody is told that all passes. */
class PocketForcesTest {
    private static final String ID = "empties/forces-with-pockets";

    private static Result check(String yaml) throws CannotComputeException {
        return Checker.asFilled(Examples.read(yaml));
    }

    @Test
    void forcesBesideAPocketThatKeepsSomeCannotBeTold() throws CannotComputeException {
        assertThat(check(Examples.SUMP).findings()).anySatisfy(f -> {
            assertThat(f.id()).isEqualTo(ID);
            assertThat(f.verdict()).isEqualTo(Verdict.NOT_CHECKED);
            assertThat(f.note().metric())
                    .startsWith("at 17 deg of tilt pockets of the inside still keep 12 % of the load");
        });
    }

    @Test
    void aFloorThatFallsToTheOutletHasNone() throws CannotComputeException {
        String plain =
                swap(Examples.SUMP, "[-500 mm, 300 mm], [-300 mm, 300 mm], [-300 mm, 550 mm]", "[-500 mm, 550 mm]");
        assertThat(check(plain).findings()).extracting(Finding::id).doesNotContain(ID);
    }
}
