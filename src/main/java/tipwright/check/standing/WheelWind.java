// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import tipwright.design.around.SidePart;
import tipwright.design.around.Wheels;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.OutlineGeometry;

/**
 * Wind area of the wheels: each tyre as a cylinder, its disc from the side and its width from the end; both count, also the one behind
 * the other, which is on the safe side. What a member of the frame takes up within a tyre, as where a wheel is drawn as a member too,
 * counts once. Source: projection of a cylinder (elementary).
 *
 * @param side m2 from the side, all wheels
 * @param sideFirst that times the height of its middle, m3
 * @param end m2 from the dump end
 * @param endFirst that times the height of its middle, m3
 */
record WheelWind(double side, double sideFirst, double end, double endFirst) {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final int QUARTER = 64;
    private static final WheelWind NONE = new WheelWind(0, 0, 0, 0);

    /**
     * Of both wheels.
     *
     * @param members of the frame
     * @param low where members without z begin, m
     * @param high where they end, m
     */
    static WheelWind of(Wheels wheels, List<SidePart> members, double low, double high) {
        WheelWind all = NONE;
        for (double z : wheels.sides()) {
            all = all.plus(one(wheels, z, members, low, high));
        }
        return all;
    }

    private static WheelWind one(Wheels wheels, double z, List<SidePart> members, double low, double high) {
        double r = wheels.diameter() / 2;
        Vec2 axle = wheels.axle();
        Geometry disc = FACTORY.createPoint(new Coordinate(axle.x(), axle.y())).buffer(r, QUARTER);
        Geometry side = FACTORY.createPolygon();
        Geometry end = FACTORY.createPolygon();
        for (SidePart part : members) {
            double from = Math.max(z - wheels.width() / 2, edge(part, low, -1));
            double to = Math.min(z + wheels.width() / 2, edge(part, high, 1));
            Geometry both = OutlineGeometry.polygon(part.outline()).intersection(disc);
            if (to > from && both.getArea() > 0) {
                double foot = both.getEnvelopeInternal().getMinY();
                double top = both.getEnvelopeInternal().getMaxY();
                side = side.union(both);
                end = end.union(OutlineGeometry.polygon(
                        List.of(new Vec2(from, foot), new Vec2(to, foot), new Vec2(to, top), new Vec2(from, top))));
            }
        }
        double round = Math.PI * r * r;
        double wide = 2 * r * wheels.width();
        return new WheelWind(
                round - side.getArea(),
                round * axle.y() - first(side),
                wide - end.getArea(),
                wide * axle.y() - first(end));
    }

    private static double edge(SidePart part, double across, int sign) {
        return part.z().stream().mapToDouble(z -> sign * z).max().orElse(sign * across) * sign;
    }

    private static double first(Geometry area) {
        return area.isEmpty() ? 0 : area.getArea() * area.getCentroid().getY();
    }

    private WheelWind plus(WheelWind o) {
        return new WheelWind(side + o.side, sideFirst + o.sideFirst, end + o.end, endFirst + o.endFirst);
    }

    /**
     * Area, and area times height of its middle over the datum.
     *
     * @param against unit vector into the wind, level
     * @return {m2, m3}
     */
    double[] shown(Vec3 against) {
        double x = Math.abs(against.x());
        double z = Math.abs(against.z());
        return new double[] {x * end + z * side, x * endFirst + z * sideFirst};
    }
}
