// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.design.Design;

/** A design that is turned twice is the same again, and turned once has its places on the other side. */
class MirrorFileTest {
    static List<Path> designs() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("geometry"))) {
            return files.filter(f -> f.toString().endsWith(".yaml"))
                    .filter(f -> !f.toString().contains("wash-tub"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("designs")
    void turnedTwiceIsTheSameAgain(Path file) throws Exception {
        String text = Files.readString(file);
        String once = Mirror.turned("a.yaml", text);
        assertThat(once).isNotEqualTo(text);
        assertThat(once.lines().count()).isEqualTo(text.lines().count());
        String twice = Mirror.turned("a.yaml", once);
        assertThat(design(twice)).isEqualTo(design(text));
        assertThat(twice.replace("+", "")).isEqualTo(text.replace("+", ""));
    }

    private static Design design(String text) {
        Reading reading = DesignFile.read("a.yaml", text, NamedFiles.shipped());
        assertThat(reading).isInstanceOf(Reading.Good.class);
        return ((Reading.Good) reading).design();
    }

    @Test
    void everyPlaceIsOnTheOtherSide() throws Exception {
        String text = Files.readString(Path.of("geometry/silt-trailer.yaml"));
        Node one = YamlText.read("", text, new Problems());
        Design drawn = design(text);
        String turned = Mirror.turned("a.yaml", text);
        assertThat(one).isNotNull();
        assertThat(turned)
                .contains("at: [-600 mm, 380 mm]")
                .contains("frame-pin: [-220 mm, -395 mm]    # in a bracket")
                .contains("tank-pin: [70 mm, 250 mm] ")
                .contains("axis: -x")
                .contains("normal: -x")
                .contains("centre: [0 mm, 640 mm, 0 mm]")
                .contains("positions: [[68 mm, -18 mm], [-68 mm, -18 mm], [68 mm, 18 mm], [-68 mm, 18 mm]]")
                .contains("{z: -450 mm, bearing: yard-40}");
        assertThat(drawn.pivot().at().x()).isEqualTo(0.6);
    }

    @Test
    void aMeshIsNotTurned() throws IOException {
        String text = Files.readString(Path.of("geometry/wash-tub.yaml"));
        assertThatThrownBy(() -> Mirror.turned("a.yaml", text)).hasMessageContaining("mesh");
    }
}
