// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No command writes over a file that it reads, however the file is spelled. */
class InputsKeptTest {
    @TempDir
    private Path folder;

    /** A design of each ending that some command writes, its mesh, its parts file, and other names for all of them. */
    @BeforeEach
    void designs() throws IOException {
        String tub = Files.readString(Path.of("geometry/wash-tub.yaml"));
        Files.createDirectories(folder.resolve("deep"));
        Files.writeString(folder.resolve("own.yaml"), "tipwright-parts: 1\n");
        for (String end : List.of("svg", "png", "pdf", "dxf", "html", "json")) {
            Path mesh = folder.resolve("mesh." + end);
            Files.copy(Path.of("geometry/wash-tub.stl"), mesh);
            Files.writeString(
                    folder.resolve("a." + end),
                    tub.replaceAll("file: [^,}\\s]+", "file: mesh." + end) + "\nparts: [own.yaml]\n");
            Files.createSymbolicLink(folder.resolve("soft." + end), Path.of("a." + end));
            Files.createLink(folder.resolve("hard." + end), mesh);
        }
        Files.createSymbolicLink(folder.resolve("way"), folder);
    }

    private Map<String, String> content() throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                all.put(folder.relativize(file).toString(), Arrays.hashCode(Files.readAllBytes(file)) + "");
            }
        }
        return all;
    }

    private void refused(String... line) throws IOException {
        Map<String, String> before = content();
        Cli.Outcome outcome = Cli.run(line);
        assertThat(outcome.code()).as(String.join(" ", line) + outcome.err()).isEqualTo(2);
        assertThat(outcome.err()).contains("not written", "which was read for this", "choose another name");
        assertThat(outcome.out()).doesNotContain("written");
        assertThat(content()).isEqualTo(before);
    }

    private List<String> spellings(String end) {
        return List.of(
                folder.resolve("a." + end).toString(),
                folder.resolve("deep/../a." + end).toString(),
                folder.resolve("way/./a." + end).toString(),
                folder.resolve("soft." + end).toString(),
                folder.resolve("mesh." + end).toString(),
                folder.resolve("hard." + end).toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "json: check --json --out",
                "json: check --csv --out",
                "pdf: check --out",
                "pdf: sheet --out",
                "svg: sheet --out",
                "dxf: sheet --out",
                "pdf: report --no-stills --out",
                "html: report --no-stills --out",
                "svg: tolerance --runs 1 --plot",
                "svg: place --candidates 1 --map",
                "png: place --candidates 1 --map",
                "pdf: compare silt-trailer DESIGN --out",
                "html: compare silt-trailer DESIGN --out"
            })
    void everyOptionThatWrites(String words) throws IOException {
        String end = words.substring(0, words.indexOf(':'));
        for (String target : spellings(end)) {
            String design = folder.resolve("a." + end).toString();
            List<String> line = new ArrayList<>(List.of(words.substring(words.indexOf(':') + 2)
                    .replace("DESIGN", design)
                    .split(" ")));
            line.add(target);
            if (!words.contains("DESIGN")) {
                line.add(design);
            }
            refused(line.toArray(new String[0]));
        }
    }

    @Test
    void partsFilesAndDesignsBehindLinks() throws IOException {
        String design = folder.resolve("soft.json").toString();
        refused("check", design, "--out", folder.resolve("own.yaml").toString());
        refused("check", design, "--out", folder.resolve("a.json").toString());
        refused(
                "compare",
                folder.resolve("a.json").toString(),
                folder.resolve("a.pdf").toString(),
                "--out",
                folder.resolve("mesh.pdf").toString());
    }

    /** The second of two maps has a name of its own making. */
    @Test
    void theMapThatIsNotNamed() throws IOException {
        Path design = folder.resolve("m-tank.svg");
        Files.copy(Path.of("geometry/silt-trailer.yaml"), design);
        refused(
                "place",
                design.toString(),
                "--candidates",
                "1",
                "--map",
                folder.resolve("m.svg").toString());
    }

    @Test
    void picturesInTheDesignsFolder() throws IOException {
        assumeTrue(Processes.has("Xvfb"), "needs Xvfb; .ci/test installs it");
        Path design = folder.resolve("tilt-60.0.png");
        Files.copy(Path.of("geometry/silt-trailer.yaml"), design);
        Map<String, String> before = content();
        assertThat(Cli.run("frames", design.toString(), "--size", "160x160", "--out", folder.toString())
                        .code())
                .isEqualTo(2);
        assertThat(content()).isEqualTo(before);
    }

    /** With --force a design may be written anew, but not its mesh over it. */
    @Test
    void aNewDesignAndItsMesh() throws IOException {
        refused("new", folder.resolve("wash-tub.stl").toString(), "--like", "wash-tub");
        assertThat(folder.resolve("wash-tub.stl")).doesNotExist();
    }

    @Test
    void anotherFileIsStillWrittenOver() throws IOException {
        Path other = Files.writeString(folder.resolve("other.json"), "old");
        Cli.Outcome outcome =
                Cli.run("check", folder.resolve("a.json").toString(), "--json", "--out", other.toString());
        assertThat(outcome.code()).as(outcome.err()).isZero();
        assertThat(other).content().startsWith("{");
    }
}
