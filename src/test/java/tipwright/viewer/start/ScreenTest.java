// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A virtual display ends with what it was started for. */
@Timeout(120)
class ScreenTest {
    /** Opens one, says which, and waits to be ended. */
    static final class Waiting {
        private Waiting() {}

        public static void main(String[] args) throws IOException, InterruptedException {
            try (Screen screen = Screen.open(Map.of())) {
                System.out.println(screen.name());
                System.out.flush();
                TimeUnit.MINUTES.sleep(5);
            }
        }
    }

    @BeforeEach
    void needsXvfb() {
        assumeTrue(
                Arrays.stream(System.getenv("PATH").split(":")).anyMatch(p -> Files.isExecutable(Path.of(p, "Xvfb"))),
                "needs Xvfb; .ci/test installs it");
    }

    /** The server that a process has started. */
    private static ProcessHandle server(ProcessHandle starter) {
        return starter.descendants()
                .filter(p -> p.info().command().orElse("").endsWith("Xvfb"))
                .findFirst()
                .orElseThrow();
    }

    private static void ends(ProcessHandle server) throws InterruptedException {
        for (int i = 0; i < 300 && server.isAlive(); i++) {
            Thread.sleep(100);
        }
        assertThat(server.isAlive()).isFalse();
    }

    @Test
    void whenItIsClosedAndWhateverDisplayIsNamed() throws IOException, InterruptedException {
        ProcessHandle server;
        try (Screen screen = Screen.open(Map.of("DISPLAY", ":9797"))) {
            assertThat(screen.name()).isNotEqualTo(":9797");
            server = server(ProcessHandle.current());
            assertThat(server.isAlive()).isTrue();
        }
        ends(server);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void whenTheProcessIsEndedOrKilled(boolean killed) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Waiting.class.getName())
                .start();
        assertThat(process.inputReader(StandardCharsets.UTF_8).readLine()).startsWith(":");
        ProcessHandle server = server(process.toHandle());
        assertThat(server.isAlive()).isTrue();
        if (killed) {
            process.destroyForcibly();
        } else {
            process.destroy();
        }
        process.waitFor();
        ends(server);
    }
}
