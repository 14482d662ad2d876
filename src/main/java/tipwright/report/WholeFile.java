// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import org.jspecify.annotations.Nullable;

/** Writes a file whole or not at all: what stood there before stays until all of the new one is on the disk. */
public final class WholeFile {
    private WholeFile() {}

    /** What fills the file; it need not close the stream. */
    @FunctionalInterface
    public interface Content {
        /** Writes everything. */
        void to(OutputStream out) throws IOException;
    }

    /**
     * Writes a file, in place of an older one if there is one. A device or a pipe is written to as it is.
     *
     * @throws IOException when it cannot; the message names the file, says why and how to mend it
     */
    public static void write(Path path, Content content) throws IOException {
        write(path, content, false);
    }

    /**
     * The same, so that nobody but the user may read it (where files have owners); missing folders are made, for the user alone too.
     *
     * @throws IOException when it cannot; the message names the file, says why and how to mend it
     */
    public static void writePrivate(Path path, Content content) throws IOException {
        Path folder = path.toAbsolutePath().getParent();
        if (folder != null) {
            Private.folder(folder);
        }
        write(path, content, true);
    }

    private static void write(Path path, Content content, boolean alone) throws IOException {
        if (Files.isDirectory(path)) {
            throw new IOException(path + ": is a folder; give the name of a file in it");
        }
        Path target = Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            try (OutputStream out = Files.newOutputStream(target)) {
                content.to(out);
            } catch (IOException e) {
                throw explained(path, e);
            }
            return;
        }
        Path folder = target.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new IOException(path + ": there is no folder " + folder + "; make it first");
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new IOException(path + ": is write-protected; choose another name or allow writing to it");
        }
        try {
            replace(target, folder, content, alone);
        } catch (IOException e) {
            throw explained(path, e);
        }
    }

    /**
     * Makes a folder, and those that it lies in, unless it is there.
     *
     * @throws IOException when it cannot; the message names the folder, says why and how to mend it
     */
    public static void folder(Path path) throws IOException {
        for (Path part = path.toAbsolutePath(); part != null; part = part.getParent()) {
            if (Files.exists(part) && !Files.isDirectory(part)) {
                throw new IOException(path + ": not made: " + part + " is a file, no folder; choose another folder");
            }
        }
        try {
            Files.createDirectories(path);
        } catch (IOException e) {
            throw new IOException(path + ": not made: " + reason(path, e), e);
        }
    }

    private static void replace(Path target, Path folder, Content content, boolean alone) throws IOException {
        try (PartFile part = PartFile.beside(target, folder)) {
            if (alone) {
                Private.file(part.path());
            }
            OutputStream out = new BufferedOutputStream(part.stream(), 1 << 16);
            content.to(out);
            out.flush();
            if (!alone) {
                keepPermissions(target, part.path());
            }
            part.become(target);
        }
    }

    private static void keepPermissions(Path target, Path part) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(part, PosixFileAttributeView.class);
        if (view != null && Files.exists(target)) {
            view.setPermissions(Files.getPosixFilePermissions(target));
        }
    }

    private static IOException explained(Path path, IOException e) {
        return new IOException(path + ": not written: " + reason(path, e), e);
    }

    private static String reason(Path path, IOException e) {
        if (e instanceof AccessDeniedException) {
            return "no permission to write in " + folderOf(path) + "; choose another folder or allow writing to it";
        }
        @Nullable String given = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
        if (given != null && given.contains("No space left")) {
            return "the disk is full; free some space or choose another folder";
        }
        if (given != null && given.contains("Read-only file system")) {
            return folderOf(path) + " can only be read; choose another folder";
        }
        return given == null ? e.getClass().getSimpleName() : given;
    }

    private static String folderOf(Path path) {
        Path parent = path.toAbsolutePath().getParent();
        return parent == null ? path.toString() : parent.toString();
    }
}
