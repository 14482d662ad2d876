// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import org.jspecify.annotations.Nullable;

/** What only the user may see; where files have no such permissions, what the system gives. */
final class Private {
    private Private() {}

    /** Makes a folder, and those that it lies in, for the user alone; takes others' permissions away if it is there. */
    static void folder(Path folder) throws IOException {
        Path parent = folder.getParent();
        if (parent != null && !Files.isDirectory(parent)) {
            folder(parent);
        }
        if (!Files.isDirectory(folder)) {
            Files.createDirectory(folder);
        }
        allow(folder, "rwx------");
    }

    /** Takes others' permissions of a file away. */
    static void file(Path file) throws IOException {
        allow(file, "rw-------");
    }

    private static void allow(Path path, String permissions) throws IOException {
        @Nullable PosixFileAttributeView view = Files.getFileAttributeView(path, PosixFileAttributeView.class);
        if (view != null) {
            view.setPermissions(PosixFilePermissions.fromString(permissions));
        }
    }
}
