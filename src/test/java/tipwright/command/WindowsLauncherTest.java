// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What of the launcher for Windows can be checked without Windows. */
class WindowsLauncherTest {
    private static final Path DIST = Path.of("src/main/dist");

    private static String text() throws IOException {
        return Files.readString(DIST.resolve("tipwright.cmd"), StandardCharsets.US_ASCII);
    }

    private static List<String> lines() throws IOException {
        return text().lines().toList();
    }

    @Test
    void everyLineEndsAsOnWindows() throws IOException {
        assertThat(text().replace("\r\n", "")).doesNotContain("\r", "\n");
        assertThat(text()).endsWith("\r\n");
        assertThat(Files.readString(Path.of(".gitattributes"))).contains("*.cmd -text");
    }

    @Test
    void everyPathIsQuoted() throws IOException {
        Pattern path = Pattern.compile("%~dp0|%~dpJ|%TIPWRIGHT_(JAVA|WORDS)%|%JAVA_HOME%|%TEMP%|%~1");
        for (String line : lines()) {
            Matcher found = path.matcher(line.replace("%%", "%"));
            while (found.find()) {
                long before = line.replace("%%", "%")
                        .substring(0, found.start())
                        .chars()
                        .filter(c -> c == '"')
                        .count();
                assertThat(before % 2).as(line).isEqualTo(1);
            }
            assertThat(line.chars().filter(c -> c == '"').count() % 2).as(line).isZero();
            // a bracket in a path would end a block
            assertThat(line).doesNotMatch(".*\\( *");
        }
    }

    @Test
    void everyJumpHasItsPlaceAndEveryEndItsCode() throws IOException {
        Set<String> asked = new TreeSet<>();
        Set<String> there = new TreeSet<>();
        for (String line : lines()) {
            Matcher jump = Pattern.compile("goto (\\w+)$").matcher(line);
            if (jump.find()) {
                asked.add(jump.group(1));
            }
            if (line.startsWith(":")) {
                there.add(line.substring(1));
            }
        }
        assertThat(there)
                .isEqualTo(new TreeSet<>(List.of("ask", "compare", "home", "missing", "old", "start", "version")));
        assertThat(asked).isSubsetOf(there);
        assertThat(lines()).contains("exit /b %ERRORLEVEL%").endsWith("exit /b 3");
    }

    @Test
    void itStartsTheSameAsTheOther() throws IOException {
        String sh = Files.readString(DIST.resolve("tipwright"));
        String start =
                "-XX:+IgnoreUnrecognizedVMOptions -XX:+UseSerialGC %TIPWRIGHT_COMPILER% -XX:-UsePerfData -Dtipwright.annotations=true"
                        + " -jar \"%~dp0..\\tipwright.jar\" %*";
        assertThat(lines()).contains("\"%TIPWRIGHT_JAVA%\" " + start);
        for (String both : List.of(
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Dtipwright.annotations=true",
                "-XX:TieredStopAtLevel=1",
                "-XX:+TieredCompilation",
                "-XX:Tier3BackEdgeThreshold=10000 -Dsun.reflect.inflationThreshold=100000",
                "-XX:-UseDynamicNumberOfCompilerThreads",
                "-Xms40m -Xmn24m -XX:SurvivorRatio=4",
                "-XX:+IgnoreUnrecognizedVMOptions",
                "too old; install Java 17 or later, or set JAVA_HOME to its folder",
                "install Java 17 or later, or set JAVA_HOME to its folder")) {
            assertThat(sh).contains(both);
            assertThat(text()).contains(both);
        }
    }
}
