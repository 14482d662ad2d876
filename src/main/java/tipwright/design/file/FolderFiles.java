// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Files of a folder on disk. */
record FolderFiles(Path folder) implements NamedFiles {
    @Override
    public byte[] read(String name, int most) throws IOException {
        try {
            Path file = folder.resolve(name).toRealPath();
            if (!file.startsWith(folder.toRealPath())) {
                throw new IOException("is in another folder; copy it into the folder of your design");
            }
            return bytes(file, most);
        } catch (NoSuchFileException missing) {
            throw new IOException("no such file beside the design", missing);
        } catch (InvalidPathException odd) {
            throw new IOException("no name for a file on this computer", odd);
        } catch (FileSystemException fault) {
            throw new IOException("cannot be read: " + fault.getReason(), fault);
        }
    }

    /**
     * The bytes of an ordinary file of a bounded size.
     *
     * @throws IOException with a message for the reader
     */
    static byte[] bytes(Path file, int most) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new IOException(Files.exists(file) ? "is no ordinary file" : "no such file");
        }
        if (Files.size(file) > most) {
            throw new IOException(tooLarge(most));
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(most + 1);
            if (bytes.length > most) {
                throw new IOException(tooLarge(most));
            }
            return bytes;
        } catch (AccessDeniedException denied) {
            throw new IOException("you may not read it", denied);
        }
    }

    static String tooLarge(int most) {
        return "is larger than " + most / 1_000_000 + " MB";
    }
}
