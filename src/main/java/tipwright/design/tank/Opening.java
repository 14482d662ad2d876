// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Plane;
import tipwright.geometry.ShapeException;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * An opening: a planar outline on the tank's wall.
 *
 * @param centre m, stowed
 * @param normal points out of the tank; any length; of a polygon its tank tells it
 * @param opensAt tilt at which it is open, rad; 0: from the start
 * @param points the outline when rim is polygon, m, stowed
 */
public record Opening(
        @Note("What it is called") String name,
        @Note("The form of its edge") Rim rim,
        @Note("Of a round rim") @Measured(value = Kind.LENGTH, above = "0 mm") @Nullable Double diameter,
        @Note("Along z") @Measured(value = Kind.LENGTH, above = "0 mm") @Nullable Double width,
        @Note("Across the width") @Measured(value = Kind.LENGTH, above = "0 mm") @Nullable Double height,
        @Note("Corners of a polygon rim, in order, tank stowed") @Counted(atMost = 500) @Measured(Kind.LENGTH) @Preset
                List<Vec3> points,
        @Note("Middle of the rim, tank stowed") @Measured(Kind.LENGTH) @Nullable Vec3 centre,
        @Note("Direction straight out of the tank") @Measured(Kind.RATIO) @Nullable Vec3 normal,
        @Note("Tilt at which it is open; 0 deg: from the start")
                @Measured(value = Kind.ANGLE, preset = "0 deg", atLeast = "0 deg")
                double opensAt,
        @Note(
                        "The door that closes it: hinge and latches are checked, and its weight hangs from the hinge once it is open")
                @Nullable
                Door door,
        @Note("How freely slurry leaves it") @Preset Outflow outflow) {

    /** The same of a tank: a polygon, whichever way round its corners are told, faces the side with less of the inside. */
    Opening of(Interior interior) {
        Vec3 across = rim == Rim.POLYGON ? areaVector() : Vec3.ZERO;
        if (!(across.norm() > 0)) {
            return this;
        }
        try {
            Solid solid = interior.solid();
            double behind = solid.below(Plane.through(middle(), across.unit())).volume();
            Vec3 out = across.times(behind < solid.whole().volume() / 2 ? -1 : 1);
            return new Opening(name, rim, diameter, width, height, points, centre, out, opensAt, door, outflow);
        } catch (ShapeException wrong) {
            // the rules of the file tell what is wrong with the inside
            return this;
        }
    }

    /** The form of the outline. */
    public enum Rim {
        CIRCLE,
        RECTANGLE,
        POLYGON
    }

    /** The rim of a tank that is drawn open, m, stowed. */
    static Opening mouth(List<Vec3> rim) {
        return new Opening("mouth", Rim.POLYGON, null, null, null, rim, null, null, 0, null, new Outflow(SHARP, 1));
    }

    /** Straight out of an open side. */
    static Vec3 out(Tank.Open side) {
        return side == Tank.Open.TOP ? new Vec3(0, 1, 0) : new Vec3(1, 0, 0);
    }

    /** An open side that is a rectangle: width along z, m. */
    static Opening side(Tank.Open side, double width, double height, Vec3 centre) {
        return open(side, Rim.RECTANGLE, null, width, height, centre);
    }

    /** An open side that is round. */
    static Opening round(Tank.Open side, double diameter, Vec3 centre) {
        return open(side, Rim.CIRCLE, diameter, null, null, centre);
    }

    /** An open side that is not square to the way that it faces: its corners, in order, m, stowed. */
    static Opening corners(Tank.Open side, List<Vec3> corners) {
        return new Opening(
                name(side), Rim.POLYGON, null, null, null, corners, null, null, 0, null, new Outflow(SHARP, 1));
    }

    private static String name(Tank.Open side) {
        return side == Tank.Open.TOP ? "open top" : "open front";
    }

    private static Opening open(
            Tank.Open side,
            Rim rim,
            @Nullable Double diameter,
            @Nullable Double width,
            @Nullable Double height,
            Vec3 centre) {
        Outflow sharp = new Outflow(SHARP, 1);
        return new Opening(name(side), rim, diameter, width, height, List.of(), centre, out(side), 0, null, sharp);
    }

    /** Share of the ideal flow over a sharp edge, as of every opening that tells nothing else. */
    private static final double SHARP = 0.62;

    private static final int CIRCLE_POINTS = 180;

    /** Points along the rim, m, stowed: the corners, or 180 points of a circle; in order. */
    public List<Vec3> rimPoints() {
        if (rim == Rim.POLYGON || centre == null || normal == null) {
            return points;
        }
        Vec3 n = normal.unit();
        Vec3 along = widthDirection(n);
        Vec3 across = n.cross(along);
        List<Vec3> all = new ArrayList<>();
        if (rim == Rim.CIRCLE) {
            double r = radius();
            for (int i = 0; i < CIRCLE_POINTS; i++) {
                double t = 2 * Math.PI * i / CIRCLE_POINTS;
                all.add(centre.plus(along.times(r * Math.cos(t))).plus(across.times(r * Math.sin(t))));
            }
        } else {
            double w = wide() / 2;
            double h = high() / 2;
            for (int[] s : new int[][] {{1, 1}, {-1, 1}, {-1, -1}, {1, -1}}) {
                all.add(centre.plus(along.times(s[0] * w)).plus(across.times(s[1] * h)));
            }
        }
        return all;
    }

    private double radius() {
        return diameter == null ? 0 : diameter / 2;
    }

    private double wide() {
        return width == null ? 0 : width;
    }

    private double high() {
        return height == null ? 0 : height;
    }

    /** Area within the rim's points, m2. */
    private double roundArea() {
        return CIRCLE_POINTS / 2.0 * radius() * radius() * Math.sin(2 * Math.PI / CIRCLE_POINTS);
    }

    private static Vec3 widthDirection(Vec3 n) {
        Vec3 z = new Vec3(0, 0, 1);
        Vec3 along = z.minus(n.times(n.dot(z)));
        return along.norm() > 1e-9 ? along.unit() : new Vec3(1, 0, 0);
    }

    /** Lowest value of direction . p along the rim, m: where something leaves first, 'below' being against the direction. */
    public double lip(Vec3 direction) {
        return direction.dot(lipPoint(direction));
    }

    /** The point of the rim that is lowest along a direction, m, stowed. */
    public Vec3 lipPoint(Vec3 direction) {
        if (rim == Rim.CIRCLE && centre != null && normal != null && diameter != null) {
            Vec3 n = normal.unit();
            Vec3 down = n.times(n.dot(direction)).minus(direction);
            double length = down.norm();
            return length > 1e-12 ? centre.plus(down.times(diameter / 2 / length)) : centre;
        }
        List<Vec3> rimPoints = rimPoints();
        Vec3 low = rimPoints.get(0);
        for (Vec3 p : rimPoints) {
            low = direction.dot(p) < direction.dot(low) ? p : low;
        }
        return low;
    }

    /** Area vector of the outline, m2 (length: its area), on the side of its normal, if it has one. */
    public Vec3 areaVector() {
        if (rim != Rim.POLYGON && centre != null && normal != null) {
            return normal.unit().times(rim == Rim.CIRCLE ? roundArea() : wide() * high());
        }
        List<Vec3> rimPoints = rimPoints();
        Vec3 sum = Vec3.ZERO;
        for (int i = 0; i < rimPoints.size(); i++) {
            sum = sum.plus(rimPoints.get(i).cross(rimPoints.get((i + 1) % rimPoints.size())));
        }
        return sum.times(normal != null && sum.dot(normal) < 0 ? -0.5 : 0.5);
    }

    /** Unit vector square out of the opening, tank stowed; on the side of its normal, if it has one. */
    public Vec3 outward() {
        return rim != Rim.POLYGON && normal != null
                ? normal.unit()
                : areaVector().unit();
    }

    /** Middle of the rim's points, m, stowed. */
    public Vec3 middle() {
        if (rim != Rim.POLYGON && centre != null) {
            return centre;
        }
        List<Vec3> rimPoints = rimPoints();
        Vec3 sum = Vec3.ZERO;
        for (Vec3 p : rimPoints) {
            sum = sum.plus(p);
        }
        return sum.times(1.0 / rimPoints.size());
    }
}
