// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import tipwright.viewer.start.DesignName;
import tipwright.viewer.start.DrawingPrograms;

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

    @Mixin
    private Asked asked = new Asked();

    @Override
    public Integer call() throws FailedException {
        DesignName name = DrawnDesign.openable(asked.design(), spec.commandLine());
        if (name == null) {
            return Exit.NOT_UNDERSTOOD;
        }
        try {
            return DrawingPrograms.window(name, parent.terminal().environment());
        } catch (IOException e) {
            throw new FailedException(String.valueOf(e.getMessage()), e);
        }
    }
}
