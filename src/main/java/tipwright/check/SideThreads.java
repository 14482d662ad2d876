// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadFactory;

/** Threads that work beside the one that answers; none of them keeps the program alive. */
public final class SideThreads {
    private SideThreads() {}

    /** Makes threads of a name. */
    public static ThreadFactory named(String name) {
        return work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(true);
            return thread;
        };
    }

    /** Does one piece of work. */
    public static void start(String name, Runnable work) {
        named(name).newThread(work).start();
    }

    /** Does one piece of work after the other. */
    public static ExecutorService queue(String name) {
        return Executors.newSingleThreadExecutor(named(name));
    }
}
