// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tipwright.geometry.Vec2;

class DimensionLineTest {
    private static DesignEditor editor(String text) {
        DesignEditor editor = new DesignEditor("a", Path.of("geometry", "a.yaml"), text, null);
        return editor;
    }

    private static String text() throws IOException {
        return Files.readString(Path.of("geometry", "silt-trailer.yaml"));
    }

    private static DimensionLine line(DesignEditor editor, String from, String to) {
        return DimensionLine.of(MeasuredPoint.of(editor), from, to);
    }

    @Test
    void aTypedDistanceMovesThePointAlongTheLine() throws IOException {
        DesignEditor editor = editor(text());
        DimensionLine line = line(editor, "pivot", "tank pin");
        // (600, 380) to (-70, 250) mm
        assertThat(line.distance()).isCloseTo(Math.hypot(0.670, 0.130), within(1e-12));
        assertThat(line.type(editor, "700 mm")).isEmpty();
        DimensionLine now = line(editor, "pivot", "tank pin");
        assertThat(now.distance()).isCloseTo(0.7, within(1e-4));
        Vec2 before = line.to().at().minus(line.from().at());
        Vec2 after = now.to().at().minus(now.from().at());
        assertThat(before.cross(after)).isCloseTo(0, within(1e-4));
        editor.undo();
        assertThat(editor.sheet().text()).isEqualTo(text());
        assertThat(line.type(editor, "700 bananas")).singleElement().asString().contains("bananas");
        assertThat(line.type(editor, "-1 mm")).isNotEmpty();
        assertThat(editor.sheet().text()).isEqualTo(text());
        assertThat(line(editor, "frame pin", MeasuredPoint.DATUM).type(editor, "500 mm"))
                .isEmpty();
        assertThat(line(editor, MeasuredPoint.DATUM, "frame pin").distance()).isCloseTo(0.5, within(1e-4));
    }

    @Test
    void aTapeReadingIsChangedWhereThereIsOne() throws IOException {
        String taped = text().replace(
                        "tank:\n",
                        "points:\n  axle: [0 mm, -390 mm]\n  hitch: [500 mm, -390 mm]\n"
                                + "  hook: {from: {axle: 220 mm, hitch: 281 mm}, side: above}\ntank:\n")
                .replace("frame-pin: [220 mm, -395 mm]", "frame-pin: hook");
        DesignEditor editor = editor(taped);
        assertThat(editor.sheet().problems()).isEmpty();
        DimensionLine line = line(editor, "axle", "frame pin");
        assertThat(line.distance()).isCloseTo(0.22, within(2e-3));
        assertThat(line.type(editor, "222 mm")).isEmpty();
        assertThat(editor.sheet().text()).isEqualTo(taped.replace("axle: 220 mm", "axle: 222 mm"));
    }
}
