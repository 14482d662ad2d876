// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.quantity.UnitSystem;

/** Source of the factors: NIST SP 811 (from memory): inch, pound-force, US gallon. */
class NotesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "nearest: axle 254 mm at 3 deg            | nearest: axle 10 in at 3 deg",
                "bears up to 4.448 kN                     | bears up to 1000 lbf",
                "twists the cradle with up to 1356 N m    | twists the cradle with up to 1000 lbf ft",
                "at 3.048 m/s, 37.85 L left, -25.4 mm off | at 10 ft/s, 9.999 gal left, -1 in off",
                "relief valve at 100 bar                  | relief valve at 1450 psi",
                "wind on 0.9290 m2 of the tank            | wind on 10 ft2 of the tank",
                "rests 12 A for 3 s, no 5 mm2, 3 kg/m3    | rests 12 A for 3 s, no 5 mm2, 3 kg/m3",
            })
    void quantitiesInANoteTakeTheUnitsOfTheReader(String metric, String us) {
        Finding base = demo().result().findings().get(0);
        Finding finding = with(base, metric);
        assertThat(Notes.of(finding, UnitSystem.METRIC)).isEqualTo(metric);
        assertThat(Notes.of(finding, UnitSystem.US)).isEqualTo(us);
    }

    @Test
    void noMetricLengthOrForceIsLeftInTheNotesOfTheDemo() {
        assertThat(demo().result().findings()).allSatisfy(f -> assertThat(Notes.of(f, UnitSystem.US))
                .doesNotContainPattern("\\d (mm|N|kN|L|N m|bar|kg)\\b"));
    }

    private static Finding with(Finding f, String note) {
        return new Finding(
                f.id(),
                f.title(),
                f.demand(),
                f.capacity(),
                f.factor(),
                f.kind(),
                f.utilisation(),
                f.tilt(),
                f.loadCase(),
                f.verdict(),
                f.source(),
                note);
    }

    private static Checked demo() {
        try {
            Reading.Good good = (Reading.Good) DesignFile.shipped("silt-trailer.yaml");
            return new Checked(Checker.check(good.design()), good.assumptions(), java.util.List.of());
        } catch (tipwright.analysis.CannotComputeException e) {
            throw new AssertionError(e);
        }
    }
}
