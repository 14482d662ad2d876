// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Checks a design. */
@Command(
        name = "check",
        description = "Checks a design over its whole tilt range and all its load cases.",
        footer = {
            "  tipwright check my-tank.yaml",
            "  tipwright check my-tank.yaml --units us",
            "  tipwright check my-tank.yaml --json --out my-tank.json",
            "  tipwright check silt-trailer --csv > rows.csv      a design that comes with the program"
        })
final class CheckCommand implements Callable<Integer> {
    @ParentCommand
    private Tipwright parent;

    @Spec
    private CommandSpec spec;

    @Mixin
    private Asked asked = new Asked();

    @ArgGroup
    private Form form = new Form();

    @Mixin
    private Shown shown = new Shown();

    @Option(names = "--out", paramLabel = "FILE", description = "Write to this file instead of the screen.")
    private @Nullable Path file;

    /** Checks a design with no option given. */
    static int check(@Nullable String design, PrintWriter out, PrintWriter err, Tipwright root) throws FailedException {
        return new CheckRun(out, err, root.terminal())
                .run(root.headstart().design(design), CheckRun.Form.TEXT, new Shown(), null);
    }

    /** At most one of these. */
    static final class Form {
        @Option(names = "--json", description = "Print everything as JSON.")
        private boolean json;

        @Option(
                names = "--full",
                description = "Print the whole report: every check, force and tilt, and what was assumed.")
        private boolean full;

        @Option(names = "--csv", description = "Print one line for each load case and tilt.")
        private boolean csv;
    }

    @Override
    public Integer call() throws FailedException {
        CheckRun run =
                new CheckRun(spec.commandLine().getOut(), spec.commandLine().getErr(), parent.terminal());
        CheckRun.Form wanted = form.json
                ? CheckRun.Form.JSON
                : form.csv ? CheckRun.Form.CSV : form.full ? CheckRun.Form.FULL : CheckRun.Form.TEXT;
        return run.run(parent.headstart().design(asked.design()), wanted, shown, file);
    }
}
