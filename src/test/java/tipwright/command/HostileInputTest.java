// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever a file holds, a command ends with its exit code and a sentence. The time-outs guard against hanging only; how much is read
 * and built is bounded in the readers, and tested there.
 */
@Timeout(120)
class HostileInputTest {
    @TempDir
    private Path folder;

    private static void refused(Cli.Outcome outcome) {
        assertThat(outcome.code()).as(outcome.out() + outcome.err()).isEqualTo(2);
        assertThat(outcome.err())
                .isNotBlank()
                .doesNotContain("Exception", "\tat ", "a fault of the program", "ran out of memory");
        assertThat(outcome.err().length()).isLessThan(100_000);
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "time", "place"})
    void designs(String command) throws IOException {
        for (Map.Entry<String, byte[]> e : HostileFiles.texts().entrySet()) {
            Path file = Files.write(folder.resolve("design.yaml"), e.getValue());
            refused(Cli.run(command, file.toString()));
        }
    }

    @Test
    void partsFiles() throws IOException {
        for (Map.Entry<String, byte[]> e : HostileFiles.texts().entrySet()) {
            Path file = Files.write(folder.resolve("parts.yaml"), e.getValue());
            refused(Cli.run("parts", file.toString()));
        }
    }

    @Test
    void meshes() throws IOException {
        String design = Files.readString(Path.of("geometry/wash-tub.yaml"));
        for (Map.Entry<String, byte[]> e : HostileFiles.meshes().entrySet()) {
            Files.write(folder.resolve("tub.stl"), e.getValue());
            Path file = Files.writeString(
                    folder.resolve("design.yaml"), design.replaceAll("file: [^,}\\s]+", "file: tub.stl"));
            refused(Cli.run("check", file.toString()));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "diameter: 760 mm, 0 mm", "diameter: 760 mm, -760 mm", "diameter: 760 mm, NaN mm", "diameter: 760 mm, .nan",
        "diameter: 760 mm, .inf", "diameter: 760 mm, 1e999 mm", "diameter: 760 mm, Infinity mm",
                "diameter: 760 mm, -0 mm",
        "diameter: 760 mm, 1e-320 mm", "diameter: 760 mm, 1e300 mm",
    })
    void figuresThatCannotBe(String key, String figure) throws IOException {
        String design = Files.readString(Path.of("geometry/silt-trailer.yaml"));
        String name = key.substring(0, key.indexOf(':'));
        String spoilt = design.replaceFirst(name + ": [0-9]+ mm", name + ": " + figure);
        assertThat(spoilt).isNotEqualTo(design);
        refused(Cli.run(
                "check", Files.writeString(folder.resolve("d.yaml"), spoilt).toString()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../secret.stl",
                "/etc/passwd",
                "a/../../secret.stl",
                "~/secret.stl",
                "C:\\secret.stl",
                "file:///etc/passwd",
                "/dev/zero",
                "/proc/self/environ",
                "a\\..\\..\\secret.stl",
                "",
                ".",
                "a/b/../../../secret.stl",
                "//x/y",
            })
    void namesThatLeadOut(String name) throws IOException {
        Path inner = Files.createDirectories(folder.resolve("inner/a/b"));
        Files.copy(Path.of("geometry/wash-tub.stl"), folder.resolve("secret.stl"));
        String design = Files.readString(Path.of("geometry/wash-tub.yaml"));
        String told = design.replaceAll("file: [^,}\\s]+", "file: '" + name.replace("\\", "\\\\") + "'");
        Path file = Files.writeString(inner.getParent().getParent().resolve("d.yaml"), told);
        refused(Cli.run("check", file.toString()));
    }

    /** A file that another program writes while it is read is either read or refused. */
    @Test
    void aFileThatChangesWhileItIsRead() throws Exception {
        String whole = Files.readString(Path.of("geometry/silt-trailer.yaml"));
        Path file = Files.writeString(folder.resolve("d.yaml"), whole);
        AtomicBoolean done = new AtomicBoolean();
        Thread writer = new Thread(() -> {
            for (int i = 0; !done.get(); i++) {
                try {
                    Files.writeString(file, i % 3 == 0 ? whole : whole.substring(0, (i * 131) % whole.length()));
                } catch (IOException e) {
                    throw new java.io.UncheckedIOException(e);
                }
            }
        });
        writer.start();
        try {
            for (int i = 0; i < 40; i++) {
                Cli.Outcome outcome = Cli.run("check", "--csv", file.toString());
                assertThat(List.of(0, 1, 2, 3)).contains(outcome.code());
                assertThat(outcome.err()).doesNotContain("Exception", "a fault of the program");
            }
        } finally {
            done.set(true);
            writer.join();
        }
    }
}
