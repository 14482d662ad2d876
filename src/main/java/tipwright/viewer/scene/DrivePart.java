// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.MeshView;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.ActuatorShape;
import tipwright.viewer.dump.MachineState;

/**
 * The actuators: a tube at the frame end, and a rod, or stages, that come out of it as far as they can; what it cannot reach is
 * marked.
 */
final class DrivePart {
    private static final int ROUND = 20;

    private final List<PlacedActuator> actuators;
    private final MeshView tubes;
    private final MeshView rods;
    private final MeshView gaps;
    private final MeshView pins;
    private final Group all;

    DrivePart(List<PlacedActuator> actuators, Theme theme) {
        this.actuators = actuators;
        tubes = new MeshView();
        rods = new MeshView();
        gaps = new MeshView();
        pins = new MeshView();
        tubes.setMaterial(Surface.bright(theme.tube(), 0.35));
        rods.setMaterial(Surface.bright(theme.rod(), 0.9));
        gaps.setMaterial(Surface.glowing(theme.push()));
        pins.setMaterial(Surface.bright(theme.pin(), 0.4));
        all = new Group(tubes, rods, gaps, pins);
        all.setMouseTransparent(true);
    }

    Node node() {
        return all;
    }

    void show(MachineState now) {
        List<Mesh> tube = new ArrayList<>();
        List<Mesh> rod = new ArrayList<>();
        List<Mesh> gap = new ArrayList<>();
        List<Mesh> pin = new ArrayList<>();
        for (PlacedActuator placed : actuators) {
            Actuator a = placed.actuator();
            double z = placed.z();
            Vec2 line = now.tankPin().minus(now.framePin()).unit();
            double r = ActuatorShape.tubeRadius(a);
            double body = ActuatorShape.tubeLength(a);
            double reach = ActuatorShape.reach(a, now.length());
            tube.add(Forms.rod(at(now, line, 0.6 * r, z), at(now, line, body, z), r, ROUND));
            tube.add(Forms.rod(at(now, line, body - 0.02, z), at(now, line, body + 0.004, z), 1.18 * r, ROUND));
            tube.add(camera(now.framePin(), z, r));
            for (ActuatorShape.Piece p : ActuatorShape.out(a, now.length())) {
                rod.add(Forms.rod(at(now, line, p.from(), z), at(now, line, p.to(), z), p.radius(), ROUND));
            }
            rod.add(camera(now.tankPin(), z, 1.5 * ActuatorShape.rodRadius(a)));
            for (double s = reach + 0.02; s < now.length(); s += 0.04) {
                gap.add(Forms.ball(at(now, line, s, z), ActuatorShape.rodRadius(a), 10));
            }
            for (Vec2 p : List.of(now.framePin(), now.tankPin())) {
                pin.add(Forms.rod(space(p, z - 1.9 * r), space(p, z + 1.9 * r), Math.max(0.010, 0.4 * r), ROUND));
            }
        }
        set(tubes, tube);
        set(rods, rod);
        set(gaps, gap);
        set(pins, pin);
    }

    private static Mesh camera(Vec2 at, double z, double r) {
        return Forms.rod(space(at, z - 0.8 * r), space(at, z + 0.8 * r), 1.15 * r, ROUND);
    }

    private static void set(MeshView view, List<Mesh> parts) {
        view.setVisible(!parts.isEmpty());
        if (!parts.isEmpty()) {
            view.setMesh(Surface.triangles(Forms.joined(parts)));
        }
    }

    private static Vec3 at(MachineState now, Vec2 line, double along, double z) {
        return space(now.framePin().plus(line.times(along)), z);
    }

    private static Vec3 space(Vec2 p, double z) {
        return new Vec3(p.x(), p.y(), z);
    }
}
