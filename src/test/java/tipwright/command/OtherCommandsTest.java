// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tipwright.check.Check;
import tipwright.check.Checks;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitLabel;

/** new, explain, units. */
class OtherCommandsTest {
    @TempDir
    private Path folder;

    @Test
    void theStarterPassesAsItStands() {
        Path file = folder.resolve("my.yaml");
        Cli.Outcome made = Cli.run("new", file.toString());
        assertThat(made.code()).isZero();
        assertThat(made.out()).isEqualTo("Written: " + file + ". Next: tipwright check " + file + "\n");
        Cli.Outcome checked = Cli.run("check", file.toString());
        assertThat(checked.code()).as(checked.err()).isZero();
        assertThat(checked.out()).contains("+ VERDICT: PASS");
    }

    @Test
    void theStarterExplainsEachPartOfTheFile() {
        String starter = Cli.run("new").out();
        for (String paragraph : starter.split("\n\n")) {
            assertThat(paragraph).contains("# ");
        }
        for (String line : starter.split("\n")) {
            assertThat(line.length()).as(line).isLessThanOrEqualTo(125);
        }
    }

    @Test
    void aFileThatIsThereIsKeptUnlessForced() throws IOException {
        Path file = folder.resolve("my.yaml");
        Files.writeString(file, "precious");
        Cli.Outcome refused = Cli.run("new", file.toString());
        assertThat(refused.code()).isEqualTo(3);
        assertThat(refused.err()).contains("is there already", "--force");
        assertThat(file).hasContent("precious");
        assertThat(Cli.run("new", "--force", file.toString()).code()).isZero();
        assertThat(file).hasContent(Cli.run("new").out());
    }

    @Test
    void everyCheckIsExplained() {
        String list = Cli.run("explain").out();
        assertThat(Checks.all()).isNotEmpty();
        for (Check check : Checks.all()) {
            assertThat(list)
                    .containsPattern("(?m)^" + check.id() + " +" + java.util.regex.Pattern.quote(check.title()));
            String text = Cli.run("explain", check.id()).out().replaceAll("\\s+", " ");
            assertThat(text)
                    .contains(check.title(), "Rule " + check.rule(), "Formula " + check.formula(), check.source());
        }
    }

    @Test
    void aPartAfterTheSlashIsLeftOutAndANearNameIsOffered() {
        assertThat(Cli.run("explain", "bearing-static/1").out()).contains("(bearing-static)");
        Cli.Outcome wrong = Cli.run("explain", "bearing-statik");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err())
                .isEqualTo("tipwright: there is no check 'bearing-statik'; did you mean 'bearing-static'?\n");
        assertThat(Cli.run("explain", "zzzzzzzzzz").err()).contains("they are: ");
    }

    @Test
    void everyUnitIsListedAndCanBeRead() {
        Cli.Outcome outcome = Cli.run("units");
        assertThat(outcome.code()).isZero();
        String list = outcome.out().replaceAll("\\s+", " ");
        for (Kind kind : Kind.values()) {
            assertThat(list).contains(kind.word(), "such as '" + kind.example() + "'");
            for (UnitLabel unit : Quantities.units(kind)) {
                assertThat(list).contains(unit.name());
                assertThatCode(() -> Quantities.parse("1 " + unit.name(), kind)).doesNotThrowAnyException();
            }
        }
    }
}
