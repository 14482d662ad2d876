// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.time.Rim;

/**
 * How what drains leaves an opening at one moment: over the lip past the critical depth, or, where the whole opening is under the
 * surface, as a jet. Source: critical depth and momentum of a free overfall (texts on open channels, from memory); Torricelli.
 *
 * @param lip lowest point of the rim, m, in the tank's axes
 * @param depth of the stream over the lip, m
 * @param speed m/s
 * @param flow of this opening, m3/s
 * @param ways unit vectors in the side view that it may take: level, and square out where that points down; a jet only square out
 * @param jet whether the whole opening is under the surface
 */
public record Departure(Vec3 lip, double depth, double speed, double flow, List<Vec2> ways, boolean jet) {
    private static final double SLOWEST = 0.2;

    /** Copies the list. */
    public Departure {
        ways = List.copyOf(ways);
    }

    /**
     * At a tilt.
     *
     * @param tilt rad
     * @param level of the surface along the direction against gravity, in the tank's axes, m, less what a vacuum takes off
     * @return null when nothing leaves
     */
    public static @Nullable Departure of(Design design, Opening opening, double tilt, double level) {
        return of(design, opening, new Rim(opening), tilt, level);
    }

    static @Nullable Departure of(Design design, Opening opening, Rim rim, double tilt, double level) {
        Vec3 up = design.site().up().tilted(-tilt);
        double flow = rim.flow(up, level);
        double head = rim.deepest(up, level);
        if (!rim.open(tilt) || !(flow > 0) || !(head > 0)) {
            return null;
        }
        Vec3 lip = opening.lipPoint(up);
        Vec2 out = rim.outward().tilted(tilt).xy();
        if (rim.area() <= rim.wetArea(up, level) * (1 + 1e-9)) {
            double upright = top(opening, up) - up.dot(lip);
            return new Departure(lip, upright, Stream.under(head), flow, List.of(out), true);
        }
        Rim.Overfall over = rim.overfall(up, flow);
        double speed = Math.min(over == null ? Double.POSITIVE_INFINITY : over.speed(), Stream.under(head));
        double depth = over == null ? head : Math.min(over.depth(), head);
        List<Vec2> ways = ways(opening, out, design.site().up().xy(), lip, tilt);
        return new Departure(lip, depth, speed, flow, ways, false);
    }

    /**
     * Level of the surface with which so much leaves through all openings together, along the direction against gravity, in the tank's
     * axes, m.
     *
     * @param tilt rad
     * @param flow m3/s
     * @return NaN when nothing leaves or no opening is open
     */
    public static double level(Design design, double tilt, double flow) {
        Vec3 up = design.site().up().tilted(-tilt);
        List<Rim> rims = design.tank().openings().stream()
                .map(Rim::new)
                .filter(rim -> rim.open(tilt))
                .toList();
        return Rim.level(rims, up, flow);
    }

    /**
     * Grit that slides out: along the floor, half as fast as what has slid all along the tank, since its head leaves from rest. Half: common practice, no source.
     *
     * @param flow m3/s
     * @return null when the opening is shut or leads another way
     */
    public static @Nullable Departure ofGrit(Design design, Opening opening, double tilt, double flow) {
        Vec3 along = new Vec3(1, 0, 0);
        Vec3 up = design.site().up().tilted(-tilt);
        double slope = Math.asin(Math.max(-1, Math.min(1, -up.dot(along))));
        Vec3 lip = opening.lipPoint(up);
        double length =
                along.dot(lip) - design.tank().interior().solid().extent(along).low();
        Rim rim = new Rim(opening);
        if (!rim.open(tilt) || rim.outward().dot(along) < 0 || !(length > 0) || !(slope > 0)) {
            return null;
        }
        double speed = Math.max(
                SLOWEST, 0.5 * Stream.sliding(length, slope, design.slurry().wallFriction()));
        double wide = Math.sqrt(opening.areaVector().norm());
        return new Departure(
                lip,
                flow / (speed * wide),
                speed,
                flow,
                List.of(along.tilted(tilt).xy()),
                false);
    }

    private static double top(Opening opening, Vec3 up) {
        return opening.rimPoints().stream().mapToDouble(up::dot).max().orElse(0);
    }

    /** Level out over the lip; and square out of the opening, where that points down. */
    private static List<Vec2> ways(Opening opening, Vec2 out, Vec2 up, Vec3 lip, double tilt) {
        Vec2 level = new Vec2(up.y(), -up.x()).unit();
        double outward = out.dot(level);
        if (Math.abs(outward) < 1e-3) {
            outward = lip.minus(opening.middle()).tilted(tilt).xy().dot(level);
        }
        Vec2 straight = level.times(outward < 0 ? -1 : 1);
        return out.dot(up) < 0 ? List.of(straight, out) : List.of(straight);
    }
}
