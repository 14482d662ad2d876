// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.MeshView;
import tipwright.geometry.Forms;
import tipwright.geometry.Hull;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.dump.Surroundings;

/** The ground with a half-metre grid, the tank's shadow, a bar one metre long, and a person to compare with. */
final class YardPart {
    /** Height of the person, m. */
    static final double PERSON = 1.75;

    private static final double GRID = 0.5;
    private static final Vec3 UP = new Vec3(0, 1, 0);

    private final Surroundings room;
    private final MeshView shadow = new MeshView();
    private final Group all = new Group();

    YardPart(Surroundings room, Theme theme) {
        this.room = room;
        double y = room.ground();
        double west = GRID * Math.floor((room.low().x() - 0.85) / GRID);
        double east = GRID * Math.ceil((room.high().x() + 0.7) / GRID);
        double far = GRID * Math.floor((room.low().z() - 0.8) / GRID);
        double near = GRID * Math.ceil((room.high().z() + 0.6) / GRID);
        Mesh slab = Forms.beam(
                new Vec3(west, y - 0.02, (far + near) / 2),
                new Vec3(east, y - 0.02, (far + near) / 2),
                near - far,
                0.04,
                new Vec3(0, 0, 1));
        List<Mesh> lines = new ArrayList<>();
        for (double x = west; x < east + 1e-9; x += GRID) {
            lines.add(Forms.beam(new Vec3(x, y, far), new Vec3(x, y, near), 0.006, 0.004, new Vec3(1, 0, 0)));
        }
        for (double z = far; z < near + 1e-9; z += GRID) {
            lines.add(Forms.beam(new Vec3(west, y, z), new Vec3(east, y, z), 0.006, 0.004, new Vec3(0, 0, 1)));
        }
        all.getChildren().add(Surface.view(slab, Surface.matt(theme.ground())));
        all.getChildren().add(Surface.view(Forms.joined(lines), Surface.matt(theme.line())));
        shadow.setMaterial(Surface.matt(theme.ground().interpolate(javafx.scene.paint.Color.BLACK, 0.45)));
        all.getChildren().add(shadow);
        bar(theme);
        Vec3 feet = new Vec3(
                room.low().x() - 0.55,
                y,
                room.middle().z() + 0.25 * (room.high().z() - room.low().z()));
        all.getChildren().add(Surface.view(person(feet), Surface.matt(theme.figure())));
        all.setMouseTransparent(true);
    }

    /** One metre in ten parts along the near edge. */
    private void bar(Theme theme) {
        List<Mesh> dark = new ArrayList<>();
        List<Mesh> light = new ArrayList<>();
        Vec3 start = barStart();
        for (int i = 0; i < 10; i++) {
            Vec3 a = start.plus(new Vec3(0.1 * i, 0, 0));
            Mesh piece = Forms.beam(a, a.plus(new Vec3(0.1, 0, 0)), 0.05, 0.02, new Vec3(0, 0, 1));
            (i % 2 == 0 ? dark : light).add(piece);
        }
        all.getChildren().add(Surface.view(Forms.joined(dark), Surface.matt(theme.ink())));
        all.getChildren().add(Surface.view(Forms.joined(light), Surface.matt(theme.push())));
    }

    /** Where the metre bar starts, m; it runs along x. */
    Vec3 barStart() {
        double x = GRID * Math.round((room.middle().x() - 0.5) / GRID);
        return new Vec3(x, room.ground() + 0.012, GRID * Math.ceil((room.high().z() + 0.6) / GRID) - 0.12);
    }

    /** Smallest corner of the yard, m. */
    Vec3 low() {
        return new Vec3(room.low().x() - 0.7, room.ground(), room.low().z() - 0.2);
    }

    /** Largest corner of what is to be seen, m. */
    Vec3 high() {
        return new Vec3(
                room.high().x() + 0.45,
                Math.max(room.high().y(), room.ground() + PERSON),
                room.high().z() + 0.5);
    }

    private static Mesh person(Vec3 feet) {
        List<Mesh> parts = new ArrayList<>();
        for (double side : new double[] {-0.09, 0.09}) {
            Vec3 leg = feet.plus(new Vec3(0, 0, side));
            parts.add(Forms.rod(leg, leg.plus(new Vec3(0, 0.86, -side * 0.2)), 0.062, 14));
            Vec3 shoulder = feet.plus(new Vec3(0, 1.40, 2.1 * side));
            parts.add(Forms.rod(shoulder, shoulder.plus(new Vec3(0.05, -0.60, 0.4 * side)), 0.038, 12));
        }
        parts.add(Forms.rod(feet.plus(UP.times(0.80)), feet.plus(UP.times(1.44)), 0.13, 20));
        parts.add(Forms.ball(feet.plus(UP.times(1.44)), 0.13, 16));
        parts.add(Forms.ball(feet.plus(UP.times(PERSON - 0.105)), 0.105, 18));
        return Forms.joined(parts);
    }

    Node node() {
        return all;
    }

    void show(MachineState now) {
        List<Vec2> corners = new ArrayList<>();
        for (Vec2 p : room.outline()) {
            Vec2 at = now.tank().of(p);
            double high = at.y() - room.ground();
            for (double z : new double[] {room.low().z() + 0.05, room.high().z() - 0.05}) {
                corners.add(new Vec2(at.x() - 0.15 * high, z - 0.25 * high));
            }
        }
        List<Vec3> outline = new ArrayList<>();
        for (Vec2 p : Hull.around(corners)) {
            outline.add(0, new Vec3(p.x(), room.ground() + 0.003, p.y()));
        }
        shadow.setMesh(Surface.triangles(Forms.plate(outline, UP, 0.002)));
    }
}
