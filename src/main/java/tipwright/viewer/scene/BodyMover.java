// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import javafx.scene.transform.Affine;
import tipwright.analysis.BodyPosition;
import tipwright.geometry.Vec2;

/** Moves what is drawn stowed to where its body is. */
final class BodyMover {
    private BodyMover() {}

    /** Sets a transform to a placement. */
    static void place(Affine affine, BodyPosition placed) {
        double c = Math.cos(placed.turn());
        double s = Math.sin(placed.turn());
        Vec2 shift = placed.origin();
        affine.setToTransform(c, s, 0, shift.x(), -s, c, 0, shift.y(), 0, 0, 1, 0);
    }
}
