// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import tipwright.viewer.start.DesignName;
import tipwright.viewer.start.Drawing;

/** Opens the window. */
@Command(
        name = "view",
        description = {
            "Opens a window in which the tank dumps in three dimensions, with its numbers beside it; the mounts can be dragged"
                    + " or typed."
        },
        footer = {"  tipwright view my-tank.yaml", "  tipwright view                         the demo"})
final class ViewCommand implements Callable<Integer> {
    @ParentCommand
    private Tipwright parent;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "DESIGN",
            description = "The design file, or the name of a design that comes with the program. Left out: '"
                    + DesignSource.DEMO + "'.")
    private @Nullable String design;

    @Override
    public Integer call() throws FailedException {
        DesignName name = Drawn.openable(design, spec.commandLine());
        if (name == null) {
            return Exit.NOT_UNDERSTOOD;
        }
        try {
            return Drawing.window(name, parent.terminal().environment());
        } catch (IOException e) {
            throw new FailedException(String.valueOf(e.getMessage()), e);
        }
    }
}
