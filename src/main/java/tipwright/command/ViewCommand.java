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
import tipwright.viewer.start.DrawingPrograms;

/** Opens the window. */
@Command(
        name = "view",
        description = {
            "Opens a window in which a machine is begun, drawn, tried and changed, with its answer beside it and the dump in three"
                    + " dimensions."
        },
        footer = {
            "  tipwright view my-tank.yaml",
            "  tipwright view                         the start: a new machine, a file, an example"
        })
final class ViewCommand implements Callable<Integer> {
    @ParentCommand
    private Tipwright parent;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "DESIGN",
            description =
                    "The design file, or the name of a design that comes with the program. Without it: the start.")
    private @Nullable String design;

    @Override
    public Integer call() throws FailedException {
        String wanted = design;
        DesignName name = wanted == null ? null : DrawnDesign.openable(wanted, spec.commandLine());
        if (wanted != null && name == null) {
            return Exit.NOT_UNDERSTOOD;
        }
        try {
            return DrawingPrograms.window(name, parent.terminal().environment());
        } catch (IOException e) {
            throw new FailedException(String.valueOf(e.getMessage()), e);
        }
    }
}
