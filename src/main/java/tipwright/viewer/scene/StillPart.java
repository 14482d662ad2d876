// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import tipwright.design.Design;
import tipwright.design.around.Footing;
import tipwright.design.around.Frame;
import tipwright.design.around.SidePart;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Polyhedron;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.viewer.dump.Surroundings;

/** The frame's members and the obstacles as the design gives them: outlines drawn out along z. */
final class StillPart {
    private final Group all = new Group();

    StillPart(Design design, Surroundings room, Theme theme) {
        Frame frame = design.frame();
        add(frame == null ? List.of() : frame.members(), room, Surface.bright(theme.frame(), 0.2));
        add(design.obstacles(), room, Surface.matt(theme.obstacle()));
        legs(design, room, theme);
        all.setMouseTransparent(true);
    }

    /** Sketches what the frame stands on: a strut from each support to the nearest place under the longest member. */
    private void legs(Design design, Surroundings room, Theme theme) {
        Footing footing = design.supports();
        Frame frame = design.frame();
        if (footing == null || frame == null || frame.members().isEmpty()) {
            return;
        }
        SidePart rail = Collections.max(
                frame.members(), Comparator.comparingDouble(part -> across(part, 1) - across(part, -1)));
        double top = rail.outline().stream().mapToDouble(Vec2::y).min().orElse(0);
        double wide = 0;
        for (SidePart part : frame.members()) {
            for (double z : part.z()) {
                wide = Math.max(wide, Math.abs(z));
            }
        }
        Double given = footing.y();
        double floor = given == null ? room.ground() : given;
        List<Mesh> legs = new ArrayList<>();
        for (Vec2 foot : footing.outline()) {
            Vec3 base = new Vec3(foot.x(), floor, foot.y());
            double x = Math.max(across(rail, -1), Math.min(across(rail, 1), foot.x()));
            double z = Math.max(-wide, Math.min(wide, foot.y()));
            legs.add(Forms.rod(base, base.plus(new Vec3(0, 0.02, 0)), 0.09, 20));
            if (top > floor + 0.03) {
                legs.add(Forms.rod(base, new Vec3(x, top, z), 0.028, 14));
            }
        }
        all.getChildren().add(Surface.view(Forms.joined(legs), Surface.bright(theme.cradle(), 0.2)));
    }

    /** Largest (1) or smallest (-1) x of a part, m. */
    private static double across(SidePart part, int side) {
        return side
                * part.outline().stream().mapToDouble(p -> side * p.x()).max().orElse(0);
    }

    private void add(List<SidePart> parts, Surroundings room, javafx.scene.paint.PhongMaterial material) {
        List<Mesh> meshes = new ArrayList<>();
        for (SidePart part : parts) {
            double low = part.z().isEmpty()
                    ? room.low().z()
                    : Math.min(part.z().get(0), part.z().get(1));
            double high = part.z().isEmpty()
                    ? room.high().z()
                    : Math.max(part.z().get(0), part.z().get(1));
            meshes.add(Polyhedron.prism(part.outline(), Math.max(0.005, high - low), (low + high) / 2)
                    .mesh(0.01));
        }
        if (!meshes.isEmpty()) {
            all.getChildren().add(Surface.view(Forms.joined(meshes), material));
        }
    }

    /** Whether the design tells its frame, so that none has to be made up. */
    static boolean given(Design design) {
        Frame frame = design.frame();
        return frame != null && !frame.members().isEmpty();
    }

    Node node() {
        return all;
    }
}
