// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A full disk, a display that is gone, and a locale without letters. The time-outs guard against hanging only. */
@Timeout(120)
class SurroundingsTest {
    private static final Path FULL = Path.of("/dev/full");

    @TempDir
    private Path folder;

    /** An output that is full from the start. */
    private static final class Full extends Writer {
        @Override
        public void write(char[] chars, int from, int count) throws IOException {
            throw new IOException("No space left on device");
        }

        @Override
        public void flush() {
            // Nothing got this far.
        }

        @Override
        public void close() {
            // Nothing to close.
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "check",
                "check --json",
                "check --csv",
                "time",
                "time --json",
                "new",
                "units",
                "explain",
                "actuators",
                "compare silt-trailer too-small",
                "tolerance --runs 1",
                "place --candidates 1000",
                "parts",
                "validate",
                "help",
                "check --help",
                "--version"
            })
    void aFullDiskIsNoticedByEveryCommand(String words) {
        String[] args = words.isEmpty() ? new String[0] : words.split(" ");
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(false, Map.of());
        int code = CommandRun.run(args, new PrintWriter(new Full()), new PrintWriter(err), terminal, Headstart.NONE);
        assertThat(code).isEqualTo(3);
        assertThat(err.toString()).contains("could not be written whole").doesNotContain("\tat ");
    }

    @Test
    void aFullDiskIsNoticedByTheProcess() throws IOException, InterruptedException {
        assumeTrue(Files.exists(FULL), "needs /dev/full");
        Cli.Outcome outcome = Processes.run(Processes.program("time", "--json"), folder, Map.of(), FULL);
        assertThat(outcome.code()).as(outcome.err()).isEqualTo(3);
        assertThat(outcome.err()).contains("could not be written whole");
    }

    @ParameterizedTest
    @ValueSource(strings = {"report rail-pusher --no-stills --out r.pdf", "place --candidates 1000 --map m.png"})
    void aDisplayThatIsGoneIsNotAskedFor(String words) throws IOException, InterruptedException {
        Map<String, String> gone = Map.of("DISPLAY", ":9797");
        Cli.Outcome outcome = Processes.run(Processes.program(words.split(" ")), folder, gone, null);
        assertThat(outcome.code()).as(outcome.err()).isZero();
        assertThat(outcome.err()).isEmpty();
    }

    @Test
    void picturesDoNotAskForItEither() throws IOException, InterruptedException {
        assumeTrue(Processes.has("Xvfb"), "needs Xvfb; .ci/test installs it");
        Map<String, String> gone = Map.of("DISPLAY", ":9797");
        List<String> line = Processes.program("frames", "--out", "pictures", "--size", "160x160", "--at", "0deg");
        assertThat(Processes.run(line, folder, gone, null).code()).isZero();
        assertThat(folder.resolve("pictures/tilt-00.0.png")).exists();
    }

    @Test
    void theWindowSaysThatTheDisplayIsGone() throws IOException, InterruptedException {
        Map<String, String> gone = Map.of("DISPLAY", ":9797");
        Cli.Outcome outcome = Processes.run(Processes.program("view"), folder, gone, null);
        assertThat(outcome.code()).isEqualTo(3);
        assertThat(outcome.err())
                .contains("no window can be opened on the display ':9797'", "it does not answer", "tipwright frames")
                .doesNotContain("\tat ", "Exception");
    }

    /** The launcher as it ships, beside a jar that only points at the classes under test. */
    private List<String> launcher(String... args) throws IOException {
        Path app = Files.createDirectories(folder.resolve("app/bin")).getParent();
        Path bin = app.resolve("bin/tipwright");
        Files.copy(Path.of("src/main/dist/tipwright"), bin);
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.put(Attributes.Name.MAIN_CLASS, Main.class.getName());
        List<String> parts = new ArrayList<>();
        for (String part : System.getProperty("java.class.path").split(java.io.File.pathSeparator)) {
            parts.add(Path.of(part).toUri().toString());
        }
        main.put(Attributes.Name.CLASS_PATH, String.join(" ", parts));
        try (OutputStream out = Files.newOutputStream(app.resolve("tipwright.jar"))) {
            new JarOutputStream(out, manifest).close();
        }
        List<String> line = new ArrayList<>(List.of("sh", bin.toString()));
        line.addAll(List.of(args));
        return line;
    }

    private static void assumeUnicodeNames() {
        String names = System.getProperty("sun.jnu.encoding", "UTF-8");
        assumeTrue(Charset.forName(names).equals(StandardCharsets.UTF_8), "this test cannot name the file itself");
    }

    @ParameterizedTest
    @ValueSource(strings = {"C", "xx_XX.UTF-8"})
    void theLauncherKeepsLettersOfNames(String locale) throws IOException, InterruptedException {
        assumeTrue(Processes.has("locale"), "needs the command locale");
        assumeUnicodeNames();
        Path home = Files.createDirectory(folder.resolve("B\u00fcrgerstra\u00dfe"));
        Files.copy(Path.of("geometry/silt-trailer.yaml"), home.resolve("m\u00fclltank.yaml"));
        Map<String, String> environment = Map.of("LC_ALL", locale);
        List<String> line = launcher("check", "m\u00fclltank.yaml", "--json", "--out", "\u0e96.json");
        Cli.Outcome outcome = Processes.run(line, home, environment, null);
        assertThat(outcome.code()).as(outcome.err()).isZero();
        assertThat(home.resolve("\u0e96.json")).exists();
    }

    @Test
    void withoutTheLauncherASentenceTellsWhatToSet() throws IOException, InterruptedException {
        assumeUnicodeNames();
        Map<String, String> bare = Map.of("LC_ALL", "C", "LC_CTYPE", "", "LANG", "");
        for (String command : List.of("view", "new")) {
            Cli.Outcome outcome = Processes.run(Processes.program(command, "m\u00fclltank.yaml"), folder, bare, null);
            assertThat(outcome.code()).isEqualTo(2);
            assertThat(outcome.err())
                    .contains("Java cannot read the name", "set LC_ALL=C.UTF-8")
                    .doesNotContain("Exception");
        }
        Path home = Files.createDirectory(folder.resolve("B\u00fcrgerstra\u00dfe"));
        Cli.Outcome outcome = Processes.run(Processes.program("check"), home, bare, null);
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).contains("the name of this folder").doesNotContain("Exception");
    }
}
