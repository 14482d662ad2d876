// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A process that is killed while it saves leaves the old file as it was. */
class KilledWriterTest {
    @TempDir
    private Path folder;

    /** Writes half of a file, says so, and waits to be killed. */
    static final class HalfWay {
        private HalfWay() {}

        public static void main(String[] args) throws IOException {
            WholeFile.write(Path.of(args[0]), out -> {
                out.write("new, but only half".repeat(10_000).getBytes(StandardCharsets.UTF_8));
                out.flush();
                System.out.println("half");
                System.out.flush();
                try {
                    TimeUnit.MINUTES.sleep(5);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
            });
        }
    }

    /** Such a process, half way. */
    private Process halfWay(Path file) throws IOException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        Process process = new ProcessBuilder(
                        java.toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        HalfWay.class.getName(),
                        file.toString())
                .redirectErrorStream(true)
                .start();
        assertThat(process.inputReader(StandardCharsets.UTF_8).readLine()).isEqualTo("half");
        assertThat(parts()).hasSize(1);
        return process;
    }

    private List<Path> parts() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".part")).toList();
        }
    }

    private static void age(Path file) throws IOException {
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().minusSeconds(3600)));
    }

    @Test
    @Timeout(120)
    void theOldFileSurvivesAndLeftoversGoTheNextTime() throws IOException, InterruptedException {
        Path file = folder.resolve("my-tank.yaml");
        Files.writeString(file, "old");
        Process process = halfWay(file);
        try {
            // Old or not: while its process lives it is not touched.
            age(parts().get(0));
            WholeFile.write(file, out -> out.write('n'));
            assertThat(parts()).hasSize(1);
        } finally {
            process.destroyForcibly().waitFor();
        }
        assertThat(file).hasContent("n");
        assertThat(parts()).hasSize(1);
        Path other = Files.writeString(folder.resolve(".other.yaml.1-0.part"), "");
        age(other);
        WholeFile.write(file, out -> out.write("new".getBytes(StandardCharsets.UTF_8)));
        assertThat(file).hasContent("new");
        assertThat(parts()).containsExactly(other);
    }

    @Test
    @Timeout(120)
    void oneThatIsEndedLeavesNothing() throws IOException, InterruptedException {
        Path file = folder.resolve("my-tank.yaml");
        Files.writeString(file, "old");
        Process process = halfWay(file);
        process.destroy();
        process.waitFor();
        assertThat(file).hasContent("old");
        assertThat(parts()).isEmpty();
    }
}
