// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tipwright.Swap.swap;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Changing one value leaves every other character as it was. */
class TextEditTest {
    private static final String TEXT =
            """
            # from the yard's notebook, \ud83d\udccf measured twice
            tipwright: 1
            name: 'Silt: old'   # quoted
            pivot:
              at: [ 520 mm ,190 mm]  # x first
            tank: {openings: [{name: door, rim: circle}, {name: hatch}], attached:}
            tilt: {to: 45 deg}
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    pivot.at.x              | 535.5 mm     | '[ 520 mm ,'     | '[ 535.5 mm ,'
                    pivot.at[2]             | 7 1/2 in     | ',190 mm]'       | ',7 1/2 in]'
                    tilt.to                 | 60 deg       | 'to: 45 deg'     | 'to: 60 deg'
                    tank.openings[2].name   | side hatch   | 'name: hatch'    | 'name: side hatch'
                    tank.openings[1].name   | a, b         | 'name: door'     | 'name: "a, b"'
                    name                    | Sludge       | '''Silt: old'''  | 'Sludge'
                    name                    | a: "b" # c   | '''Silt: old'''  | '"a: \\"b\\" # c"'
                    pivot.at.y              | 3' 4-1/2"    | '190 mm'         | '3'' 4-1/2"'
                    """)
    void changesTheValueAlone(String path, String value, String before, String after) {
        assertThat(TEXT).containsOnlyOnce(before);
        assertThat(TextEdit.replace(TEXT, path, value)).isEqualTo(TEXT.replace(before, after));
    }

    @Test
    void fillsInAValueThatWasLeftEmpty() {
        assertThat(TextEdit.replace(TEXT, "tank.attached", "none"))
                .isEqualTo(swap(TEXT, "attached:}", "attached: none}"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"pivot", "pivot.at", "pivot.at.z", "nothing", "tank.openings[3].name", ""})
    void refusesAPathWithoutASingleValue(String path) {
        assertThatThrownBy(() -> TextEdit.replace(TEXT, path, "1"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no single value at '" + path + "'");
    }

    @Test
    void placesAreOffsetsIntoTheText() {
        Reading reading = DesignFile.shipped("silt-trailer.yaml");
        assertThat(reading).isInstanceOf(Reading.Good.class);
        Reading.Good good = (Reading.Good) reading;
        Map<String, String> written = Map.of(
                "drive.straight.frame-pin.x", "220 mm",
                "pivot.bearings[2].bearing", "yard-40",
                "tilt.to", "60 deg",
                "tank.openings[1].normal", "x");
        written.forEach((path, value) -> {
            Place place = good.places().find(path);
            assertThat(place).as(path).isNotNull();
            assertThat(good.text().substring(place.start(), place.end())).isEqualTo(value);
            int lineStart = good.text().lastIndexOf('\n', place.start()) + 1;
            assertThat(place.column()).isEqualTo(place.start() - lineStart + 1);
            assertThat(good.text().substring(0, place.start()).lines().count()).isEqualTo(place.line());
        });
    }
}
