// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.quantity.UnitSystem;

/** Quantities in notes follow the reader's units; names do not. */
class NoteUnitsTest {
    private static List<Finding> findings(Design design) {
        try {
            return Checker.findings(design);
        } catch (CannotComputeException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "twin-rams", "crank-cart", "grit-hopper", "saw-skid", "kerb-swing"})
    void noMetricUnitIsLeftForAReaderOfUsUnits(String name) {
        Design design = ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
        assertThat(findings(design)).allSatisfy(f -> assertThat(f.note().show(UnitSystem.US))
                .doesNotContainPattern("\\d (mm|N|kN|L|L/s|N m|N/mm|bar|kg|m2|m/s|MPa|kPa)\\b"));
    }

    @Test
    void aNameWithAUnitInItIsLeftAlone() {
        Design design = Examples.read(Examples.BOX
                + "obstacles: [{name: 6 mm plate box, outline: [[-2 m, -2 m], [-1.9 m, -2 m], [-1.9 m, -1.9 m]]}]\n");
        assertThat(findings(design))
                .filteredOn(f -> f.id().startsWith("clearance"))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.note().show(UnitSystem.US)).contains("6 mm plate box"));
    }
}
