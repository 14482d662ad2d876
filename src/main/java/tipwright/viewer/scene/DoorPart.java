// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Affine;
import javafx.scene.transform.Rotate;
import tipwright.design.tank.Door;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Tank;
import tipwright.geometry.Forms;
import tipwright.geometry.Vec3;
import tipwright.outline.DoorSwing;
import tipwright.outline.MachinePose;
import tipwright.viewer.dump.MachineState;

/** The doors: shut until their opening opens; then one that hinges above hangs free, any other stands open. */
final class DoorPart {
    private final List<Swinging> doors = new ArrayList<>();
    private final int tank;
    private final Affine place = new Affine();
    private final Group all = new Group();

    private record Swinging(Opening opening, Door door, Rotate turn) {}

    DoorPart(Tank tank, int body, Theme theme) {
        this.tank = body;
        for (Opening opening : tank.openings()) {
            Door door = opening.door();
            if (door == null || opening.rimPoints().size() < 3) {
                continue;
            }
            MeshView plate = Surface.view(
                    DoorSwing.plate(opening), Surface.bright(theme.tank().deriveColor(0, 1, 0.85, 1), 0.4));
            MeshView bar = Surface.view(hinge(opening, door), Surface.matt(theme.cradle()));
            Vec3 a = door.hingeAxis();
            Rotate turn = new Rotate(
                    0,
                    door.hinge().x(),
                    door.hinge().y(),
                    door.hinge().z(),
                    new javafx.geometry.Point3D(a.x(), a.y(), a.z()));
            MeshView latches = Surface.view(latches(door), Surface.bright(theme.rod(), 0.6));
            Group hung = new Group(plate, bar, latches);
            hung.getTransforms().add(turn);
            doors.add(new Swinging(opening, door, turn));
            all.getChildren().add(hung);
        }
        all.getTransforms().add(place);
    }

    /** The arms from the hinge line to the middle of the door. */
    private static tipwright.geometry.Mesh hinge(Opening opening, Door door) {
        Vec3 along = door.hingeAxis().unit();
        double half = 0.28 * Math.sqrt(opening.areaVector().norm());
        Vec3 normal = opening.areaVector().unit();
        Vec3 face = opening.middle().plus(normal.times(0.034));
        Vec3 top = door.hinge().plus(normal.times(normal.dot(face.minus(door.hinge()))));
        List<tipwright.geometry.Mesh> bars = new ArrayList<>();
        bars.add(Forms.rod(door.hinge().minus(along.times(half)), door.hinge().plus(along.times(half)), 0.014, 12));
        for (double s : new double[] {-0.8, 0.8}) {
            Vec3 shift = along.times(s * half);
            bars.add(Forms.beam(top.plus(shift), face.plus(shift), 0.03, 0.012, along));
            bars.add(Forms.rod(door.hinge().plus(shift), top.plus(shift), 0.01, 8));
        }
        return Forms.joined(bars);
    }

    /** A handle where each latch holds; several stand side by side along the hinge line, about their middle. */
    private static tipwright.geometry.Mesh latches(Door door) {
        Vec3 along = door.hingeAxis().unit();
        List<tipwright.geometry.Mesh> all = new ArrayList<>();
        double apart = Math.min(0.24, 0.5 / Math.max(1, door.latches() - 1));
        Vec3 out = door.latch().minus(door.hinge()).cross(along).unit();
        for (int i = 0; i < door.latches(); i++) {
            Vec3 at = door.latch().plus(along.times((i - (door.latches() - 1) / 2.0) * apart));
            Vec3 arm = door.latch().minus(door.hinge()).unit().times(0.05);
            all.add(Forms.beam(at.minus(arm), at.plus(arm), 0.03, 0.03, along));
            all.add(Forms.rod(at.minus(out.times(0.04)), at.plus(out.times(0.04)), 0.009, 10));
        }
        return Forms.joined(all);
    }

    Node node() {
        return all;
    }

    /**
     * Places the doors.
     *
     * @param shut whether all stay shut whatever the tilt
     */
    void show(MachineState now, boolean shut) {
        BodyMover.place(place, now.tank());
        MachinePose state = now.configuration(shut);
        for (Swinging s : doors) {
            s.turn.setAngle(Math.toDegrees(DoorSwing.angle(s.opening, s.door, tank, state)));
        }
    }
}
