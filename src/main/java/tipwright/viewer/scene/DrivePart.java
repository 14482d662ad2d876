// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.MeshView;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.HydraulicActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rod;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.actuator.Tube;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.viewer.dump.Instant;

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

    /** Length of the tube from the pin, m. */
    static double tubeLength(Actuator actuator) {
        Tube tube = actuator.tube();
        return tube != null ? Math.min(tube.length(), actuator.closed()) : 0.88 * actuator.closed();
    }

    /** Outside radius of the tube, m: as given, or as such a tube commonly is. */
    static double tubeRadius(Actuator actuator) {
        Tube tube = actuator.tube();
        if (tube != null) {
            return tube.outside() / 2;
        }
        if (actuator instanceof TelescopicCylinder t) {
            return t.stages().get(0).diameter() / 2 + 0.008;
        }
        if (actuator instanceof HydraulicActuator h) {
            return h.bore() / 2 + 0.006;
        }
        return Math.max(0.022, 1.6 * rodRadius(actuator));
    }

    /** The stages around the narrowest one; none where there is a plain rod. */
    private static List<TelescopicCylinder.Stage> outer(Actuator actuator) {
        return actuator instanceof TelescopicCylinder t
                ? t.stages().subList(0, t.stages().size() - 1)
                : List.of();
    }

    private static double rodRadius(Actuator actuator) {
        if (actuator instanceof TelescopicCylinder t) {
            return t.stages().get(t.stages().size() - 1).diameter() / 2;
        }
        Rod rod = actuator.rod();
        return rod != null ? rod.diameter() / 2 : 0.012;
    }

    void show(Instant now) {
        List<Mesh> tube = new ArrayList<>();
        List<Mesh> rod = new ArrayList<>();
        List<Mesh> gap = new ArrayList<>();
        List<Mesh> pin = new ArrayList<>();
        for (PlacedActuator placed : actuators) {
            Actuator a = placed.actuator();
            double z = placed.z();
            Vec2 line = now.tankPin().minus(now.framePin()).unit();
            double r = tubeRadius(a);
            double body = tubeLength(a);
            double reach = Math.min(now.length(), a.closed() + a.stroke());
            tube.add(Forms.rod(at(now, line, 0.6 * r, z), at(now, line, body, z), r, ROUND));
            tube.add(Forms.rod(at(now, line, body - 0.02, z), at(now, line, body + 0.004, z), 1.18 * r, ROUND));
            tube.add(eye(now.framePin(), z, r));
            double start = body;
            double out = reach - a.closed();
            for (TelescopicCylinder.Stage s : outer(a)) {
                double end = start + Math.max(0, Math.min(s.stroke(), out));
                if (end > start) {
                    rod.add(Forms.rod(at(now, line, start, z), at(now, line, end, z), s.diameter() / 2, ROUND));
                }
                start = end;
                out -= s.stroke();
            }
            if (reach > start) {
                rod.add(Forms.rod(at(now, line, start, z), at(now, line, reach, z), rodRadius(a), ROUND));
            }
            rod.add(eye(now.tankPin(), z, 1.5 * rodRadius(a)));
            for (double s = reach + 0.02; s < now.length(); s += 0.04) {
                gap.add(Forms.ball(at(now, line, s, z), rodRadius(a), 10));
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

    private static Mesh eye(Vec2 at, double z, double r) {
        return Forms.rod(space(at, z - 0.8 * r), space(at, z + 0.8 * r), 1.15 * r, ROUND);
    }

    private static void set(MeshView view, List<Mesh> parts) {
        view.setVisible(!parts.isEmpty());
        if (!parts.isEmpty()) {
            view.setMesh(Surface.triangles(Forms.joined(parts)));
        }
    }

    private static Vec3 at(Instant now, Vec2 line, double along, double z) {
        return space(now.framePin().plus(line.times(along)), z);
    }

    private static Vec3 space(Vec2 p, double z) {
        return new Vec3(p.x(), p.y(), z);
    }
}
