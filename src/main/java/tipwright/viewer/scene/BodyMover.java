// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import javafx.scene.transform.Affine;
import tipwright.viewer.dump.DrawnPosition;

/** Moves what is drawn stowed to where its body is. */
final class BodyMover {
    private BodyMover() {}

    /** Sets a transform to a placement. */
    static void place(Affine affine, DrawnPosition placed) {
        double c = Math.cos(placed.turn());
        double s = Math.sin(placed.turn());
        affine.setToTransform(
                c, s, 0, placed.shift().x(), -s, c, 0, placed.shift().y(), 0, 0, 1, 0);
    }
}
