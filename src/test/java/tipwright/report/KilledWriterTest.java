// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
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

    @Test
    @Timeout(120)
    void theOldFileSurvives() throws IOException, InterruptedException {
        Path file = folder.resolve("my-tank.yaml");
        Files.writeString(file, "old");
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        Process process = new ProcessBuilder(
                        java.toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        HalfWay.class.getName(),
                        file.toString())
                .redirectErrorStream(true)
                .start();
        try {
            assertThat(process.inputReader(StandardCharsets.UTF_8).readLine()).isEqualTo("half");
            assertThat(Files.list(folder).map(p -> p.getFileName().toString()).filter(n -> n.endsWith(".part")))
                    .hasSize(1);
        } finally {
            process.destroyForcibly().waitFor();
        }
        assertThat(file).hasContent("old");
        // What is left over of the killed one is in nobody's way.
        WholeFile.write(file, out -> out.write(List.of("new").get(0).getBytes(StandardCharsets.UTF_8)));
        assertThat(file).hasContent("new");
    }
}
