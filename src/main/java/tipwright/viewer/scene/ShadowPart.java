// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.MeshView;
import tipwright.geometry.Forms;
import tipwright.geometry.Hull;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachinePart;
import tipwright.outline.MachinePose;
import tipwright.outline.ZRange;
import tipwright.viewer.dump.MachineState;

/** A soft shadow of the machine on the ground: darker and darker layers, the widest lowest, so that none shows through another. */
final class ShadowPart {
    private static final double[] SPREAD = {0.06, 0.03, 0.0};
    private static final double[] DARK = {0.06, 0.12, 0.18};
    private static final double LIFT = 0.0012;
    private static final int ROUND = 8;
    private static final Vec3 UP = new Vec3(0, 1, 0);

    /** How far the light throws a point for each metre over the ground. */
    private static final Vec2 THROW = new Vec2(-0.15, -0.25);

    private final MachineOutline machine;
    private final double ground;
    private final List<Thrower> throwing = new ArrayList<>();
    private final List<MeshView> layers = new ArrayList<>();
    private final Group all = new Group();

    /** A part that throws a shadow, with the corners around its side view in its own axes, m. */
    private record Thrower(MachinePart part, List<Vec2> corners) {}

    ShadowPart(MachineOutline machine, double ground, Theme theme) {
        this.machine = machine;
        this.ground = ground;
        for (MachinePart part : machine.parts()) {
            boolean big =
                    switch (part.kind()) {
                        case TANK, LINK, FRAME, REST, CROSS_MEMBER, WHEEL, OBSTACLE, CRADLE, TUBE -> true;
                        default -> false;
                    };
            List<Vec2> corners = big ? part.form().reach() : List.of();
            if (!corners.isEmpty()) {
                throwing.add(new Thrower(part, corners));
            }
        }
        for (double dark : DARK) {
            MeshView layer = new MeshView();
            layer.setMaterial(Surface.flat(theme.ground().interpolate(Color.BLACK, dark)));
            layers.add(layer);
        }
        all.getChildren().addAll(layers);
        all.setMouseTransparent(true);
    }

    Node node() {
        return all;
    }

    void show(MachineState now) {
        MachinePose pose = now.configuration(false);
        List<List<Vec2>> spots = throwing.stream().map(p -> spot(p, pose)).toList();
        for (int i = 0; i < SPREAD.length; i++) {
            List<Mesh> plates = new ArrayList<>();
            double y = ground + (i + 1) * LIFT;
            for (List<Vec2> spot : spots) {
                List<Vec3> outline = new ArrayList<>();
                for (Vec2 p : Hull.around(spread(spot, SPREAD[i]))) {
                    outline.add(0, new Vec3(p.x(), y, p.y()));
                }
                if (outline.size() > 2) {
                    plates.add(Forms.plate(outline, UP, 0.0004));
                }
            }
            layers.get(i).setMesh(Surface.triangles(Forms.joined(plates)));
        }
    }

    private List<Vec2> spot(Thrower thrower, MachinePose pose) {
        MachinePart part = thrower.part();
        ZRange z = part.form().z().orAcross(machine.across());
        List<Vec2> all = new ArrayList<>();
        for (Vec2 p : thrower.corners()) {
            Vec2 at = pose.axes(part).place(p);
            double high = at.y() - ground;
            all.add(new Vec2(at.x() + THROW.x() * high, z.from() + THROW.y() * high));
            all.add(new Vec2(at.x() + THROW.x() * high, z.to() + THROW.y() * high));
        }
        return Hull.around(all);
    }

    private static List<Vec2> spread(List<Vec2> spot, double by) {
        if (by == 0) {
            return spot;
        }
        List<Vec2> all = new ArrayList<>();
        for (Vec2 p : spot) {
            for (int i = 0; i < ROUND; i++) {
                double turn = 2 * Math.PI * i / ROUND;
                all.add(p.plus(new Vec2(by * Math.cos(turn), by * Math.sin(turn))));
            }
        }
        return all;
    }
}
