// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.MeshView;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.Support;
import tipwright.geometry.Forms;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.ActuatorShape;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.dump.MachineState;

/** Force arrows: of the actuators on the tank, and of the tank on each bearing; all to one scale. */
final class ArrowPart {
    private static final double LEAST = 0.01;

    private final Design design;
    private static final double POUND_FORCE = 4.4482216152605;

    /** m. */
    private static final double FOOT = 0.3048;

    private final double scale;
    private final double thick;
    private final List<MeshView> pushes = new ArrayList<>();
    private final List<MeshView> loads = new ArrayList<>();
    private final Group all = new Group();

    /** A tail and a tip in space, m. */
    record Shaft(Vec3 tail, Vec3 tip) {}

    /**
     * Arrows.
     *
     * @param scale m per N
     * @param thick radius, m
     */
    ArrowPart(Design design, double scale, double thick, Theme theme) {
        this.design = design;
        this.scale = scale;
        this.thick = thick;
        design.drive().actuators().forEach(a -> pushes.add(arrow(theme.push())));
        design.pivot().bearings().forEach(s -> loads.add(arrow(theme.bearing())));
        all.setMouseTransparent(true);
    }

    /**
     * What an arrow of a metre stands for, N: of what is told, force for each metre or foot of arrow, one, two or five times a power of
     * ten.
     *
     * @param most not above this, N/m
     */
    static double scale(double most, UnitSystem units) {
        double unit = units == UnitSystem.US ? POUND_FORCE / FOOT : 1;
        double ten = Math.pow(10, Math.floor(Math.log10(most / unit)));
        double told = most / unit / ten;
        return unit * ten * (told >= 5 ? 5 : told >= 2 ? 2 : 1);
    }

    /** Of that force for a metre of arrow, N, what is told: for a metre or for a foot, N. */
    static double told(double perMetre, UnitSystem units) {
        return perMetre * (units == UnitSystem.US ? FOOT : 1);
    }

    private MeshView arrow(javafx.scene.paint.Color colour) {
        MeshView view = new MeshView();
        view.setMaterial(Surface.glowing(colour));
        all.getChildren().add(view);
        return view;
    }

    Node node() {
        return all;
    }

    void show(MachineState now) {
        List<Shaft> forces = pushes(now);
        for (int i = 0; i < forces.size(); i++) {
            set(pushes.get(i), forces.get(i));
        }
        List<Shaft> bearings = loads(now);
        for (int i = 0; i < bearings.size(); i++) {
            set(loads.get(i), bearings.get(i));
        }
    }

    /** The actuators' arrows, beside their rods so that both can be seen; a push has its tip at the tank pin. */
    List<Shaft> pushes(MachineState now) {
        List<Shaft> all = new ArrayList<>();
        List<PlacedActuator> actuators = design.drive().actuators();
        double force = now.rest().force() / actuators.size();
        Vec2 line = now.tankPin().minus(now.framePin()).unit();
        for (PlacedActuator a : actuators) {
            Vec2 beside =
                    new Vec2(-line.y(), line.x()).times(1.4 * ActuatorShape.tubeRadius(a.actuator()) + 2.6 * thick);
            Vec2 near = now.tankPin().plus(beside);
            Vec2 far = near.minus(line.times(Math.abs(force) * scale));
            Vec3 at = new Vec3(near.x(), near.y(), a.z());
            Vec3 away = new Vec3(far.x(), far.y(), a.z());
            all.add(force >= 0 ? new Shaft(away, at) : new Shaft(at, away));
        }
        return all;
    }

    /** The bearings' arrows, outside the housings. */
    List<Shaft> loads(MachineState now) {
        List<Shaft> all = new ArrayList<>();
        Vec2 pivot = design.pivot().at();
        List<Support> supports = design.pivot().bearings();
        double middle = (supports.get(0).z() + supports.get(1).z()) / 2;
        for (int i = 0; i < supports.size(); i++) {
            double z = supports.get(i).z();
            Vec3 tail = new Vec3(pivot.x(), pivot.y(), z + Math.signum(z - middle) * (0.05 + 2 * thick));
            all.add(new Shaft(tail, tail.plus(now.rest().bearings().get(i).times(scale))));
        }
        return all;
    }

    private void set(MeshView view, Shaft arrow) {
        boolean seen = arrow.tip.minus(arrow.tail).norm() > LEAST;
        view.setVisible(seen);
        if (seen) {
            view.setMesh(Surface.triangles(Forms.arrow(arrow.tail, arrow.tip, thick, 16)));
        }
    }
}
