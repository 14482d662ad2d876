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
        versionProvider = Version.class,
        usageHelpWidth = 96,
        descriptionHeading = "%n",
        parameterListHeading = "%n",
        optionListHeading = "%n",
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:every check that could be made passes, some may be close; or the command did its work",
            "1:a check fails",
            "2:the command line or a file was not understood",
            "3:the design cannot be computed, or a file cannot be written"
        },
        footerHeading = "%nExamples:%n",
        description = {
            "Tells whether a tilting slurry tank will tip before the first weld: actuator force and stroke, the load of each"
                    + " pivot bearing, every rating, over the whole tilt range.",
            "Without a command it checks the shipped design '" + DesignSource.DEMO + "'."
        },
        footer = {
            "  tipwright                              checks the demo",
            "  tipwright new my-tank.yaml             writes a design to start from",
            "  tipwright check my-tank.yaml           checks it",
            "  tipwright explain bearing-static       tells a rule, its formula and where it comes from"
        })
final class Tipwright implements Callable<Integer> {
    private final Terminal terminal;
    private final PrintWriter progress;

    @Spec
    private CommandSpec spec;

    /**
     * The program.
     *
     * @param progress for lines that are written over
     */
    Tipwright(Terminal terminal, PrintWriter progress) {
        this.terminal = terminal;
        this.progress = progress;
    }

    @Override
    public Integer call() throws FailedException {
        PrintWriter out = spec.commandLine().getOut();
        int code = new CheckRun(out, spec.commandLine().getErr(), terminal)
                .run(DesignSource.find(null), CheckRun.Form.TEXT, new Shown(), null);
        out.println();
        out.println("That was the shipped design '" + DesignSource.DEMO + "'. For your own:");
        out.println("  tipwright new my-tank.yaml      writes a design to start from");
        out.println("  tipwright check my-tank.yaml    checks it; change a number and run it again");
        out.println("  tipwright --help                tells the rest");
        return code;
    }

    Terminal terminal() {
        return terminal;
    }

    /** For lines that are written over, which nothing else may do: nothing from a file goes here as it is. */
    PrintWriter progress() {
        return progress;
    }
}
