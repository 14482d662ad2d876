// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Files of a folder on disk. */
record FolderFiles(Path folder) implements Beside {
    @Override
    public byte[] read(String name, int most) throws IOException {
        try {
            Path file = folder.resolve(name).toRealPath();
            if (!file.startsWith(folder.toRealPath())) {
                throw new IOException("leads out of the design's folder; copy it beside the design");
            }
            return bytes(file, most);
        } catch (NoSuchFileException missing) {
            throw new IOException("no such file beside the design", missing);
        }
    }

    /** The bytes of an ordinary file of a bounded size. */
    static byte[] bytes(Path file, int most) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new IOException(Files.exists(file) ? "is no ordinary file" : "no such file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = Files.size(file) > most ? new byte[0] : in.readNBytes(most + 1);
            if (bytes.length > most || Files.size(file) > most) {
                throw new IOException("is larger than " + most / 1_000_000 + " MB");
            }
            return bytes;
        } catch (java.nio.file.AccessDeniedException denied) {
            throw new IOException("may not be read by you", denied);
        }
    }
}
