// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Parameters;

/** The DESIGN argument shared by commands. */
final class Asked {
    @Parameters(
            arity = "0..1",
            paramLabel = "DESIGN",
            description = "The design file, or the name of a design that comes with the program. Default: '"
                    + DesignSource.DEMO + "'.")
    private @Nullable String design;

    /** As typed; null when left out. */
    @Nullable
    String design() {
        return design;
    }
}
