// SPDX-License-Identifier: Apache-2.0
package tipwright.check.mistake;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.quantity.Text;

/** A box 1 m long whose middle lies at x = 250 mm, and its full load with it: a twentieth of the length, 50 mm, is neither side. */
class WrongSideTest {
    private static final String TOP =
            "- {name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m]," + " normal: y}";
    private static final String LID =
            "- {name: top, rim: rectangle, width: 200 mm, height: 200 mm, centre: [%s mm, 1.5 m," + " 0 m], normal: y}";

    private static List<String> told(String opening, String pivot, String more) throws CannotComputeException {
        String yaml = swap(
                Examples.BOX,
                "80 deg",
                "10 deg",
                "centre: [0 m, 1 m, 0 m]",
                "centre: [250 mm, 1 m, 0 m]",
                TOP,
                LID.formatted(opening),
                "at: [400 mm, 400 mm]",
                "at: [" + pivot + " mm, 400 mm]");
        return WrongSide.find(Analyser.analyse(Examples.read(yaml + more))).stream()
                .map(Text::metric)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "250, 201, ''",
        "250, 199, left",
        "299, 190, left",
        "301, 190, beyond",
        "301, 199, beyond",
        "301, 201, ''",
        "301, 400, ''",
        "200, 400, ''"
    })
    void thePivotLiesTowardsTheDumpEnd(String opening, String pivot, String says) throws CannotComputeException {
        List<String> told = told(opening, pivot, "");
        if (says.isEmpty()) {
            assertThat(told).isEmpty();
            return;
        }
        int off = 250 - Integer.parseInt(pivot);
        assertThat(told)
                .containsExactly(
                        says.equals("left")
                                ? "It is drawn to dump towards -x: the pivot is " + off
                                        + " mm to the left of the full tank's centre of mass and no opening to the right of the"
                                        + " tank's middle, but x runs towards the dump end. 'tipwright mirror FILE' turns the file"
                                        + " round."
                                : "The full tank's centre of mass is " + off
                                        + " mm beyond the pivot towards the dump end, with the tank still stowed: it goes over by"
                                        + " itself. Is the pivot's x = " + pivot + " mm right?");
    }

    /** Without the full tank among the loads nothing is told. */
    @Test
    void nothingIsToldWithoutTheFullTank() throws CannotComputeException {
        assertThat(told("250", "150", "")).hasSize(1);
        assertThat(told("250", "150", "cases: {skip: [held]}\n")).isEmpty();
    }
}
