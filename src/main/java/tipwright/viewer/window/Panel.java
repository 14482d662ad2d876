// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import tipwright.viewer.dump.Instant;

/** A part of the window that shows the desk. */
interface Panel {
    /** The design, the load case or the units have changed. */
    void renew();

    /** The machine has moved. */
    void move(Instant now);
}
