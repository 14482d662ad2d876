// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program: without a command it checks the shipped demo design. */
@Command(
        name = "tipwright",
        scope = ScopeType.INHERIT,
        mixinStandardHelpOptions = true,
        versionProvider = ProgramVersion.class,
        usageHelpWidth = 96,
        descriptionHeading = "%n",
        parameterListHeading = "%n",
        optionListHeading = "%n",
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:all checks pass (some may be close), or the command is done",
            "1:a check fails",
            "2:a mistake in the command or in a file (the message says where)",
            "3:the design cannot be computed, or a file cannot be written"
        },
        footerHeading = "%nExamples:%n",
        description = {
            "Checks a tilting slurry tank before you weld it: does the actuator lift it, how far, what do the bearings"
                    + " carry?",
            "Without a command it checks the example '" + DesignSource.DEMO + "'."
        },
        footer = {
            "  tipwright                              checks the example design",
            "  tipwright new my-tank.yaml             creates a design file to start from",
            "  tipwright check my-tank.yaml           checks it",
            "  tipwright explain bearing-static       explains a check or a word"
        })
final class Tipwright implements Callable<Integer> {
    private final Terminal terminal;
    private final PrintWriter progress;
    private final Headstart headstart;

    @Spec
    private CommandSpec spec;

    /**
     * The program.
     *
     * @param progress for lines that are written over
     * @param headstart what is being read already
     */
    Tipwright(Terminal terminal, PrintWriter progress, Headstart headstart) {
        this.terminal = terminal;
        this.progress = progress;
        this.headstart = headstart;
    }

    @Override
    public Integer call() throws FailedException {
        PrintWriter out = spec.commandLine().getOut();
        int code = CheckCommand.check(null, out, spec.commandLine().getErr(), this);
        out.println();
        out.println("That was the example design '" + DesignSource.DEMO + "'. For your own:");
        out.println("  tipwright new my-tank.yaml      creates a design file to start from");
        out.println("  tipwright check my-tank.yaml    checks it; change a number and run it again");
        out.println("  tipwright --help                shows the rest");
        return code;
    }

    Terminal terminal() {
        return terminal;
    }

    /** What is being read already. */
    Headstart headstart() {
        return headstart;
    }

    /** For lines that are written over, which nothing else may do: nothing from a file goes here as it is. */
    PrintWriter progress() {
        return progress;
    }
}
