// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The program as a process of its own. */
class MainTest {
    private static Cli.Outcome java(String... args) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        line.addAll(List.of(args));
        Process process = new ProcessBuilder(line)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Cli.Outcome(process.waitFor(), out, "");
    }

    @Test
    void theExitCodeIsThatOfTheCommand() throws IOException, InterruptedException {
        assertThat(java("check", "none.yaml").code()).isEqualTo(2);
        Cli.Outcome demo = java();
        assertThat(demo.code()).isZero();
        assertThat(demo.out()).isEqualTo(Cli.run().out());
    }

    /** What a record brings of its own to be compared by is set up by the first that asks, which takes a hundredth of a whole check. */
    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "twin-rams", "lime-barrel", "grit-hopper", "stage-tub", "wash-tub"})
    void noCheckAsksForARecordsOwnComparison(String design, @TempDir Path folder)
            throws IOException, InterruptedException {
        Path classes = folder.resolve("classes.txt");
        List<String> line = new ArrayList<>(Processes.program("check", design));
        line.add(1, "-Xlog:class+load:file=" + classes);
        assertThat(Processes.run(line, folder, Map.of(), null).code()).isZero();
        assertThat(Files.readString(classes))
                .contains("tipwright.check.Checker", "tipwright.report.ShortReport")
                .doesNotContain("java.lang.runtime.ObjectMethods");
    }
}
