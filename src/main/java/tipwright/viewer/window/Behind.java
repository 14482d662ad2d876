// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import javafx.animation.AnimationTimer;

/**
 * What may lag some frames behind the numbers: it is done when the frame is out that has the numbers, so that they do not wait for it.
 * While one edit follows the other it is done every so many frames all the same.
 */
final class Behind {
    private final int frames;
    private final AnimationTimer clock;
    private boolean waits;
    private int passed;

    /**
     * Nothing waits yet.
     *
     * @param frames that it lags behind, 1 at least
     */
    Behind(int frames, Runnable work) {
        this.frames = frames;
        clock = new AnimationTimer() {
            @Override
            public void handle(long now) {
                if (passed == Behind.this.frames) {
                    end();
                    work.run();
                } else {
                    passed++;
                }
            }
        };
    }

    /** There is something to be done, unless it is waiting already. */
    void begin() {
        if (!waits) {
            waits = true;
            passed = 0;
            clock.start();
        }
    }

    /** Whether there is something still to be done. */
    boolean waits() {
        return waits;
    }

    /** There is nothing left to be done. */
    void end() {
        waits = false;
        clock.stop();
    }
}
