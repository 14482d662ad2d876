// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.drawing.Drawing;
import tipwright.drawing.Mark;
import tipwright.quantity.UnitSystem;

/** The side view with the pins. */
class SideViewTest {
    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

    /** A machine that is taller than wide has a drawing that is narrower than the note under it. */
    @ParameterizedTest
    @ValueSource(strings = {"src/test/resources/tipwright/check/regression/bare.yaml", "geometry/lime-barrel.yaml"})
    void noteUnderATallMachineIsAllOnTheDrawing(String file) throws IOException, CannotComputeException {
        onTheDrawing(Analyser.analyse(Examples.read(Files.readString(Path.of(file)))), UnitSystem.METRIC);
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void noteIsAllOnTheDrawing(UnitSystem units) throws CannotComputeException {
        onTheDrawing(Analyser.analyse(Examples.read(Examples.BOX)), units);
    }

    private static void onTheDrawing(Analysis analysis, UnitSystem units) {
        Drawing drawing = SideView.besideList(analysis, units, 178, 130);
        int notes = 0;
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Label label && label.text().startsWith("scale 1:")) {
                Font font = new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont((float) label.height());
                double wide = font.getStringBounds(label.text(), MEASURE).getWidth();
                assertThat(label.anchor()).isEqualTo(-1);
                assertThat(label.at().x()).isGreaterThan(drawing.low().x());
                assertThat(label.at().x() + wide).isLessThan(drawing.high().x());
                notes++;
            }
        }
        assertThat(notes).isEqualTo(1);
    }
}
