// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A folder for files that are needed for a while, for the user alone. It goes when it is closed and when the process is ended; what a
 * killed process left goes when the next one is made.
 */
public final class Scratch implements AutoCloseable {
    private static final String START = "tipwright-";
    private static final String LOCK = "lock";

    private final Path folder;
    private final FileChannel lock;
    private final AtExit atExit;

    private Scratch(Path folder) throws IOException {
        this.folder = folder;
        this.atExit = AtExit.run(() -> remove(folder));
        this.lock = FileChannel.open(folder.resolve(LOCK), StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
        Held.hold(lock);
    }

    /**
     * A new one in the system's folder for temporary files.
     *
     * @throws IOException when there can be none
     */
    public static Scratch open() throws IOException {
        return open(Path.of(System.getProperty("java.io.tmpdir")));
    }

    static Scratch open(Path temporary) throws IOException {
        Scratch scratch = new Scratch(Files.createTempDirectory(
                temporary, START + ProcessHandle.current().pid() + "-"));
        scratch.sweep(temporary);
        return scratch;
    }

    /** A file in it. */
    public Path file(String name) {
        return folder.resolve(name);
    }

    /** A new folder in it. */
    public Path folder(String name) throws IOException {
        return Files.createDirectory(folder.resolve(name));
    }

    /** What cannot be removed is tried once more when the process ends. */
    @Override
    public void close() {
        try {
            lock.close();
            atExit.now();
        } catch (IOException busy) {
            // As it says above.
        }
    }

    /** Only what is the same user's: others' folders may lead anywhere. */
    private void sweep(Path temporary) {
        try (DirectoryStream<Path> all = Files.newDirectoryStream(temporary, START + "*-*")) {
            for (Path left : all) {
                if (Files.isDirectory(left, LinkOption.NOFOLLOW_LINKS)
                        && Files.getOwner(left).equals(Files.getOwner(folder))
                        && Held.isLeft(left, left.resolve(LOCK))) {
                    remove(left);
                }
            }
        } catch (IOException | DirectoryIteratorException unseen) {
            // What cannot be looked at stays.
        }
    }

    private static void remove(Path path) throws IOException {
        if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
            try (DirectoryStream<Path> inside = Files.newDirectoryStream(path)) {
                for (Path each : inside) {
                    remove(each);
                }
            } catch (DirectoryIteratorException e) {
                throw e.getCause();
            }
        }
        Files.deleteIfExists(path);
    }
}
