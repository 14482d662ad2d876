// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.remedy.PartsAtHand;

/** Finds the parts that are at hand for a design of the command line. */
final class Boxes {
    private Boxes() {}

    /** Reads them. */
    static PartsAtHand of(DesignSource source, Design design, List<Path> extra) {
        return PartsAtHand.of(folder(source), design.parts(), extra);
    }

    /** Where the design's own parts files lie; null for a design that comes with the program. */
    private static @Nullable Path folder(DesignSource source) {
        try {
            return DesignSource.isFile(source.name())
                    ? Path.of(source.name()).toAbsolutePath().getParent()
                    : null;
        } catch (InvalidPathException e) {
            return null;
        }
    }
}
