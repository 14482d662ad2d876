// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A process that may have 1 GB of heap and no more refuses every hostile file; so does one whose whole size is looked at. */
class HostileMemoryTest {
    private static final long GIGABYTE_IN_KB = 1 << 20;

    /** Checks every design in a folder, then says how large the process has been, kB, where the system tells. */
    static final class Refuser {
        private Refuser() {}

        public static void main(String[] args) throws IOException {
            try (Stream<Path> all = Files.list(Path.of(args[0]))) {
                for (Path file : all.sorted().toList()) {
                    String name = file.getFileName().toString();
                    if (name.endsWith(".yaml")) {
                        Cli.Outcome outcome = Cli.run(name.startsWith("parts") ? "parts" : "check", file.toString());
                        boolean refused = outcome.code() == 2 && !outcome.err().contains("memory");
                        System.out.println(refused ? "refused" : name + ": " + outcome.code() + outcome.err());
                    }
                }
            }
            Path status = Path.of("/proc/self/status");
            if (Files.exists(status)) {
                for (String line : Files.readAllLines(status)) {
                    if (line.startsWith("VmHWM:")) {
                        System.out.println("peak " + line.replaceAll("\\D", ""));
                    }
                }
            }
        }
    }

    @Test
    @Timeout(300)
    void refusingTakesLessThanOneGigabyte(@TempDir Path folder) throws IOException, InterruptedException {
        int number = 0;
        for (byte[] text : HostileFiles.texts().values()) {
            Files.write(folder.resolve("design-" + number + ".yaml"), text);
            Files.write(folder.resolve("parts-" + number++ + ".yaml"), text);
        }
        int expected = 2 * number;
        String tub = Files.readString(Path.of("geometry/wash-tub.yaml"));
        for (Map.Entry<String, byte[]> e : HostileFiles.meshes().entrySet()) {
            Files.write(folder.resolve("tub-" + number + ".stl"), e.getValue());
            Files.writeString(
                    folder.resolve("mesh-" + number + ".yaml"),
                    tub.replaceAll("file: [^,}\\s]+", "file: tub-" + number++ + ".stl"));
            expected++;
        }
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx1g",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Refuser.class.getName(),
                        folder.toString())
                .redirectErrorStream(true)
                .start();
        String[] lines = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).split("\n");
        assertThat(process.waitFor()).as(String.join("\n", lines)).isZero();
        int refused = 0;
        for (String line : lines) {
            if (line.startsWith("peak ")) {
                assertThat(Long.parseLong(line.substring(5))).as("kB").isLessThan(GIGABYTE_IN_KB);
            } else {
                assertThat(line).isEqualTo("refused");
                refused++;
            }
        }
        assertThat(refused).isEqualTo(expected);
    }
}
