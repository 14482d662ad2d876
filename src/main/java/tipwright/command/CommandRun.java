// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.ColorScheme;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.TypeConversionException;
import tipwright.geometry.NotConvergedException;

/** Runs one command line; whatever happens ends in an exit code and a sentence, never in a stack trace. */
final class CommandRun {
    private CommandRun() {}

    /** The exit code, see {@link Exit}. */
    static int run(String[] args, PrintWriter out, PrintWriter err, Terminal terminal, Headstart headstart) {
        PrintWriter safeOut = new PrintWriter(new TerminalWriter(out, terminal.colour()));
        PrintWriter safeErr = new PrintWriter(new TerminalWriter(err, terminal.colour()));
        int code = run(args, safeOut, safeErr, new Tipwright(terminal, err, headstart));
        safeOut.flush();
        safeErr.flush();
        if (out.checkError()) {
            err.println("tipwright: the output could not be written whole; the disk may be full");
        }
        return out.checkError() || err.checkError() ? Exit.CANNOT_COMPUTE : code;
    }

    private static int run(String[] args, PrintWriter out, PrintWriter err, Tipwright root) {
        try {
            return plain(args)
                    ? plainly(args[1], out, err, root)
                    : line(args, out, err, root).execute(args);
        } catch (StackOverflowError | OutOfMemoryError e) {
            err.println("tipwright: the machine ran out of memory ("
                    + e.getClass().getSimpleName() + "); try a coarser tilt step or a smaller mesh");
            return Exit.CANNOT_COMPUTE;
        } catch (Error e) {
            err.println("tipwright: " + fault(e));
            return Exit.CANNOT_COMPUTE;
        }
    }

    /** Whether a line asks for a check of a design and for nothing else: most do, and need no parser. */
    private static boolean plain(String[] args) {
        return args.length == 2
                && args[0].equals("check")
                && !args[1].isEmpty()
                && args[1].charAt(0) != '-'
                && args[1].charAt(0) != '@'; // a file of arguments
    }

    /** What {@link CheckCommand} does with such a line. */
    private static int plainly(String design, PrintWriter out, PrintWriter err, Tipwright root) {
        try {
            return CheckCommand.check(design, out, err, root);
        } catch (FailedException | RuntimeException e) {
            return told(e, err);
        }
    }

    /** What went wrong in one sentence; gives the exit code. */
    private static int told(Exception e, PrintWriter err) {
        err.println("tipwright: " + sentence(e));
        return e instanceof FailedException f ? f.code() : Exit.CANNOT_COMPUTE;
    }

    /** The commands that these arguments may need: setting up all of them takes longer than most checks. */
    static CommandLine line(String[] args, PrintWriter out, PrintWriter err, Tipwright root) {
        CommandLine line = new CommandLine(root);
        Map<String, Supplier<Object>> commands = commands();
        String first = args.length == 0 ? "" : args[0];
        commands.forEach((name, command) -> {
            if (name.equals(first) || first.equals("help") || !commands.containsKey(first)) {
                line.addSubcommand(name, command.get());
            }
        });
        Ansi ansi = root.terminal().colour() ? Ansi.ON : Ansi.OFF;
        ColorScheme colours = CommandLine.Help.defaultColorScheme(ansi);
        line.registerConverter(Path.class, CommandRun::path);
        return line.setOut(out)
                .setErr(err)
                .setColorScheme(colours)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((e, failed, parsed) -> told(e, failed.getErr()));
    }

    /** In the order of the help. */
    private static Map<String, Supplier<Object>> commands() {
        Map<String, Supplier<Object>> all = new LinkedHashMap<>();
        all.put("check", CheckCommand::new);
        all.put("time", TimeCommand::new);
        all.put("new", NewCommand::new);
        all.put("mirror", MirrorCommand::new);
        all.put("actuators", ActuatorsCommand::new);
        all.put("place", PlaceCommand::new);
        all.put("tolerance", ToleranceCommand::new);
        all.put("sheet", SheetCommand::new);
        all.put("view", ViewCommand::new);
        all.put("frames", FramesCommand::new);
        all.put("report", ReportCommand::new);
        all.put("compare", CompareCommand::new);
        all.put("explain", ExplainCommand::new);
        all.put("validate", ValidateCommand::new);
        all.put("parts", PartsCommand::new);
        all.put("units", UnitsCommand::new);
        all.put("help", HelpCommand::new);
        return all;
    }

    private static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new TypeConversionException("'" + name + "' is no name for a file on this computer");
        }
    }

    private static String sentence(Exception e) {
        for (Throwable t = e; t != null; t = t.getCause()) {
            if (t instanceof NotConvergedException) {
                return String.valueOf(t.getMessage());
            }
        }
        return e instanceof FailedException ? String.valueOf(e.getMessage()) : fault(e);
    }

    private static String fault(Throwable thrown) {
        Throwable cause = thrown.getCause();
        Throwable e = thrown instanceof CompletionException && cause != null ? cause : thrown;
        StackTraceElement[] trace = e.getStackTrace();
        String where = trace.length == 0 ? "" : " at " + trace[0].getClassName() + ":" + trace[0].getLineNumber();
        String what = e.getMessage() == null ? "" : " (" + e.getMessage() + ")";
        return "this is a bug in Tipwright; your design is fine: "
                + e.getClass().getSimpleName() + what + where + "; please send this line and your design file";
    }
}
