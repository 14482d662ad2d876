// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.ColorScheme;

/** Runs one command line; whatever happens ends in an exit code and a sentence, never in a stack trace. */
final class CommandRun {
    private CommandRun() {}

    /** The exit code, see {@link Exit}. */
    static int run(String[] args, PrintWriter out, PrintWriter err, Terminal terminal) {
        try {
            return line(out, err, terminal).execute(args);
        } catch (StackOverflowError | OutOfMemoryError e) {
            err.println("tipwright: the machine ran out of memory ("
                    + e.getClass().getSimpleName() + "); try a coarser tilt step or a smaller mesh");
            return Exit.CANNOT_COMPUTE;
        }
    }

    /** The commands, ready to run. */
    static CommandLine line(PrintWriter out, PrintWriter err, Terminal terminal) {
        Ansi ansi = terminal.colour() ? Ansi.ON : Ansi.OFF;
        ColorScheme colours = CommandLine.Help.defaultColorScheme(ansi);
        return new CommandLine(new Tipwright(terminal))
                .setOut(out)
                .setErr(err)
                .setColorScheme(colours)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((e, line, parsed) -> {
                    line.getErr().println("tipwright: " + sentence(e));
                    return Exit.CANNOT_COMPUTE;
                });
    }

    private static String sentence(Exception e) {
        if (e instanceof FailedException) {
            return String.valueOf(e.getMessage());
        }
        StackTraceElement[] trace = e.getStackTrace();
        String where = trace.length == 0 ? "" : " at " + trace[0].getClassName() + ":" + trace[0].getLineNumber();
        String what = e.getMessage() == null ? "" : " (" + e.getMessage() + ")";
        return "a fault of the program, not of your design: " + e.getClass().getSimpleName() + what + where
                + "; please report this line together with the design file";
    }
}
