// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.ShippedChecks;
import tipwright.check.rule.Verdict;

/** Every design and part that is shipped is read without a problem, and passes or fails as it says. */
class ShippedDesignsTest {
    private static final Path FOLDER = Path.of("geometry");

    @ParameterizedTest
    @MethodSource("designs")
    void isReadWithoutAProblemOrWarning(Path file) {
        Reading reading = DesignFile.read(file);
        assertThat(reading).isInstanceOf(Reading.Good.class);
        assertThat(((Reading.Good) reading).warnings()).isEmpty();
        Reading shipped = DesignFile.shipped(String.valueOf(file.getFileName()));
        assertThat(shipped).isInstanceOf(Reading.Good.class);
        assertThat(((Reading.Good) shipped).text()).isEqualTo(((Reading.Good) reading).text());
    }

    @ParameterizedTest
    @MethodSource("designs")
    void passesUnlessItFailsOnPurpose(Path file) throws Exception {
        Verdict verdict = ShippedChecks.of(String.valueOf(file.getFileName())).verdict();
        boolean onPurpose = file.endsWith("too-small.yaml");
        assertThat(verdict == Verdict.FAIL).as(String.valueOf(verdict)).isEqualTo(onPurpose);
    }

    @ParameterizedTest
    @MethodSource("designs")
    void namesTheSchemaForTheEditor(Path file) throws IOException {
        String text = Files.readString(file);
        assertThat(text).startsWith("# yaml-language-server: $schema=tipwright.schema.json\n");
        assertThat(file.resolveSibling("tipwright.schema.json")).exists();
    }

    static List<Path> designs() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    @Test
    void thereAreFiveDesignsAtLeast() throws IOException {
        assertThat(designs()).hasSizeGreaterThanOrEqualTo(6);
    }

    @Test
    void everyPartIsReadWithoutAProblem() {
        PartsFile.Contents parts = PartsFile.shipped();
        assertThat(parts.problems()).isEmpty();
        assertThat(parts.parts()).extracting(PartsFile.Part::section).containsOnly("actuators", "bearings");
        assertThat(parts.parts()).extracting(PartsFile.Part::name).contains("yard-40", "mid-12", "ram-63", "bronze-40");
        assertThat(parts.parts())
                .filteredOn(p -> p.name().equals("hoist-60"))
                .singleElement()
                .extracting(PartsFile.Part::note)
                .isEqualTo("its load brings it back, it cannot pull");
    }
}
