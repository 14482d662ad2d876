// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import tipwright.geometry.NotConvergedException;
import tipwright.report.Vocabulary;

/** Help, version, and what happens when the program itself is at fault. */
class HelpTest {
    private static CommandLine line(PrintWriter out, PrintWriter err) {
        return CommandRun.line(
                new String[0], out, err, new Tipwright(new Terminal(false, Map.of()), err, Headstart.NONE));
    }

    static Set<String> commands() {
        PrintWriter nowhere = new PrintWriter(new StringWriter());
        return line(nowhere, nowhere).getSubcommands().keySet();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandHasHelpWithExitCodesAndExamples(String command) {
        Cli.Outcome help = Cli.run("help", command);
        assertThat(help.code()).isZero();
        assertThat(help.out())
                .contains("Usage: tipwright " + command, "Exit codes:", "  2   ", "Examples:\n  tipwright");
        Vocabulary.assertKnown("help " + command, help.out(), "");
        if (!command.equals("help")) {
            assertThat(Cli.run(command, "--help").out()).isEqualTo(help.out());
        }
        for (String text : help.out().split("\n")) {
            assertThat(text.length()).isLessThanOrEqualTo(100);
        }
    }

    @Test
    void theProgramsHelpListsAllCommands() {
        String help = Cli.run("--help").out();
        assertThat(commands()).contains("check", "new", "explain", "units", "help");
        Vocabulary.assertKnown("help", help, "");
        for (String command : commands()) {
            assertThat(help).containsPattern("(?m)^  " + command + " +\\S");
        }
    }

    @Test
    void theVersionIsTold() {
        assertThat(Cli.run("--version").out()).startsWith("Tipwright ");
        assertThat(Cli.run("check", "--version").out()).startsWith("Tipwright ");
    }

    @Test
    void withoutAnythingTheDemoIsCheckedAndTheNextStepTold() {
        Cli.Outcome outcome = Cli.run();
        assertThat(outcome.code()).isZero();
        assertThat(outcome.out()).startsWith(Cli.run("check").out()).contains("tipwright new my-tank.yaml");
        assertThat(outcome.err()).isEmpty();
    }

    /** What a command prints to the error output when it ends in this; its exit code must be 3. */
    private static String ending(RuntimeException in) {
        StringWriter err = new StringWriter();
        CommandLine line = line(new PrintWriter(new StringWriter()), new PrintWriter(err, true));
        line.addSubcommand("boom", new Boom(in));
        line.getSubcommands()
                .get("boom")
                .setErr(line.getErr())
                .setExecutionExceptionHandler(line.getExecutionExceptionHandler());
        assertThat(line.execute("boom")).isEqualTo(3);
        return err.toString();
    }

    @Test
    void whatDoesNotConvergeIsSaidInOneSentenceHoweverDeepItLies() {
        NotConvergedException lost = new NotConvergedException("did not converge: the level of 2 m3 of slurry");
        String sentence = "tipwright: did not converge: the level of 2 m3 of slurry" + System.lineSeparator();
        assertThat(ending(lost)).isEqualTo(sentence);
        assertThat(ending(new IllegalStateException(new IllegalStateException(lost))))
                .isEqualTo(sentence);
    }

    @Test
    void aFaultOfTheProgramEndsInOneSentence() {
        assertThat(ending(new IllegalStateException("inner")))
                .startsWith(
                        "tipwright: this is a bug in Tipwright; your design is fine: IllegalStateException (inner) at")
                .contains("HelpTest", "please send this line and your design file")
                .hasLineCount(1);
    }

    /** Always at fault. */
    @Command(name = "boom")
    static final class Boom implements Callable<Integer> {
        private final RuntimeException fault;

        Boom(RuntimeException fault) {
            this.fault = fault;
        }

        @Override
        public Integer call() {
            throw fault;
        }
    }
}
