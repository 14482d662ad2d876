// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Examples;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.UnitSystem;

/** What the sheet asks to be measured is read back by the reader of design files, and places every pin where the design has it. */
class TapeBackTest {
    private static final double TAPE = 0.002;

    @ParameterizedTest
    @CsvSource({"silt-trailer, METRIC", "crank-cart, METRIC", "six-link, METRIC", "saw-skid, US", "lime-barrel, US"})
    void linesAreReadBack(String name, UnitSystem units) {
        Design design = ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
        TapeBack back = new TapeBack(design, units);
        String points = String.join("\n", back.lines()) + "\n";
        Design read = Examples.read(Examples.BOX + points);
        Map<String, Vec3> found =
                read.points() == null ? Map.of() : read.points().places();
        Map<String, Vec2> meant = design.drive().places(design.pivot().at());
        assertThat(found.keySet()).containsAll(meant.keySet());
        meant.forEach((pin, at) -> assertThat(found.get(pin).xy().minus(at).norm())
                .as(pin + " is " + found.get(pin) + ", meant " + at)
                .isLessThan(TAPE));
    }
}
