// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;

/** Tells what a living process still holds from what a dead one left: the system lets go of a dead process's locks. */
final class Held {
    /** Between making a file and locking it another process may come by. */
    private static final Duration FRESH = Duration.ofMinutes(1);

    private Held() {}

    /** Holds a file for as long as its channel is open, where the file system can. */
    static void hold(FileChannel channel) {
        try {
            channel.tryLock();
        } catch (IOException cannot) {
            // Then others cannot lock it either, and leave it alone.
        }
    }

    /**
     * Whether something was left by a process that is no more.
     *
     * @param thing a file or folder
     * @param lock the file that its process held
     */
    static boolean isLeft(Path thing, Path lock) {
        // Not one of this process: to open and close a file lets go of its lock.
        if (String.valueOf(thing.getFileName())
                .matches(".*\\D" + ProcessHandle.current().pid() + "-.*")) {
            return false;
        }
        try {
            if (Files.getLastModifiedTime(thing)
                    .toInstant()
                    .isAfter(Instant.now().minus(FRESH))) {
                return false;
            }
            try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.WRITE);
                    FileLock got = channel.tryLock()) {
                return got != null;
            }
        } catch (IOException | OverlappingFileLockException unsure) {
            return false;
        }
    }
}
