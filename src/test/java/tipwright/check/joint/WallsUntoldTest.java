// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** Where a wall's strength cannot be told, the check says what is missing or why, and never passes it. */
class WallsUntoldTest {
    private static String shipped(String name, String... swaps) throws IOException {
        return swap(swap(Files.readString(Path.of("geometry", name)), swaps), "step: 1 deg", "step: 10 deg");
    }

    private static void untold(Finding finding, boolean missing, String why) {
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(finding.missing()).isEqualTo(missing);
        assertThat(finding.note().metric()).contains(why);
    }

    @Test
    void aSeatOfTheHousingIsNotOnTheTank() throws IOException, CannotComputeException {
        String yaml = shipped("silt-trailer.yaml", "  - joint: bearing-1\n    on: tank\n", "  - joint: bearing-1\n");
        untold(One.of(yaml, "shell/bearing-1"), true, "'on: tank' missing beside the seat");
    }

    /** A wall so hard that it does not yield, but so thin that it bends far: the rule is one of small bends. */
    @Test
    void aWallThatGivesWayByMoreThanItsThickness() throws IOException, CannotComputeException {
        String wall = "wall: {thickness: 5 mm, density: 7850 kg/m3}";
        String hard = "wall: {thickness: 0.6 mm, density: 7850 kg/m3, yield: 90 GPa}";
        untold(
                One.of(shipped("silt-trailer.yaml", wall, hard), "shell/tank-pin"),
                false,
                "gives way by more than its thickness");
        String soft = "wall: {thickness: 0.6 mm, density: 7850 kg/m3}";
        assertThat(One.of(shipped("silt-trailer.yaml", wall, soft), "shell/tank-pin")
                        .verdict())
                .isEqualTo(Verdict.FAIL);
    }
}
