// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Affine;
import tipwright.analysis.BodyPosition;
import tipwright.check.rule.Verdict;
import tipwright.geometry.Extent;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Shading;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachinePart;
import tipwright.outline.PartKind;
import tipwright.viewer.dump.MachineState;

/** The parts that are marked, painted over what they are, and where their labels belong. */
final class MarkPart {
    /** How far the paint stands off, m. */
    private static final double COAT = 0.003;

    private static final double SEE_THROUGH = 0.42;

    private final MachineOutline machine;
    private final Theme theme;
    private final Group solid = new Group();
    private final Group clear = new Group();
    private final List<Painted> painted = new ArrayList<>();

    /** A part with its mark. */
    private record Painted(MachinePart part, Marked mark, Vec3 middle, Affine place) {}

    /**
     * A label.
     *
     * @param at where it belongs, m
     */
    record Label(Marked mark, Vec3 at) {}

    MarkPart(MachineOutline machine, Theme theme) {
        this.machine = machine;
        this.theme = theme;
        solid.setMouseTransparent(true);
        clear.setMouseTransparent(true);
    }

    /** Paint that hides, to be drawn before what is seen through. */
    Node solid() {
        return solid;
    }

    /** Paint that the contents shine through, to be drawn last. */
    Node clear() {
        return clear;
    }

    void mark(List<Marked> marks) {
        solid.getChildren().clear();
        clear.getChildren().clear();
        painted.clear();
        for (Marked mark : marks) {
            for (MachinePart part : machine.parts()) {
                if (part.id().equals(mark.partId())) {
                    paint(part, mark);
                }
            }
        }
    }

    private void paint(MachinePart part, Marked mark) {
        Affine place = new Affine();
        Color colour = theme.verdict(mark.failing() ? Verdict.FAIL : Verdict.CLOSE);
        boolean through = part.kind() == PartKind.TANK;
        Mesh mesh = grown(shape(part));
        if (mesh.triangles() > 0) {
            MeshView view = Surface.view(mesh, through ? Surface.clear(colour, SEE_THROUGH) : Surface.glowing(colour));
            view.getTransforms().add(place);
            (through ? clear : solid).getChildren().add(view);
        }
        painted.add(new Painted(part, mark, middle(part), place));
    }

    /** Halves of an actuator are round; a line gets a thickness. */
    private Mesh shape(MachinePart part) {
        List<Vec2> reach = part.form().reach();
        if (part.kind().actuator()) {
            double half = (part.form().z().to() - part.form().z().from()) / 2;
            double z = (part.form().z().to() + part.form().z().from()) / 2;
            Extent extent = Extent.of(reach);
            return Forms.rod(
                    new Vec3(extent.low().x(), 0, z), new Vec3(extent.high().x(), 0, z), half, 20);
        }
        if (part.form() instanceof tipwright.outline.Form.Wire wire) {
            List<Vec3> line = new ArrayList<>(wire.points());
            if (wire.closed()) {
                line.add(line.get(0));
            }
            return Forms.wire(line, 4 * COAT, 8);
        }
        return Forms.joined(part.form().bodies(machine.across()));
    }

    private Vec3 middle(MachinePart part) {
        Mesh mesh = shape(part);
        Vec3 sum = Vec3.ZERO;
        int n = mesh.xyz().length / 3;
        for (int i = 0; i < n; i++) {
            sum = sum.plus(mesh.vertex(i));
        }
        return sum.times(1.0 / Math.max(1, n));
    }

    /** Every vertex moved out along its normal. */
    private static Mesh grown(Mesh mesh) {
        double[] xyz = mesh.xyz().clone();
        float[] normals = Shading.normals(mesh, Math.PI);
        int[] corners = mesh.corners();
        boolean[] moved = new boolean[xyz.length / 3];
        for (int c = 0; c < corners.length; c++) {
            if (!moved[corners[c]]) {
                moved[corners[c]] = true;
                for (int axis = 0; axis < 3; axis++) {
                    xyz[3 * corners[c] + axis] += COAT * normals[3 * c + axis];
                }
            }
        }
        return new Mesh(xyz, corners);
    }

    void show(MachineState now) {
        for (Painted p : painted) {
            BodyMover.place(p.place, now.configuration(false).axes(p.part));
        }
    }

    /** Labels, the worst first; several parts with one label have it once. */
    List<Label> labels(MachineState now) {
        List<Label> all = new ArrayList<>();
        for (Painted p : painted) {
            BodyPosition axes = now.configuration(false).axes(p.part);
            Vec2 at = axes.place(p.middle.xy());
            if (all.stream().noneMatch(l -> l.mark.label().equals(p.mark.label()))) {
                all.add(new Label(p.mark, new Vec3(at.x(), at.y(), p.middle.z())));
            }
        }
        return all;
    }
}
