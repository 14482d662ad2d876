// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.io.IOException;
import java.io.InputStream;

/** Files on the class path. */
record ShippedFiles() implements NamedFiles {
    private static final String FOLDER = "/tipwright/geometry/";

    @Override
    public byte[] read(String name, int most) throws IOException {
        try (InputStream in = ShippedFiles.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IOException("no such file came with the program");
            }
            byte[] bytes = in.readNBytes(most + 1);
            if (bytes.length > most) {
                throw new IOException(FolderFiles.tooLarge(most));
            }
            return bytes;
        }
    }
}
