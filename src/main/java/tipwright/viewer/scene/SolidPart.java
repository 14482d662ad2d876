// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.transform.Affine;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.BodyPosition;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Range;
import tipwright.geometry.Vec3;
import tipwright.outline.Form;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachinePart;
import tipwright.outline.PartKind;

/** Every part of fixed shape with its body: frame, stand, bearings, links, cradle, lugs, what is near; as the outlines have them. */
final class SolidPart {
    private static final double WALL = 0.006;
    private static final double LONG = 3;
    private static final Vec3 ALONG = new Vec3(1, 0, 0);
    private static final Vec3 UP = new Vec3(0, 1, 0);
    private static final Vec3 ACROSS = new Vec3(0, 0, 1);

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
                if (kind == PartKind.FRAME && body == 0 && !meshes.isEmpty()) {
                    group.getChildren().add(Surface.view(ends(machine), Surface.matt(theme.hollow())));
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

    /** Members and the cross member as hollow sections: the two ends of each that is long and straight are dark inside. Sketched. */
    private static Mesh ends(MachineOutline machine) {
        List<Mesh> all = new ArrayList<>();
        for (MachinePart part : machine.parts()) {
            boolean member = (part.kind() == PartKind.FRAME || part.kind() == PartKind.CROSS_MEMBER)
                    && part.form() instanceof Form.Drawn
                    && part.form().reach().size() == 4;
            if (member) {
                Mesh box = Forms.joined(part.form().bodies(machine.across()));
                ends(box.extent(ALONG), box.extent(UP), box.extent(ACROSS), all);
            }
        }
        return Forms.joined(all);
    }

    private static void ends(Range x, Range y, Range z, List<Mesh> all) {
        double tall = y.span() - 2 * WALL;
        if (z.span() > LONG * Math.max(x.span(), y.span()) && x.span() > 3 * WALL && tall > WALL) {
            Vec3 middle = new Vec3(mid(x), mid(y), 0);
            Vec3 out = new Vec3(0, 0, 1e-3);
            for (double end : new double[] {z.low(), z.high()}) {
                Vec3 at = middle.plus(ACROSS.times(end));
                all.add(Forms.beam(at.minus(out), at.plus(out), x.span() - 2 * WALL, tall, ALONG));
            }
        } else if (x.span() > LONG * Math.max(y.span(), z.span()) && z.span() > 3 * WALL && tall > WALL) {
            Vec3 middle = new Vec3(0, mid(y), mid(z));
            Vec3 out = new Vec3(1e-3, 0, 0);
            for (double end : new double[] {x.low(), x.high()}) {
                Vec3 at = middle.plus(ALONG.times(end));
                all.add(Forms.beam(at.minus(out), at.plus(out), z.span() - 2 * WALL, tall, ACROSS));
            }
        }
    }

    private static double mid(Range r) {
        return (r.low() + r.high()) / 2;
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

    void show(List<BodyPosition> bodies) {
        for (int i = 0; i < places.size(); i++) {
            BodyMover.place(places.get(i), bodies.get(i));
        }
    }
}
