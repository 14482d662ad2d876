// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tipwright.report.Vocabulary;

/** Trying the parts box says what a check of the same design with the other name in it says. */
class ActuatorsCommandTest {
    @TempDir
    private Path folder;

    @Test
    void eachActuatorDoesAsItDoesInTheDesignFile() throws IOException {
        String text = Files.readString(Path.of("geometry/too-small.yaml"));
        Path file = Files.writeString(folder.resolve("tank.yaml"), text);
        Cli.Outcome tried = Cli.run("actuators", file.toString());
        assertThat(tried.code()).isZero();
        List<String> rows =
                tried.out().lines().filter(l -> l.matches(" [+!X] .*")).toList();
        assertThat(rows).hasSizeGreaterThan(4);
        for (String row : rows) {
            String name = row.substring(9).strip().replaceFirst("^\\* ", "").split(" ")[0];
            Path other = Files.writeString(
                    folder.resolve(name + ".yaml"), swap(text, "actuator: light-6", "actuator: " + name));
            Cli.Outcome checked = Cli.run("check", other.toString());
            assertThat(checked.code()).as(row).isEqualTo(row.startsWith(" X") ? 1 : 0);
        }
        Vocabulary.assertKnown("actuators", tried.out(), text);
        assertThat(tried.out())
                .contains("1 of " + rows.size() + " passes", "Not tried: heavy-18", "this machine has 12 V");
    }

    @Test
    void ownPartsComeFirstAndABadPartsFileIsTold() throws IOException {
        Path file = Files.copy(Path.of("geometry/too-small.yaml"), folder.resolve("tank.yaml"));
        Path own = Files.writeString(
                folder.resolve("box.yaml"),
                """
                tipwright-parts: 1
                actuators:
                  from-the-shelf: {kind: electric, closed: 690 mm, stroke: 620 mm, push: 13 kN, pull: 13 kN}
                """);
        Cli.Outcome tried = Cli.run("actuators", file.toString(), "--parts", own.toString());
        assertThat(tried.code()).isZero();
        assertThat(tried.out()).containsPattern("[+!] (passes|close) +from-the-shelf");
        Files.writeString(own, "tipwright-parts: 1\nactuators: {odd: {kind: electric, closed: 690}}\n");
        Cli.Outcome wrong = Cli.run("actuators", file.toString(), "--parts", own.toString());
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("no unit in '690'");
    }

    @Test
    void exitsWithOneWhenNothingInTheBoxWillDo() throws IOException {
        String text = Files.readString(Path.of("geometry/too-small.yaml"));
        Path file = Files.writeString(folder.resolve("tank.yaml"), swap(text, "to: 60 deg", "to: 88 deg"));
        Cli.Outcome tried = Cli.run("actuators", file.toString());
        assertThat(tried.code()).isEqualTo(1);
        Vocabulary.assertKnown("actuators of which none will do", tried.out(), text);
        assertThat(tried.out().replaceAll("\\s+", " "))
                .contains("None of them will do", "stroke left when fully out, ", " short");
    }
}
