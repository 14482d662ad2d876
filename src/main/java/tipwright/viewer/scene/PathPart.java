// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.MeshView;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.dump.Surroundings;

/** The path of the centre of mass, and the arcs of the tank's outermost points. */
final class PathPart {
    private final MeshView ball;
    private final Group all = new Group();
    private final double size;
    private final double zAcross;

    PathPart(DumpStates dump, Surroundings room, String loadCase, Theme theme) {
        size = room.radius() / 45;
        zAcross = room.high().z() + 0.1;
        List<Mesh> dots = new ArrayList<>();
        Vec3 last = null;
        for (Vec3 p : dump.centroids(loadCase)) {
            if (last == null || p.minus(last).norm() > 1.2 * size) {
                dots.add(Forms.ball(outside(p), 0.28 * size, 8));
                last = p;
            }
        }
        all.getChildren().add(Surface.view(Forms.joined(dots), Surface.glowing(theme.centroid())));
        List<Mesh> arcs = new ArrayList<>();
        for (Vec2 p : room.outermost()) {
            arc(dump, p, arcs);
        }
        if (!arcs.isEmpty()) {
            all.getChildren().add(Surface.view(Forms.joined(arcs), Surface.matt(theme.faint())));
        }
        ball = Surface.view(Forms.ball(Vec3.ZERO, size, 20), Surface.glowing(theme.centroid()));
        all.getChildren().add(ball);
        all.setMouseTransparent(true);
    }

    private void arc(DumpStates dump, Vec2 point, List<Mesh> dashes) {
        int steps = (int) Math.max(8, Math.toDegrees(dump.last() - dump.first()));
        Vec3 before = null;
        for (int i = 0; i <= steps; i++) {
            double tilt = dump.first() + (dump.last() - dump.first()) * i / steps;
            Vec2 at = dump.placements(tilt).get(dump.skeleton().tank()).place(point);
            Vec3 here = new Vec3(at.x(), at.y(), 0);
            if (before != null && i % 2 == 1 && here.minus(before).norm() > 1e-6) {
                dashes.add(Forms.rod(before, here, 0.14 * size, 6));
            }
            before = here;
        }
    }

    /** In front of the tank, where nothing hides it. */
    private Vec3 outside(Vec3 p) {
        return new Vec3(p.x(), p.y(), zAcross);
    }

    Node node() {
        return all;
    }

    /** Where the centre of mass is drawn, m. */
    Vec3 mark(MachineState now) {
        return outside(now.centroid());
    }

    void show(MachineState now) {
        Vec3 p = mark(now);
        ball.setTranslateX(p.x());
        ball.setTranslateY(p.y());
        ball.setTranslateZ(p.z());
    }
}
