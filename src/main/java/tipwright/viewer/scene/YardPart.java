// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec3;
import tipwright.viewer.dump.Surroundings;

/** A bar one metre long, and a person to compare with. */
final class YardPart {
    /** Height of the person, m. */
    static final double PERSON = 1.75;

    private static final Vec3 UP = new Vec3(0, 1, 0);

    private final Surroundings room;
    private final Group all = new Group();

    YardPart(Surroundings room, Theme theme) {
        this.room = room;
        bar(theme);
        Vec3 feet = new Vec3(room.low().x() - 0.3, room.ground(), room.middle().z());
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
        return new Vec3(
                room.middle().x() - 0.5, room.ground() + 0.012, room.high().z() + 0.3);
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
}
