// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.quantity.UnitSystem;

class TapeUnitTest {
    @ParameterizedTest
    @CsvSource({"silt-trailer, METRIC", "saw-skid, US", "wash-tub, METRIC"})
    void shippedDesignsAreShownAsTheyAreWritten(String name, UnitSystem system) {
        assertThat(DesignFile.shipped(name + ".yaml"))
                .isInstanceOfSatisfying(
                        Reading.Good.class, good -> assertThat(good.units()).isEqualTo(system));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {
                "[18 in; 8 in; 1 mm], US",
                "[18 in; 8 mm], METRIC",
                "[18 mm; 2 cm; 1 m; 3 ft], METRIC",
                "[3'; 2 ft 4 in; 12 3/8\"; 0.5 m; 1 cm], US",
                "['4\"'; \"3'\"; 4 mm], US",
                "[-18 in; .5 inch; 2 yd; 1e2 mm], US",
                "[2 min; 3 lbf; 4 gal; main; 12 kN m], METRIC",
            })
    void theMajorityOfTheLengthsDecides(String list, UnitSystem system) {
        String text = "lengths: " + list.replace(';', ',') + "\n";
        Problems problems = new Problems();
        SourceMap places = new SourceMap("x.yaml", YamlText.read("x.yaml", text, problems));
        assertThat(problems.inOrder()).isEmpty();
        assertThat(TapeUnit.system(text, places)).isEqualTo(system);
    }

    @Test
    void theDesignToStartFromIsInInches() throws Exception {
        String starter = Files.readString(Path.of("src/main/resources/tipwright/command/starter.yaml"));
        Reading reading = DesignFile.read("starter.yaml", starter, NamedFiles.shipped());
        assertThat(((Reading.Good) reading).units()).isEqualTo(UnitSystem.US);
    }
}
