// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.io.IOException;
import java.nio.file.Path;

/** Finds the files that a design names: parts files and meshes, beside the design and never outside its folder. */
public interface NamedFiles {
    /**
     * The bytes of a file.
     *
     * @param name relative to the design, with '/' between folders; already checked by FileName
     * @param most bytes allowed
     * @throws IOException with a message for the reader when it cannot be read or is larger
     */
    byte[] read(String name, int most) throws IOException;

    /** Files of a folder; links that lead out of it are refused. */
    static NamedFiles folder(Path folder) {
        return new FolderFiles(folder);
    }

    /** Files that came with the program. */
    static NamedFiles shipped() {
        return new ShippedFiles();
    }
}
