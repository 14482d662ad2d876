// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing in a name or a file is obeyed by a terminal. */
class TerminalWriterTest {
    private static final String EVIL = "a\u001b]0;x\u0007b\u001b[2J\rc\u009bd\u202ee\u007ff\u2028g";

    private static String shown(String text, boolean colour) throws IOException {
        StringWriter out = new StringWriter();
        try (TerminalWriter writer = new TerminalWriter(out, colour)) {
            writer.write(text);
        }
        return out.toString();
    }

    @Test
    void whatATerminalObeysIsWrittenOut() throws IOException {
        for (boolean colour : new boolean[] {true, false}) {
            assertThat(shown(EVIL, colour))
                    .isEqualTo("a\\u001b]0;x\\u0007b\\u001b[2J\\u000dc\\u009bd\\u202ee\\u007ff\\u2028g");
        }
        assertThat(shown("\ud800 \udc00\ud83d\ude00", false)).isEqualTo("\\ud800 \\udc00\ud83d\ude00");
    }

    @Test
    void linesTabsAndOrdinaryLettersStay() throws IOException {
        String text = "one\ttwo\r\nB\u00fcrger \u0e01 \ud83d\ude9c\n";
        assertThat(shown(text, false)).isEqualTo(text);
    }

    @Test
    void onlyTheProgramsOwnColoursGoThroughAndOnlyWhenAskedFor() throws IOException {
        String own = "\u001b[1mHead\u001b[0m \u001b[1;31mfail\u001b[0m \u001b[33mx\u001b[39m\u001b[21m";
        assertThat(shown(own, true)).isEqualTo(own);
        assertThat(shown(own, false)).doesNotContain("\u001b").contains("\\u001b[1;31mfail");
        assertThat(shown("\u001b[8mhidden\u001b[38;5;1m", true)).isEqualTo("\\u001b[8mhidden\\u001b[38;5;1m");
    }

    @Test
    void piecesAreReadAsOne() throws IOException {
        StringWriter out = new StringWriter();
        try (TerminalWriter writer = new TerminalWriter(out, true)) {
            for (char c : "\ud83d\ude9c\r\n\u001b[1;31mx\u001b[0m\u001b[2J".toCharArray()) {
                writer.write(c);
            }
        }
        assertThat(out).hasToString("\ud83d\ude9c\r\n\u001b[1;31mx\u001b[0m\\u001b[2J");
    }

    @TempDir
    private Path folder;

    @Test
    void namesInErrorsAndAnswers() throws IOException {
        Path file = folder.resolve("evil\u001b[2J\u0007\r.yaml");
        Files.writeString(file, "tipwright: 1\n\"k\\e[2J\": 1\n");
        Path good = folder.resolve("good\u001b[2J.yaml");
        Files.writeString(
                good,
                Files.readString(Path.of("geometry/silt-trailer.yaml"))
                        .replaceFirst("name: .*", "name: \"x\\\\e[2J\""));
        Terminal person = new Terminal(true, Map.of());
        for (Cli.Outcome outcome : new Cli.Outcome[] {
            Cli.run(person, "check", file.toString()),
            Cli.run(person, "view", file + "x"),
            Cli.run(
                    person,
                    "check",
                    good.toString(),
                    "--out",
                    folder.resolve("o\u001b[2J").toString()),
            Cli.run(person, "time", good.toString()),
            Cli.run(person, "compare", good.toString(), "silt-trailer"),
            Cli.run(
                    person,
                    "sheet",
                    good.toString(),
                    "--out",
                    folder.resolve("o\u001b[2J.svg").toString()),
            Cli.run(person, "explain", "\u001b[2J"),
            Cli.run(person, "check", "--\u001b[2J"),
        }) {
            assertThat(outcome.out() + outcome.err()).isNotEmpty().doesNotContain("\u001b[2J", "\u0007", "\r");
        }
    }
}
