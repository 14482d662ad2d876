// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.start;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;

/**
 * Which design to draw.
 *
 * @param name of a file, or of a design that came with the program
 * @param shipped whether it came with the program
 */
public record DesignName(String name, boolean shipped) {
    /** Reads it. */
    public Reading read() {
        Path file = file();
        return file == null ? DesignFile.shipped(name + ".yaml") : DesignFile.read(file);
    }

    /** The file; null for one that came with the program. */
    public @Nullable Path file() {
        return shipped ? null : Path.of(name);
    }
}
