// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec3;
import tipwright.viewer.dump.Lying;
import tipwright.viewer.dump.Surroundings;

/** The ground as far as one sees, with a half-metre grid around the machine, and the pit in it. */
final class GroundPart {
    static final double GRID = 0.5;

    private static final double FAR = 90;
    private static final double APART = 0.006;
    private static final double THICK = 0.02;
    private static final double WALL = 0.04;
    private static final Vec3 ACROSS = new Vec3(0, 0, 1);
    private static final Vec3 ALONG = new Vec3(1, 0, 0);

    private final Group flat = new Group();
    private final Group all = new Group(flat);

    GroundPart(Surroundings room, Lying.Place place, Theme theme) {
        double y = room.ground();
        double west = GRID * Math.floor((room.low().x() - 0.85) / GRID);
        double east = GRID * Math.ceil((Math.max(place.east(), room.high().x()) + 0.7) / GRID);
        double far = GRID * Math.floor((room.low().z() - 0.8) / GRID);
        double near = GRID * Math.ceil((room.high().z() + 0.6) / GRID);
        List<Mesh> slabs = new ArrayList<>();
        List<Mesh> lines = new ArrayList<>();
        if (place.pit()) {
            double half = place.half() + APART;
            slabs.add(slab(-FAR, place.west() - APART, -FAR, FAR, y));
            slabs.add(slab(place.east() + APART, FAR, -FAR, FAR, y));
            slabs.add(slab(place.west() - APART, place.east() + APART, -FAR, -half, y));
            slabs.add(slab(place.west() - APART, place.east() + APART, half, FAR, y));
        } else {
            slabs.add(slab(-FAR, FAR, -FAR, FAR, y));
        }
        for (double x = west; x < east + 1e-9; x += GRID) {
            boolean cut = place.pit() && x > place.west() && x < place.east();
            for (double[] piece :
                    cut ? new double[][] {{far, -place.half()}, {place.half(), near}} : new double[][] {{far, near}}) {
                lines.add(Forms.beam(new Vec3(x, y, piece[0]), new Vec3(x, y, piece[1]), 0.008, 0.004, ALONG));
            }
        }
        for (double z = far; z < near + 1e-9; z += GRID) {
            boolean cut = place.pit() && Math.abs(z) < place.half();
            for (double[] piece :
                    cut ? new double[][] {{west, place.west()}, {place.east(), east}} : new double[][] {{west, east}}) {
                lines.add(Forms.beam(new Vec3(piece[0], y, z), new Vec3(piece[1], y, z), 0.008, 0.004, ACROSS));
            }
        }
        flat.getChildren().add(Surface.view(Forms.joined(slabs), Surface.flat(theme.ground())));
        flat.getChildren().add(Surface.view(Forms.joined(lines), Surface.flat(theme.line())));
        if (place.walled()) {
            all.getChildren().add(Surface.view(Forms.joined(walls(place)), Surface.matt(theme.pit())));
        }
        all.setMouseTransparent(true);
    }

    private static Mesh slab(double west, double east, double far, double near, double y) {
        double z = (far + near) / 2;
        return Forms.beam(
                new Vec3(west, y - THICK / 2, z), new Vec3(east, y - THICK / 2, z), near - far, THICK, ACROSS);
    }

    /** Floor and sides of the pit or the bin; their inner faces are where it begins. */
    private static List<Mesh> walls(Lying.Place p) {
        double low = p.floor();
        double high = p.pit() ? p.top() - 0.6 * THICK : p.top();
        double middle = (low + high) / 2;
        double tall = high - low;
        List<Mesh> all = new ArrayList<>();
        all.add(Forms.beam(
                new Vec3(p.west(), low - WALL / 2, 0),
                new Vec3(p.east(), low - WALL / 2, 0),
                2 * p.half(),
                WALL,
                ACROSS));
        for (double side : new double[] {-1, 1}) {
            double z = side * (p.half() + WALL / 2);
            all.add(Forms.beam(
                    new Vec3(p.west() - WALL, middle, z), new Vec3(p.east() + WALL, middle, z), WALL, tall, ACROSS));
            double x = side < 0 ? p.west() - WALL / 2 : p.east() + WALL / 2;
            all.add(Forms.beam(new Vec3(x, middle, -p.half()), new Vec3(x, middle, p.half()), WALL, tall, ALONG));
        }
        return all;
    }

    Node node() {
        return all;
    }

    /** What shines by itself, whatever the lamps. */
    Node flat() {
        return flat;
    }
}
