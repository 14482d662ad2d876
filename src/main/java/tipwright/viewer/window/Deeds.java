// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import tipwright.viewer.scene.Eye;

/** What buttons and keys do. */
interface Deeds {
    void undo();

    void redo();

    void save();

    void units();

    void theme();

    void keys();

    void lookFrom(Eye.Place place);
}
