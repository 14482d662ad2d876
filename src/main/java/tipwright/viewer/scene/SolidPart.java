// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.transform.Affine;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachinePart;
import tipwright.outline.PartKind;
import tipwright.viewer.dump.DrawnPosition;

/** Every part of fixed shape with its body: frame, stand, bearings, links, cradle, lugs, what is near; as the outlines have them. */
final class SolidPart {
    private final List<Affine> places = new ArrayList<>();
    private final Group all = new Group();

    /**
     * As stowed.
     *
     * @param bodies how many there are
     */
    SolidPart(MachineOutline machine, int bodies, Theme theme) {
        for (int body = 0; body < bodies; body++) {
            Group group = new Group();
            for (PartKind kind : PartKind.values()) {
                PhongMaterial material = material(kind, theme);
                List<Mesh> meshes = new ArrayList<>();
                for (MachinePart part : machine.parts()) {
                    if (material != null && part.kind() == kind && part.body() == body) {
                        meshes.addAll(part.form().bodies(machine.across()));
                    }
                }
                if (material != null && !meshes.isEmpty()) {
                    group.getChildren().add(Surface.view(Forms.joined(meshes), material));
                }
            }
            Affine place = new Affine();
            places.add(place);
            group.getTransforms().add(place);
            all.getChildren().add(group);
        }
        all.setMouseTransparent(true);
    }

    /** Null: is drawn by a part of its own, or not at all. */
    private static @Nullable PhongMaterial material(PartKind kind, Theme theme) {
        return switch (kind) {
            case FRAME, REST, CROSS_MEMBER, STAND -> Surface.bright(theme.frame(), 0.2);
            case CRADLE, LINK, LUG, FOOT, ATTACHED -> Surface.bright(theme.cradle(), 0.2);
            case BEARING -> Surface.bright(theme.bearing(), 0.3);
            case SHAFT -> Surface.bright(theme.rod(), 0.8);
            case PIN -> Surface.bright(theme.pin(), 0.4);
            case OBSTACLE -> Surface.matt(theme.obstacle());
            default -> null;
        };
    }

    Node node() {
        return all;
    }

    void show(List<DrawnPosition> bodies) {
        for (int i = 0; i < places.size(); i++) {
            BodyMover.place(places.get(i), bodies.get(i));
        }
    }
}
