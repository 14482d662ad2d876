// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.io.IOException;
import java.util.concurrent.atomic.AtomicBoolean;

/** Tidying up that is done once: when asked for, or else when the process is ended. */
final class AtExit {
    private static final int TRIES = 40;
    private static final long PAUSE = 50;

    private final Step step;
    private final Thread hook;
    private final AtomicBoolean done = new AtomicBoolean();

    private AtExit(Step step) {
        this.step = step;
        this.hook = new Thread(this::patiently);
    }

    /** What tidies up. */
    @FunctionalInterface
    interface Step {
        void run() throws IOException;
    }

    /**
     * Sets it up.
     *
     * @throws IOException when the process is being ended already; it was done then
     */
    static AtExit run(Step step) throws IOException {
        AtExit it = new AtExit(step);
        try {
            Runtime.getRuntime().addShutdownHook(it.hook);
        } catch (IllegalStateException ending) {
            step.run();
            throw new IOException("the program was ended meanwhile", ending);
        }
        return it;
    }

    /** Does it now, unless it is done. */
    void now() throws IOException {
        if (!done.get()) {
            step.run();
            dismiss();
        }
    }

    /** There is nothing left to tidy up. */
    void dismiss() {
        done.set(true);
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException ending) {
            // Then it runs and finds that it is done.
        }
    }

    /** Others may still be at work on it while the process ends. */
    private void patiently() {
        for (int i = 0; i < TRIES && !done.get(); i++) {
            try {
                step.run();
                return;
            } catch (IOException busy) {
                try {
                    Thread.sleep(PAUSE);
                } catch (InterruptedException e) {
                    return;
                }
            }
        }
    }
}
