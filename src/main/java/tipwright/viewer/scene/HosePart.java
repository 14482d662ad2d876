// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.shape.MeshView;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.outline.Hoses;
import tipwright.viewer.dump.MachineState;

/** Hoses or cable, which bend as the actuator swings; their way is made up. */
final class HosePart {
    private static final int SIDES = 8;
    /** Drawn at least so thick that it can be followed with the eye, radius, m. */
    private static final double LEAST = 0.011;

    private final @Nullable Hoses hoses;
    private final MeshView view = new MeshView();
    private boolean shown = true;

    /** None yet; null: the machine has none. */
    HosePart(@Nullable Hoses hoses, Theme theme) {
        this.hoses = hoses;
        view.setMaterial(Surface.bright(theme.hose(), 0.25));
        view.setMouseTransparent(true);
        view.setVisible(false);
    }

    Node node() {
        return view;
    }

    /** Whether they are to be seen. */
    void setShown(boolean on) {
        shown = on;
        view.setVisible(on && view.getMesh() != null);
    }

    boolean shown() {
        return shown;
    }

    void show(MachineState now) {
        List<Mesh> all = new ArrayList<>();
        if (hoses != null && shown) {
            for (Hoses.Hose hose : hoses.at(now.configuration(false))) {
                all.add(Forms.wire(hose.points(), Math.max(LEAST, hose.radius()), SIDES));
            }
        }
        view.setVisible(!all.isEmpty());
        if (!all.isEmpty()) {
            view.setMesh(Surface.triangles(Forms.joined(all)));
        }
    }
}
