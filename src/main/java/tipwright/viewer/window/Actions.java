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

    void lookFrom(Camera.Place place);
}
