// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Files for a while are gone afterwards, however the process ends. */
@Timeout(120)
class ScratchTest {
    @TempDir
    private Path temporary;

    /** Opens one, puts something in it, says so, and waits to be ended. */
    static final class Waiting {
        private Waiting() {}

        public static void main(String[] args) throws IOException, InterruptedException {
            try (Scratch scratch = Scratch.open()) {
                Files.writeString(scratch.folder("stills").resolve("a.png"), "a");
                System.out.println("there");
                System.out.flush();
                TimeUnit.MINUTES.sleep(5);
            }
        }
    }

    private Process waiting() throws IOException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        Process process = new ProcessBuilder(
                        java.toString(),
                        "-Djava.io.tmpdir=" + temporary,
                        "-cp",
                        System.getProperty("java.class.path"),
                        Waiting.class.getName())
                .redirectErrorStream(true)
                .start();
        assertThat(process.inputReader(StandardCharsets.UTF_8).readLine()).isEqualTo("there");
        return process;
    }

    private List<Path> left() throws IOException {
        try (Stream<Path> files = Files.list(temporary)) {
            return files.toList();
        }
    }

    @Test
    void goesWhenItIsClosed() throws IOException {
        try (Scratch scratch = Scratch.open(temporary)) {
            Files.writeString(scratch.folder("deep").resolve("a"), "a");
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(left().get(0))))
                    .isEqualTo("rwx------");
            try (Scratch second = Scratch.open(temporary)) {
                assertThat(second.file("a")).isNotEqualTo(scratch.file("a"));
            }
            assertThat(left()).hasSize(1);
        }
        assertThat(left()).isEmpty();
    }

    @Test
    void goesWhenTheProcessIsEnded() throws IOException, InterruptedException {
        Process process = waiting();
        assertThat(left()).hasSize(1);
        process.destroy();
        process.waitFor();
        assertThat(left()).isEmpty();
    }

    @Test
    void goesTheNextTimeWhenTheProcessWasKilled() throws IOException, InterruptedException {
        Process process = waiting();
        Path folder = left().get(0);
        Path stranger = Files.createDirectory(temporary.resolve("tipwright-of-mine"));
        try {
            Files.setLastModifiedTime(folder, FileTime.from(Instant.now().minusSeconds(3600)));
            Files.setLastModifiedTime(stranger, FileTime.from(Instant.now().minusSeconds(3600)));
            Scratch.open(temporary).close();
            assertThat(folder.resolve("stills/a.png")).as("its process lives").exists();
        } finally {
            process.destroyForcibly().waitFor();
        }
        Scratch.open(temporary).close();
        assertThat(left()).containsExactly(stranger);
    }
}
