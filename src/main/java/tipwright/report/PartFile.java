// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.regex.Pattern;

/**
 * A file in the making, beside the one that it will become. It goes when it is closed before that and when the process is ended; one
 * whose process was killed goes when the same file is written the next time.
 */
final class PartFile implements AutoCloseable {
    private static final int MOST_TRIES = 10_000;

    private final Path path;
    private final FileChannel channel;
    private final AtExit atExit;

    private PartFile(Path path, FileChannel channel) throws IOException {
        this.path = path;
        this.channel = channel;
        Held.hold(channel);
        this.atExit = AtExit.run(() -> Files.deleteIfExists(path));
    }

    /**
     * A new empty one.
     *
     * @throws IOException when there can be none
     */
    static PartFile beside(Path target, Path folder) throws IOException {
        String start = "." + target.getFileName() + ".";
        sweep(folder, start);
        for (int i = 0; i < MOST_TRIES; i++) {
            Path path = folder.resolve(start + ProcessHandle.current().pid() + "-" + i + ".part");
            try {
                return new PartFile(
                        path, FileChannel.open(path, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW));
            } catch (FileAlreadyExistsException taken) {
                // The next number.
            }
        }
        throw new IOException("too many files in the making in " + folder + "; remove those that end in .part");
    }

    /** Removes what processes that were killed have left of the same file. */
    private static void sweep(Path folder, String start) {
        Pattern left = Pattern.compile(Pattern.quote(start) + "(\\d+)-\\d+\\.part");
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path path : all) {
                if (left.matcher(String.valueOf(path.getFileName())).matches() && Held.isLeft(path, path)) {
                    Files.deleteIfExists(path);
                }
            }
        } catch (IOException | DirectoryIteratorException unseen) {
            // What cannot be looked at stays.
        }
    }

    Path path() {
        return path;
    }

    /** To fill it. */
    OutputStream stream() {
        return Channels.newOutputStream(channel);
    }

    /** Takes the place of a file, once all of it is on the disk. */
    void become(Path target) throws IOException {
        channel.force(true);
        channel.close();
        Files.move(path, target, StandardCopyOption.ATOMIC_MOVE);
        atExit.dismiss();
    }

    @Override
    public void close() throws IOException {
        channel.close();
        atExit.now();
    }
}
