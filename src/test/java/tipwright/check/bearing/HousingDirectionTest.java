// SPDX-License-Identifier: Apache-2.0
package tipwright.check.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** A housing's figure for a load onto its base says nothing of a load that pulls it off. */
class HousingDirectionTest {
    private static final String PLAIN = "{kind: ball-insert, bore: 40 mm, c0: 19 kN}";

    /** Housings of the box with figures at these angles; the base of both is up, so that the load pulls off it. */
    private static List<Finding> found(String figures, String base) throws CannotComputeException {
        String bearing = "{kind: ball-insert, bore: 40 mm, c0: 19 kN, housing: [" + figures + "]}, base: " + base;
        return new BearingHousingCheck().run(Analyser.analyse(Examples.read(swap(Examples.BOX, PLAIN, bearing))));
    }

    @Test
    void aDirectionBeyondTheFiguresIsNotChecked() throws CannotComputeException {
        List<Finding> found = found("{angle: 0 deg, load: 90 kN}, {angle: 90 deg, load: 90 kN}", "[0, 1]").stream()
                .filter(f -> f.verdict() == Verdict.NOT_CHECKED)
                .toList();
        assertThat(found).hasSize(2);
        assertThat(found.get(0).note().metric())
                .contains("bearing.housing has no figure past 90 deg")
                .contains("kN");
    }

    @Test
    void figuresAllTheWayRoundLeaveNothingOpen() throws CannotComputeException {
        assertThat(found("{angle: 0 deg, load: 90 kN}, {angle: 180 deg, load: 90 kN}", "[0, 1]"))
                .hasSize(2)
                .allMatch(f -> f.verdict() == Verdict.PASS);
    }

    /**
     * A straight line over half a turn says too much: of pillow blocks whose figures are given for many directions those across the base
     * and beyond are the least (makers' tables, from memory).
     */
    @Test
    void betweenFiguresThatAreFarApartALoadThatTheLesserDoesNotBearIsLeftOpen() throws CannotComputeException {
        assertThat(found("{angle: 0 deg, load: 150 kN}, {angle: 180 deg, load: 20 kN}", "[1, 0]"))
                .filteredOn(f -> f.title().contains("between the figures"))
                .hasSize(2)
                .allMatch(f -> f.verdict() == Verdict.NOT_CHECKED)
                .allMatch(f -> f.note().metric().contains("no figure between 0 deg and 180 deg"));
        assertThat(found(
                        "{angle: 0 deg, load: 150 kN}, {angle: 90 deg, load: 85 kN}, {angle: 180 deg, load: 20 kN}",
                        "[1, 0]"))
                .noneMatch(f -> f.title().contains("between the figures"));
    }

    /** Pressed onto its base within the figures: nothing is left open either. */
    @Test
    void aLoadWithinTheFiguresNeedsNoOthers() throws CannotComputeException {
        String still =
                swap(Examples.BOX, "80 deg", "10 deg") + "cases: {skip: [draining, heaped, caked, empty, heel]}\n";
        String bearing = "{kind: ball-insert, bore: 40 mm, c0: 19 kN, housing: [{angle: 0 deg, load: 90 kN},"
                + " {angle: 120 deg, load: 90 kN}]}";
        assertThat(new BearingHousingCheck().run(Analyser.analyse(Examples.read(swap(still, PLAIN, bearing)))))
                .hasSize(2)
                .allMatch(f -> f.verdict() == Verdict.PASS);
    }
}
