// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the README shows is what the program prints. */
class ReadmeSampleTest {
    @Test
    void theSampleIsWhatIsPrinted() throws IOException {
        List<String> readme = Files.readAllLines(Path.of("README.md"));
        int from = 0;
        while (!readme.get(from).startsWith("    ! VERDICT")) {
            from++;
        }
        int to = from;
        while (readme.get(to).isEmpty() || readme.get(to).startsWith("    ")) {
            to++;
        }
        String shown = String.join("\n", readme.subList(from, to))
                .replaceAll("(?m)^ {4}", "")
                .strip();
        assertThat(shown).contains("Time  ", "What fails or is close");
        assertThat(Cli.run("check").out()).contains(shown);
    }
}
