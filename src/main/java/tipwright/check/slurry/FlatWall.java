// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Row;
import tipwright.design.tank.BoxInterior;
import tipwright.design.tank.PrismInterior;
import tipwright.design.tank.Tank;
import tipwright.design.tank.Wall;
import tipwright.geometry.Extent;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;
import tipwright.strength.PlateUnderPressure;
import tipwright.strength.RectangularTube;
import tipwright.strength.StiffenedWall;
import tipwright.strength.StiffenerBar;

/**
 * A flat wall of the tank's inside.
 *
 * @param name for people
 * @param bottom its two lower corners, m, stowed; of two walls alike, those of both
 * @param top the upper corners over them, m
 * @param free whether nothing but a rim holds its upper edge
 */
record FlatWall(String name, List<Vec3> bottom, List<Vec3> top, boolean free) {
    private static final double LID = 0.7;

    /** The walls of a box or a hopper that hold slurry; empty for other tanks. */
    static List<FlatWall> of(Tank tank) {
        return of(tank, tank.vent() == null, LID);
    }

    /** All walls of a box or a hopper that is closed, its lid with them, every edge of them held by the next wall. */
    static List<FlatWall> closed(Tank tank) {
        return of(tank, false, Double.POSITIVE_INFINITY);
    }

    private static List<FlatWall> of(Tank tank, boolean open, double lid) {
        List<Vec2> outline;
        double half;
        double z;
        if (tank.interior() instanceof BoxInterior box) {
            Vec3 c = box.centre();
            double a = box.size().x() / 2;
            double b = box.size().y() / 2;
            outline = List.of(
                    new Vec2(c.x() - a, c.y() - b),
                    new Vec2(c.x() + a, c.y() - b),
                    new Vec2(c.x() + a, c.y() + b),
                    new Vec2(c.x() - a, c.y() + b));
            half = box.size().z() / 2;
            z = c.z();
        } else if (tank.interior() instanceof PrismInterior prism) {
            outline = prism.outline();
            half = prism.width() / 2;
            z = prism.z();
        } else {
            return List.of();
        }
        return walls(outline, half, z, open, lid);
    }

    private static List<FlatWall> walls(List<Vec2> outline, double half, double z, boolean open, double lid) {
        double turned = 0;
        Vec2 low = Extent.of(outline).low();
        Vec2 high = Extent.of(outline).high();
        for (int i = 0; i < outline.size(); i++) {
            Vec2 p = outline.get(i);
            turned += p.cross(outline.get((i + 1) % outline.size()));
        }
        List<FlatWall> all = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Vec2 p = outline.get(i);
            Vec2 q = outline.get((i + 1) % outline.size());
            Vec2 along = q.minus(p);
            double up = -along.x() / along.norm() * Math.signum(turned);
            if (up < lid) {
                Vec2 a = p.y() <= q.y() ? p : q;
                Vec2 b = p.y() <= q.y() ? q : p;
                boolean free = open && b.y() > high.y() - 1e-6 && up > -LID;
                all.add(new FlatWall(
                        (up < -LID ? "bottom " : up < LID ? "wall " : "lid ") + (i + 1),
                        line(a, half, z),
                        line(b, half, z),
                        free));
            }
        }
        // Both sides are alike; the deeper of the two counts.
        List<Vec3> lower = new ArrayList<>();
        List<Vec3> upper = new ArrayList<>();
        for (double at : new double[] {z - half, z + half}) {
            lower.addAll(List.of(new Vec3(low.x(), low.y(), at), new Vec3(high.x(), low.y(), at)));
            upper.addAll(List.of(new Vec3(low.x(), high.y(), at), new Vec3(high.x(), high.y(), at)));
        }
        all.add(new FlatWall("sides", lower, upper, open));
        return all;
    }

    private static List<Vec3> line(Vec2 p, double half, double z) {
        return List.of(new Vec3(p.x(), p.y(), z - half), new Vec3(p.x(), p.y(), z + half));
    }

    private double width() {
        return bottom.get(1).minus(bottom.get(0)).norm();
    }

    private double height() {
        return top.get(0).minus(bottom.get(0)).norm();
    }

    /** The wall, or the part of it between stiffeners, with its edges free to turn and held. */
    List<PlateUnderPressure> plates(Wall wall) {
        double width =
                wall.stiffeners() != null ? Math.min(width(), wall.stiffeners().spacing()) : width();
        Wall.Rim rim = wall.rim();
        List<PlateUnderPressure> both = new ArrayList<>();
        for (PlateUnderPressure.Edge held :
                List.of(PlateUnderPressure.Edge.SUPPORTED, PlateUnderPressure.Edge.CLAMPED)) {
            PlateUnderPressure plate = PlateUnderPressure.steel(
                    width, height(), wall.thickness(), held, held, free ? PlateUnderPressure.Edge.FREE : held);
            both.add(
                    free && rim != null
                            ? plate.withRim(200e9
                                    * new RectangularTube(
                                                    /* height= */ rim.width(), /* width= */ rim.height(), rim.wall())
                                            .inertia())
                            : plate);
        }
        return both;
    }

    /** A stiffener with its strip of the wall; null without. An open upper edge holds it only with a rim. */
    @Nullable
    StiffenedWall stiffened(Wall wall) {
        Wall.Stiffeners bars = wall.stiffeners();
        if (bars == null || width() <= bars.spacing()) {
            return null;
        }
        return new StiffenedWall(
                StiffenerBar.flat(bars.thickness(), bars.height()),
                wall.thickness(),
                bars.spacing(),
                free && wall.rim() == null ? 2 * height() : height(),
                200e9,
                wall.yield());
    }

    /**
     * Pressure of what is in the tank, Pa: what is even all over, and what is more than that at the deeper edge.
     *
     * @param weight N/m3
     */
    double[] pressures(Row row, double weight) {
        Fill fill = row.load().fill();
        if (fill == null) {
            return new double[2];
        }
        double low = depth(fill, bottom) * weight;
        double high = depth(fill, top) * weight;
        double even = Math.min(low, high);
        return new double[] {even, Math.max(low, high) - even};
    }

    private static double depth(Fill fill, List<Vec3> corners) {
        return corners.stream()
                .mapToDouble(c -> Math.max(0, -fill.surface().height(c)))
                .max()
                .orElse(0);
    }
}
