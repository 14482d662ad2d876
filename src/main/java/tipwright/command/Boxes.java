// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.file.PartsAtHand;
import tipwright.design.file.Problem;
import tipwright.quantity.UnitSystem;
import tipwright.remedy.Shop;

/**
 * The parts that are at hand for a command.
 *
 * @param at hand
 */
record Boxes(PartsAtHand at) {

    /** Reads them: those of extra files first. */
    static Boxes of(DesignSource source, Design design, List<Path> extra) {
        return new Boxes(PartsAtHand.of(folder(source), design.parts(), extra));
    }

    /** As a shop. */
    Shop shop(UnitSystem units) {
        return Shop.of(at, units);
    }

    /** All that is wrong with the files. */
    List<Problem> problems() {
        return at.problems();
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
