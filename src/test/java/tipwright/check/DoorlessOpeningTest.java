// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.check.slurry.DoorCheck;

/** An opening that opens on the way has been shut until then: what shuts it is asked for, one opening at a time. */
class DoorlessOpeningTest {
    private static final String TOP =
            "    - {name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}\n";
    private static final String END =
            "    - {name: end, rim: rectangle, width: 500 mm, height: 500 mm, centre: [0.5 m, 1 m, 0 m], normal: x,"
                    + " opens-at: 30 deg, door: {hinge: [0.5 m, 1.3 m, 0 m], latch: [0.5 m, 0.7 m, 0 m],"
                    + " latch-rating: 50 kN, hinge-rating: 50 kN}}\n";
    private static final String SLUICE =
            "    - {name: sluice, rim: circle, diameter: 200 mm, centre: [0.5 m, 0.62 m, 0 m], normal: x, opens-at: 40 deg}\n";

    private static List<Finding> doors(String openings) throws CannotComputeException {
        return new DoorCheck().run(Analyser.analyse(Examples.read(swap(Examples.BOX, TOP, openings))));
    }

    @Test
    void aShutOpeningWithoutADoorIsNotChecked() throws CannotComputeException {
        List<Finding> found = doors(TOP + END + SLUICE);
        assertThat(found).hasSize(3);
        assertThat(found.get(2).verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(found.get(2).note().metric()).contains("sluice").contains("door missing");
    }

    @Test
    void anOpeningThatIsOpenFromTheStartNeedsNone() throws CannotComputeException {
        assertThat(doors(TOP + END)).hasSize(2).noneMatch(f -> f.verdict() == Verdict.NOT_CHECKED);
    }
}
