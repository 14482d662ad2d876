// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.around.Receiver;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Range;
import tipwright.geometry.Vec3;

/**
 * What has left the tank, as it lies afterwards: level in the pit, else spread or heaped on the ground; always as much as has left.
 *
 * @param place where it lies
 * @param repose of what heaps, rad
 */
public record Lying(Place place, double repose) {
    private static final double LEVEL = 0.15;
    private static final double SIDE = 0.15;
    private static final double SHALLOW = 0.35;
    private static final double ROOM = 1.25;
    private static final double PUDDLE = 0.1;
    private static final double BEYOND = 0.8;
    private static final int ROUND = 40;
    private static final Vec3 ACROSS = new Vec3(0, 0, 1);

    /**
     * The box that it falls into, or the ground.
     *
     * @param west smallest x, m
     * @param east largest x, m
     * @param half width to each side of the middle, m; drawn as wide as the tank where the design gives only its mouth from the side
     * @param floor m
     * @param top of its sides, m
     * @param walled whether it is a pit or a bin
     * @param pit whether it goes down into the ground
     */
    public record Place(double west, double east, double half, double floor, double top, boolean walled, boolean pit) {}

    /**
     * Of a design.
     *
     * @param room that the dump takes up
     * @param most that can leave, m3
     * @param lip x of the lowest lip at the end of the dump, m: where it comes down without a receiver
     */
    public static Lying of(Design design, Surroundings room, double most, double lip) {
        double ground = room.ground();
        Range across = design.tank().interior().solid().extent(ACROSS);
        double half = Math.max(-across.low(), across.high()) + SIDE;
        Receiver r = design.receiver();
        double repose = design.slurry().repose();
        if (r == null || Math.abs(r.near().y() - r.far().y()) > LEVEL) {
            return new Lying(new Place(lip, lip, half, ground, ground, false, false), repose);
        }
        double west = Math.min(r.near().x(), r.far().x());
        double east = Math.max(r.near().x(), r.far().x());
        double top = Math.min(r.near().y(), r.far().y());
        boolean pit = top < ground + LEVEL;
        double deep = Math.max(SHALLOW, ROOM * most / (2 * half * (east - west)));
        double floor = pit ? ground - deep : Math.min(ground, top - deep);
        return new Lying(new Place(west, east, half, floor, pit ? ground : top, true, pit), repose);
    }

    /**
     * Its shape.
     *
     * @param volume m3
     * @param heaps whether it is grit
     * @param at where it comes down, m
     * @return null when there is next to nothing
     */
    public @Nullable Mesh mesh(double volume, boolean heaps, Vec3 at) {
        if (!(volume > 1e-6)) {
            return null;
        }
        if (heaps) {
            double radius = Math.cbrt(3 * volume / (Math.PI * Math.tan(repose)));
            boolean room = !place.walled || (radius < place.half && 2 * radius < place.east - place.west);
            if (room) {
                double x = place.walled ? Math.max(place.west + radius, Math.min(place.east - radius, at.x())) : at.x();
                return cone(new Vec3(x, place.floor, 0), radius, radius * Math.tan(repose));
            }
        }
        if (place.walled) {
            double high = volume / (2 * place.half * (place.east - place.west));
            double y = place.floor + high / 2;
            return Forms.beam(new Vec3(place.west, y, 0), new Vec3(place.east, y, 0), 2 * place.half, high, ACROSS);
        }
        return disc(at.x(), place.floor, volume);
    }

    private static Mesh cone(Vec3 foot, double radius, double high) {
        // as many sides have a little less room than a round one: as much wider
        double area = 0.5 * ROUND * Math.sin(2 * Math.PI / ROUND) / Math.PI;
        return fan(foot, radius / Math.sqrt(area), high);
    }

    private static Mesh fan(Vec3 foot, double radius, double high) {
        double[] xyz = new double[3 * (ROUND + 2)];
        int[] corners = new int[6 * ROUND];
        for (int i = 0; i < ROUND; i++) {
            double t = 2 * Math.PI * i / ROUND;
            xyz[3 * i] = foot.x() + radius * Math.cos(t);
            xyz[3 * i + 1] = foot.y();
            xyz[3 * i + 2] = foot.z() + radius * Math.sin(t);
            int[] two = {ROUND, (i + 1) % ROUND, i, ROUND + 1, i, (i + 1) % ROUND};
            System.arraycopy(two, 0, corners, 6 * i, 6);
        }
        for (int tip = 0; tip < 2; tip++) {
            xyz[3 * (ROUND + tip)] = foot.x();
            xyz[3 * (ROUND + tip) + 1] = foot.y() + (1 - tip) * high;
            xyz[3 * (ROUND + tip) + 2] = foot.z();
        }
        Mesh mesh = new Mesh(xyz, corners);
        return mesh.volume() >= 0 ? mesh : mesh.turnedOut();
    }

    /** From where it comes down away to the dump side. */
    private static Mesh disc(double from, double floor, double volume) {
        double area = 0.5 * ROUND * Math.sin(2 * Math.PI / ROUND);
        double radius = Math.sqrt(volume / (PUDDLE * area));
        Vec3 foot = new Vec3(from + BEYOND * radius, floor, 0);
        List<Vec3> rim = new ArrayList<>();
        for (int i = 0; i < ROUND; i++) {
            double t = -2 * Math.PI * i / ROUND;
            rim.add(foot.plus(new Vec3(radius * Math.cos(t), PUDDLE / 2, radius * Math.sin(t))));
        }
        return Forms.plate(rim, new Vec3(0, 1, 0), PUDDLE);
    }
}
