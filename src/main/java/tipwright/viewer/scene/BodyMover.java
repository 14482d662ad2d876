// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import javafx.scene.transform.Affine;
import tipwright.analysis.BodyPosition;
import tipwright.geometry.Vec2;
import tipwright.viewer.dump.DrawnPosition;

/** Moves what is drawn stowed to where its body is. */
final class BodyMover {
    private BodyMover() {}

    /** Sets a transform to a placement. */
    static void place(Affine affine, DrawnPosition placed) {
        place(affine, placed.turn(), placed.shift());
    }

    /** Sets a transform to a placement. */
    static void place(Affine affine, BodyPosition placed) {
        place(affine, placed.turn(), placed.origin());
    }

    private static void place(Affine affine, double turn, Vec2 shift) {
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        affine.setToTransform(c, s, 0, shift.x(), -s, c, 0, shift.y(), 0, 0, 1, 0);
    }
}
