// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import tipwright.viewer.scene.Camera;

/** What buttons and keys do. */
interface Actions {
    void undo();

    void redo();

    void save();

    void units();

    void theme();

    void keys();

    /** Larger text (1), smaller (-1), as usual (0). */
    void textSize(int way);

    /** Closes what was opened last; false when nothing is open. */
    boolean close();

    /** Back to where a machine is begun or opened. */
    void begin();

    /** Shows hoses and cables, or takes them out of the picture. */
    void hoses();

    /** Measures from the pin that was chosen last. */
    void measure();

    void lookFrom(Camera.Place place);
}
