// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Map;

/** Runs command lines inside the test. */
public final class Cli {
    private Cli() {}

    /**
     * What came of a command line.
     *
     * @param code of the exit
     * @param out printed
     * @param err printed as an error
     */
    public record Outcome(int code, String out, String err) {}

    public static Outcome run(String... args) {
        return run(new Terminal(false, Map.of()), args);
    }

    static Outcome run(Terminal terminal, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code =
                CommandRun.run(args, new PrintWriter(out, true), new PrintWriter(err, true), terminal, Headstart.NONE);
        return new Outcome(code, out.toString(), err.toString());
    }
}
