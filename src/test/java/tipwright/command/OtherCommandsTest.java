// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitLabel;

/** new, explain, parts, units. */
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
        assertThat(refused.err()).contains("already exists", "--force");
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
                .isEqualTo(
                        "tipwright: no check, no word and no key 'bearing-statik' here; did you mean 'bearing-static'?\n");
        // a word that only stands among others is found there
        assertThat(Cli.run("explain", "dynamic").out()).contains("Dynamic load rating of a bearing");
        assertThat(Cli.run("explain", "crushing").out()).contains("hole crushing");
        assertThat(Cli.run("explain", "Torispherical").out()).contains("dished end");
        assertThat(Cli.run("explain", "zzzzzzzzzz").err()).contains("lists them all");
    }

    @Test
    void shippedPartsAreListedWithTheirFigures() {
        Cli.Outcome outcome = Cli.run("parts");
        assertThat(outcome.code()).isZero();
        assertThat(outcome.out().replaceAll("\\s+", " "))
                .contains("actuators light-3 electric: closed 350 mm, stroke 300 mm, push 3 kN")
                .contains("bearings yard-25 ball-insert: bore 25 mm, c0 7.8 kN");
        assertThat(Cli.run("parts", "--units", "us").out()).contains("bore 0.9843 in");
    }

    @Test
    void ownPartsStandFirstAndTheirErrorsAreTold() throws IOException {
        Path file = folder.resolve("parts.yaml");
        Files.writeString(
                file, "tipwright-parts: 1\nbearings:\n  mine: {kind: ball-insert, bore: 1 in, c0: 2000 lbf}\n");
        Cli.Outcome good = Cli.run("parts", file.toString());
        assertThat(good.code()).as(good.err()).isZero();
        assertThat(good.out().replaceAll("\\s+", " "))
                .contains("bearings mine ball-insert: bore 25.4 mm, c0 8.896 kN yard-25");
        Files.writeString(file, swap(Files.readString(file), "1 in", "1"));
        Cli.Outcome bad = Cli.run("parts", file.toString());
        assertThat(bad.code()).isEqualTo(2);
        assertThat(bad.err()).contains("parts.yaml:3:35: ", "bore");
        assertThat(Cli.run("parts", "none.yaml").code()).isEqualTo(2);
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

    @Test
    void newLikeAShippedDesignBringsItsMeshAndLosesNothing() throws IOException {
        Path file = folder.resolve("tub.yaml");
        Cli.Outcome made = Cli.run("new", file.toString(), "--like", "wash-tub");
        assertThat(made.code()).as(made.err()).isZero();
        assertThat(folder.resolve("wash-tub.stl")).hasSameBinaryContentAs(Path.of("geometry/wash-tub.stl"));
        assertThat(Cli.run("check", file.toString()).code()).isZero();
        Cli.Outcome again = Cli.run("new", folder.resolve("other.yaml").toString(), "--like", "wash-tub");
        assertThat(again.code()).isEqualTo(3);
        assertThat(again.err()).contains("wash-tub.stl already exists");
        assertThat(folder.resolve("other.yaml")).doesNotExist();
        Cli.Outcome wrong = Cli.run("new", folder.resolve("x.yaml").toString(), "--like", "wash-tup");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("did you mean 'wash-tub'?");
        assertThat(Cli.run("new", "--like", "crank-cart").out()).contains("bell-crank:");
    }
}
