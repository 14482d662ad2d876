// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.MeshView;
import tipwright.analysis.BodyPosition;
import tipwright.design.Design;
import tipwright.design.drive.Anchor;
import tipwright.design.drive.Assist;
import tipwright.design.drive.Counterweight;
import tipwright.design.drive.ExtensionSpring;
import tipwright.design.drive.GasSpring;
import tipwright.design.drive.LineSpring;
import tipwright.design.drive.TorsionSpring;
import tipwright.design.joint.Support;
import tipwright.geometry.Coil;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.outline.AssistOutline;
import tipwright.viewer.dump.MachineState;

/** Springs and weights between their real points; how thick they are is only sketched. */
final class AssistPart {
    private static final int ROUND = 18;
    private static final double COIL = 0.036;

    private final Design design;
    private final Skeleton skeleton;
    private final MeshView coils = new MeshView();
    private final MeshView tubes = new MeshView();
    private final MeshView rods = new MeshView();
    private final MeshView blocks = new MeshView();
    private final Group all = new Group(coils, tubes, rods, blocks);

    AssistPart(Design design, Skeleton skeleton, Theme theme) {
        this.design = design;
        this.skeleton = skeleton;
        coils.setMaterial(Surface.bright(theme.rod(), 0.6));
        tubes.setMaterial(Surface.bright(theme.spring(), 0.3));
        rods.setMaterial(Surface.bright(theme.rod(), 0.9));
        blocks.setMaterial(Surface.bright(theme.weight(), 0.2));
        all.setMouseTransparent(true);
    }

    Node node() {
        return all;
    }

    void show(MachineState now) {
        List<Mesh> coil = new ArrayList<>();
        List<Mesh> tube = new ArrayList<>();
        List<Mesh> rod = new ArrayList<>();
        List<Mesh> block = new ArrayList<>();
        for (Assist assist : design.assists()) {
            if (assist instanceof LineSpring line) {
                Vec3 a = end(now, line.from(), line.z());
                Vec3 b = end(now, line.to(), line.z());
                if (assist instanceof GasSpring gas) {
                    gas(gas, a, b, tube, rod);
                } else if (assist instanceof ExtensionSpring spring) {
                    double r = AssistOutline.coil(spring);
                    List<Vec3> wound = Coil.along(a, b, r, 1.6 * r, AssistOutline.turns(spring));
                    coil.add(Forms.wire(wound, 0.17 * r, 8));
                    rod.add(pin(a, 0.9 * r));
                    rod.add(pin(b, 0.9 * r));
                }
            } else if (assist instanceof TorsionSpring torsion) {
                skeleton.joints().stream()
                        .filter(j -> j.name().equals(torsion.pin()))
                        .forEach(j -> coil.add(wound(now, j)));
            } else if (assist instanceof Counterweight weight && !AssistOutline.ofLink(design, weight)) {
                block.add(block(now, weight));
            }
        }
        set(coils, coil);
        set(tubes, tube);
        set(rods, rod);
        set(blocks, block);
    }

    private static void gas(GasSpring gas, Vec3 a, Vec3 b, List<Mesh> tube, List<Mesh> rod) {
        double r = AssistOutline.tube(gas);
        Vec3 u = b.minus(a).unit();
        double length = b.minus(a).norm();
        double body = Math.min(AssistOutline.tubeLength(gas), length);
        tube.add(Forms.rod(a.plus(u.times(1.2 * r)), a.plus(u.times(body)), r, ROUND));
        if (length > body) {
            rod.add(Forms.rod(a.plus(u.times(body)), b, 0.45 * r, ROUND));
        }
        rod.add(pin(a, 1.4 * r));
        rod.add(pin(b, 1.4 * r));
    }

    private static Mesh pin(Vec3 at, double half) {
        Vec3 z = new Vec3(0, 0, half);
        return Forms.rod(at.minus(z), at.plus(z), 0.012, ROUND);
    }

    /** Around its pin, inside the first bearing. */
    private Mesh wound(MachineState now, Joint joint) {
        List<Support> bearings = design.pivot().bearings();
        double low = Math.min(bearings.get(0).z(), bearings.get(1).z());
        double span = Math.abs(bearings.get(1).z() - bearings.get(0).z());
        double from = low + 0.3 * span;
        BodyPosition a = now.bodies().get(joint.a());
        BodyPosition b = now.bodies().get(joint.b());
        Vec2 pin = a.place(joint.at());
        double first = -Math.PI / 2 - a.turn();
        double last = -Math.PI - b.turn();
        double to = from + Math.min(0.07, 0.25 * span);
        return Forms.wire(Coil.around(pin, from, to, COIL, 3.2 * COIL, first, last, 5), 0.006, 8);
    }

    private Mesh block(MachineState now, Counterweight weight) {
        BodyPosition placed = now.bodies().get(skeleton.bodies().indexOf(weight.body()));
        double edge = AssistOutline.edge(weight);
        Vec3 half = new Vec3(edge / 2, 0, 0);
        Vec3 along = placed.place(weight.centre().plus(half));
        Vec3 back = placed.place(weight.centre().minus(half));
        return Forms.beam(back, along, edge, edge, new Vec3(0, 0, 1));
    }

    private Vec3 end(MachineState now, Anchor anchor, double z) {
        Vec2 p = now.bodies().get(skeleton.bodies().indexOf(anchor.body())).place(anchor.at());
        return new Vec3(p.x(), p.y(), z);
    }

    private static void set(MeshView view, List<Mesh> parts) {
        view.setVisible(!parts.isEmpty());
        if (!parts.isEmpty()) {
            view.setMesh(Surface.triangles(Forms.joined(parts)));
        }
    }
}
