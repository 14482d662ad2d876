// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.List;

/** What has been opened over the picture, in order, so that Esc closes what was opened last. */
final class Opened {
    private record One(Object what, Runnable close) {}

    private final List<One> all = new ArrayList<>();

    /** Something has been opened; the same again goes to the top. */
    void opened(Object what, Runnable close) {
        closed(what);
        all.add(new One(what, close));
    }

    /** Something has been closed. */
    void closed(Object what) {
        all.removeIf(one -> one.what.equals(what));
    }

    /** Whether it is open. */
    boolean isOpen(Object what) {
        return all.stream().anyMatch(one -> one.what.equals(what));
    }

    /** Closes what was opened last; false when nothing is open. */
    boolean closeLast() {
        if (all.isEmpty()) {
            return false;
        }
        all.remove(all.size() - 1).close.run();
        return true;
    }
}
