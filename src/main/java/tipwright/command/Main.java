// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.FileDescriptor;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.List;

/** Entry point of the program. */
public final class Main {
    private Main() {}

    /** Runs a command line and ends with its exit code; without arguments it checks the shipped demo design. */
    public static void main(String[] args) {
        // Pictures and texts are drawn without a display; the programs that do show something are started apart.
        System.setProperty("java.awt.headless", "true");
        Headstart headstart = Headstart.begin(args);
        PrintWriter out = OutputPipe.writer(FileDescriptor.out);
        PrintWriter err = OutputPipe.writer(FileDescriptor.err);
        Terminal terminal = new Terminal(
                interactive(), System.getenv(), new InputStreamReader(System.in, Charset.defaultCharset()));
        String fault = Locality.here().fault(List.of(args));
        int code = Exit.NOT_UNDERSTOOD;
        if (fault == null) {
            try (StillAtWork told = StillAtWork.on(err, watched() && !lasts(args))) {
                code = CommandRun.run(args, out, err, terminal, headstart);
                told.stop();
            }
        } else {
            err.println("tipwright: " + fault);
        }
        out.flush();
        err.flush();
        if (code != 0) {
            System.exit(code);
        }
    }

    /** Whether a person sees the output: the launcher knows; else Java's own word, which it keeps only before Java 22. */
    @SuppressWarnings("SystemConsoleNull") // asked only where null does mean that there is no terminal
    private static boolean interactive() {
        String launcher = System.getProperty("tipwright.terminal");
        return launcher == null
                ? Runtime.version().feature() < 22 && System.console() != null
                : Boolean.parseBoolean(launcher);
    }

    /** Whether a command goes on for as long as a person likes, or tells by itself how far it is. */
    private static boolean lasts(String[] args) {
        return args.length > 0 && (args[0].equals("view") || args[0].equals("place") || args[0].equals("new"));
    }

    /** Whether a person sees the error output; where no launcher tells, it is taken to go where the output goes. */
    private static boolean watched() {
        String launcher = System.getProperty("tipwright.watched");
        return launcher == null ? interactive() : Boolean.parseBoolean(launcher);
    }
}
