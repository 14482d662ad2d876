// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** One screen has one mouse: of the processes that run tests side by side, one at a time moves it. */
public final class OneScreen implements BeforeAllCallback, AfterAllCallback {
    private static final ExtensionContext.Namespace OURS = ExtensionContext.Namespace.create(OneScreen.class);
    private static final int TRIES = 6000;
    private static final long WAIT = 100;

    /** The lock; closing the channel lets go of it. */
    private record Held(FileChannel channel, FileLock lock) {}

    @Override
    public void beforeAll(ExtensionContext context) throws IOException, InterruptedException {
        Path file = Files.createDirectories(Path.of("target")).resolve("screen.lock");
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = channel.tryLock();
        for (int i = 0; lock == null && i < TRIES; i++) {
            Thread.sleep(WAIT);
            lock = channel.tryLock();
        }
        if (lock == null) {
            channel.close();
            throw new IllegalStateException("another process keeps " + file + " for ten minutes");
        }
        context.getStore(OURS).put(context.getUniqueId(), new Held(channel, lock));
    }

    @Override
    public void afterAll(ExtensionContext context) throws IOException {
        Held held = context.getStore(OURS).remove(context.getUniqueId(), Held.class);
        if (held != null) {
            held.lock().release();
            held.channel().close();
        }
    }
}
