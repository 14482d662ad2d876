// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tipwright.report.Inputs;
import tipwright.report.WholeFile;

/**
 * Where a command writes files to: whole or not at all, and never over what it was read from.
 *
 * @param inputs of the command
 */
record Outputs(Inputs inputs) {
    /** Those of a command that reads these designs. */
    static Outputs sparing(DesignSource... sources) {
        List<Path> all = new ArrayList<>();
        for (DesignSource source : sources) {
            all.addAll(Inputs.of(source.reading()).files());
        }
        return new Outputs(new Inputs(all));
    }

    /**
     * Refuses a target before any work is done for it.
     *
     * @throws FailedException when it is an input
     */
    void spare(Path target) throws FailedException {
        try {
            inputs.spare(target);
        } catch (Inputs.TakenException e) {
            throw new FailedException(String.valueOf(e.getMessage()), e, Exit.NOT_UNDERSTOOD);
        }
    }

    /**
     * Writes a file.
     *
     * @throws FailedException when it is an input or cannot be written
     */
    void write(Path target, WholeFile.Content content) throws FailedException {
        spare(target);
        try {
            WholeFile.write(target, content);
        } catch (IOException e) {
            throw new FailedException(String.valueOf(e.getMessage()), e);
        }
    }
}
