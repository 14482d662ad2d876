// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.CannotComputeException;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.strength.OutOfRangeException;
import tipwright.strength.PowerScrew;

/** Where a part is out of the range of a rule of strength, its check cannot tell, and says why; nothing breaks. */
class OutOfRangeTest {
    private static final String SEAT = "seat: {at: [-70 mm, 255 mm, 0 mm], along: 300 mm, around: 240 mm";
    private static final String TUBE = "height: 100 mm, width: 60 mm, wall: 5 mm, z: [-455 mm, 455 mm]}";

    private static String demo(String... swaps) throws IOException {
        return swap(Files.readString(Path.of("geometry/silt-trailer.yaml")), swaps);
    }

    private static void cannotTell(Finding finding, String why) {
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(finding.note().metric()).contains(why);
    }

    @ParameterizedTest
    @CsvSource({
        "'seat: {at: [-600 mm, 255 mm, 0 mm], along: 300 mm, around: 240 mm', it reaches over the end of the round wall",
        "'seat: {at: [560 mm, 255 mm, 0 mm], along: 300 mm, around: 240 mm', it reaches over the end of the round wall",
        "'seat: {at: [-70 mm, 600 mm, 0 mm], along: 300 mm, around: 240 mm', seat.at must lie on the wall",
    })
    void aSeatThatIsNotOnTheStraightWall(String seat, String why) throws IOException, CannotComputeException {
        String yaml = demo("step: 1 deg", "step: 10 deg", SEAT, seat);
        for (String id : new String[] {"shell/tank-pin", "fatigue/wall-tank-pin"}) {
            cannotTell(One.of(yaml, id), why);
        }
        assertThat(One.of(demo("step: 1 deg", "step: 10 deg"), "shell/tank-pin").verdict())
                .isEqualTo(Verdict.PASS);
    }

    @Test
    void aTubeWithSidesThatWouldBuckle() throws IOException, CannotComputeException {
        String thin = demo("step: 1 deg", "step: 10 deg", TUBE, swap(TUBE, "wall: 5 mm", "wall: 2 mm"));
        cannotTell(One.of(thin, "tube-wall/frame-pin"), "the side is more than 35 walls high");
        assertThat(One.of(demo("step: 1 deg", "step: 10 deg"), "tube-wall/frame-pin")
                        .verdict())
                .isNotEqualTo(Verdict.NOT_CHECKED);
    }

    @Test
    void aScrewTooSteepToBeTurned() {
        assertThatThrownBy(() -> new PowerScrew(0.01, 0.1, 0.5, 0, 0))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("too steep");
    }
}
