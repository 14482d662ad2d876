// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import tipwright.viewer.dump.MachineState;

/** A part of the window that shows the shown. */
interface Panel {
    /** The design, the load case, the units, the theme or the size of the text have changed. */
    void renew();

    /** The machine has moved. */
    void move(MachineState now);

    /** More of the answer is known than before. */
    default void judged() {}
}
