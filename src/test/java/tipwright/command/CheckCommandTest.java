// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The command that answers the question. */
class CheckCommandTest {
    @TempDir
    private Path folder;

    /** The starter with a text replaced, as a file. */
    private Path changed(String from, String to) throws IOException {
        String text = Cli.run("new").out();
        assertThat(text).contains(from);
        return Files.writeString(folder.resolve("mine.yaml"), text.replace(from, to));
    }

    @Test
    void withoutAnArgumentItChecksTheDemo() {
        Cli.Outcome outcome = Cli.run("check");
        assertThat(outcome.code()).isZero();
        assertThat(outcome.out())
                .startsWith("Silt trailer\n")
                .contains(" VERDICT: ")
                .doesNotContain("FAIL");
        assertThat(outcome.err()).isEmpty();
    }

    /** A line with nothing but a design is run without the parser of options; '--' only ends the options. */
    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "no-such-tank", "", "a\tb", "mine.yaml"})
    void aDesignAloneIsCheckedAsWithTheParser(String name) throws IOException {
        changed("fill: 80", "fil: 80");
        String design = name.endsWith(".yaml") ? folder.resolve(name).toString() : name;
        Cli.Outcome plain = Cli.run("check", design);
        assertThat(plain).isEqualTo(Cli.run("check", "--", design));
        assertThat(plain.code()).isEqualTo(name.equals("silt-trailer") ? 0 : 2);
    }

    @Test
    void aFileIsChecked() throws IOException {
        Cli.Outcome outcome =
                Cli.run("check", changed("name: My tank", "name: Their tank").toString());
        assertThat(outcome.out()).startsWith("Their tank\n").contains("+ VERDICT: PASS");
        assertThat(outcome.code()).isZero();
    }

    @Test
    void aFailingCheckExitsWithOne() throws IOException {
        Path file = changed(
                "actuator: light-6",
                "actuator: {kind: electric, closed: 430 mm, stroke: 400 mm, push: 2 kN, pull: 2 kN}");
        Cli.Outcome outcome = Cli.run("check", file.toString());
        assertThat(outcome.code()).isEqualTo(1);
        assertThat(outcome.out()).contains("X VERDICT: FAILS").containsPattern("(?m)^ X FAILS  ");
        Cli.Outcome full = Cli.run("check", file.toString(), "--full");
        assertThat(full.code()).isEqualTo(1);
        assertThat(full.out()).contains("X VERDICT: FAILS").contains("X FAILS   [##########>");
    }

    @Test
    void allErrorsOfAFileAreShownWithTheirPlacesAndItExitsWithTwo() throws IOException {
        Path file = changed("fill: 80 %", "fill: 180 %");
        Files.writeString(file, swap(Files.readString(file), "diameter: 24 in", "diametre: 24 in"));
        Cli.Outcome outcome = Cli.run("check", file.toString());
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err())
                .contains(place(file, "diametre"), place(file, "180 %"))
                .containsPattern("\n\\d errors; nothing was computed\n$");
    }

    /** 'file:line:column:' of a text in a file. */
    private static String place(Path file, String text) throws IOException {
        String before = Files.readString(file);
        before = before.substring(0, before.indexOf(text));
        int line = before.length() - swap(before, "\n", "").length() + 1;
        return file + ":" + line + ":" + (before.length() - before.lastIndexOf('\n')) + ": ";
    }

    @Test
    void aMechanismThatCannotStartExitsWithThree() throws IOException {
        Path file = changed("frame-pin: [0 in, -10 in]", "frame-pin: [-17 in, 8 in]");
        Cli.Outcome outcome = Cli.run("check", file.toString());
        assertThat(outcome.code()).as(outcome.out() + outcome.err()).isEqualTo(3);
        assertThat(outcome.err()).startsWith(file + ": My tank: ");
        assertThat(outcome.out()).isEmpty();
    }

    @Test
    void aShippedDesignIsFoundByItsNameAndThatIsSaid() {
        Cli.Outcome outcome = Cli.run("check", "silt-trailer");
        assertThat(outcome.code()).isZero();
        assertThat(outcome.err()).contains("no file 'silt-trailer' in this folder; this is the example of that name");
    }

    @Test
    void aMissingFileIsAnErrorWithTheNearestShippedName() {
        Cli.Outcome outcome = Cli.run("check", "silt-trailor.yaml");
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).contains("there is no such file; did you mean the example 'silt-trailer'?");
        assertThat(Cli.run("check", "no/such.yaml").err()).contains("there is no such file", "silt-trailer");
        assertThat(Cli.run("check", "a\0b").code()).isEqualTo(2);
        assertThat(Cli.run("check", folder.toString()).code()).isEqualTo(2);
    }

    @Test
    void jsonAndCsvAreWhole() throws IOException {
        Cli.Outcome json = Cli.run("check", "--json");
        assertThat(new ObjectMapper().readTree(json.out()).get("verdict").asText())
                .isIn("pass", "close");
        Cli.Outcome csv = Cli.run("check", "--csv");
        assertThat(csv.out()).startsWith("case,tilt_deg,").endsWith("\r\n");
        assertThat(json.code() + csv.code()).isZero();
    }

    @Test
    void aResultGoesToAFile() throws IOException {
        Path file = folder.resolve("out.json");
        String design = changed("My tank", "Their tank").toString();
        Cli.Outcome outcome = Cli.run("check", design, "--json", "--out", file.toString());
        assertThat(outcome.code()).isZero();
        assertThat(outcome.out()).matches("PASSES SO FAR, \\d+ checks cannot tell: written to \\Q" + file + "\\E\n");
        assertThat(file).hasContent(Cli.run("check", design, "--json").out());
        try (Stream<Path> list = Files.list(folder)) {
            assertThat(list).containsExactlyInAnyOrder(file, folder.resolve("mine.yaml"));
        }
    }

    @Test
    void aFileThatCannotBeWrittenExitsWithThreeAndASentence() {
        Cli.Outcome outcome = Cli.run("check", "--out", folder.toString());
        assertThat(outcome.code()).isEqualTo(3);
        assertThat(outcome.err()).isEqualTo("tipwright: " + folder + ": is a folder; give the name of a file in it\n");
    }

    @Test
    void unitsAreChosen() {
        assertThat(Cli.run("check", "--units", "us").out()).contains(" lbf").doesNotContain(" kN ");
        assertThat(Cli.run("check", "--units", "METRIC").out()).contains(" kN");
    }

    /** Two texts of the answer, then the line. */
    static Stream<List<String>> badLines() {
        return Stream.of(
                List.of("Unknown option: '--jsn'", "--json", "check", "--jsn"),
                List.of("mutually exclusive", "--json", "check", "--json", "--csv"),
                List.of("'furlong'", "US", "check", "--units", "furlong"),
                List.of("'two.yaml'", "two.yaml", "check", "one.yaml", "two.yaml"),
                List.of("'chek'", "Did you mean: tipwright check", "chek"),
                List.of("--out", "FILE", "check", "--out"));
    }

    @ParameterizedTest
    @MethodSource("badLines")
    void aCommandLineThatIsNotUnderstoodExitsWithTwo(List<String> line) {
        Cli.Outcome outcome = Cli.run(line.subList(2, line.size()).toArray(new String[0]));
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).contains(line.get(0), line.get(1)).doesNotContain("\tat ");
        assertThat(outcome.out()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "true, , xterm, true",
        "true, '', xterm, true",
        "true, 1, xterm, false",
        "true, , dumb, false",
        "false, , xterm, false",
    })
    void colourIsForPeopleWhoWantIt(boolean interactive, String noColor, String term, boolean colour) {
        Map<String, String> environment = new HashMap<>();
        environment.put("TERM", term);
        if (noColor != null) {
            environment.put("NO_COLOR", noColor);
        }
        Cli.Outcome outcome = Cli.run(new Terminal(interactive, environment), "check");
        assertThat(outcome.out().contains("\u001b[")).isEqualTo(colour);
    }

    @Test
    void aFileNeverHoldsColours() throws IOException {
        Path file = folder.resolve("out.txt");
        Cli.run(new Terminal(true, Map.of()), "check", "--out", file.toString());
        assertThat(Files.readString(file)).contains("VERDICT").doesNotContain("\u001b");
    }
}
