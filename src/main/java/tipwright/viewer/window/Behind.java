// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import javafx.animation.AnimationTimer;

/**
 * What may lag some frames behind the numbers: it is done when the frame is out that has the numbers, so that they do not wait for it.
 * While one edit follows the other it is done every so many frames all the same.
 */
final class Behind {
    private final AnimationTimer clock;
    private boolean waits;
    private int left;

    Behind(Runnable work) {
        clock = new AnimationTimer() {
            @Override
            public void handle(long now) {
                if (left == 0) {
                    end();
                    work.run();
                } else {
                    left--;
                }
            }
        };
    }

    /**
     * There is something to be done; if it is waiting already, it is done when it would have been.
     *
     * @param frames that it lags behind, 1 at least
     */
    void begin(int frames) {
        if (!waits) {
            waits = true;
            left = frames;
            clock.start();
        }
    }

    /** What waits is done so many frames from now at the latest, 1 at least. */
    void hasten(int frames) {
        left = Math.min(left, frames);
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
