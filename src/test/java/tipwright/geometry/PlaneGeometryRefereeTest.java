// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Prism tanks that lean in the side view, cut by an independent library of plane geometry: what is below the surface is the
 * clipped outline times the width. Source: JTS Topology Suite, polygon intersection, area and centroid.
 */
class PlaneGeometryRefereeTest {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final double FAR = 100;

    static LongStream seeds() {
        return LongStream.range(0, 400);
    }

    /** Hollow and toothed outlines of 3 to 24 corners, each cut by five planes. */
    @ParameterizedTest
    @MethodSource("seeds")
    void clippedAreasAndCentroidsAgree(long seed) {
        Random random = new Random(seed);
        List<Vec2> outline = outline(random);
        double width = 0.3 + random.nextDouble();
        double middle = random.nextGaussian();
        Polyhedron tank = Polyhedron.prism(outline, width, middle);
        Polygon polygon = polygon(outline);
        assertThat(tank.whole().volume()).isCloseTo(polygon.getArea() * width, within(1e-12));
        for (int i = 0; i < 5; i++) {
            double lean = 2 * Math.PI * random.nextDouble();
            Vec2 up = new Vec2(Math.sin(lean), Math.cos(lean));
            Vec3 normal = new Vec3(up.x(), up.y(), 0);
            Range range = tank.extent(normal);
            double level = range.low() + random.nextDouble() * range.span();
            Geometry wet = polygon.intersection(below(up, level));
            Moments ours = tank.below(new Plane(normal, level));
            assertThat(ours.volume()).isCloseTo(wet.getArea() * width, within(1e-10));
            Point centroid = wet.getCentroid();
            Vec3 first = new Vec3(centroid.getX(), centroid.getY(), middle).times(wet.getArea() * width);
            assertThat(ours.first().minus(first).norm()).isLessThan(1e-10);
            assertThat(ours.section())
                    .isCloseTo(polygon.intersection(line(up, level)).getLength() * width, within(1e-8));
        }
    }

    /** The level that holds a share of the tank leaves the same share of the outline's area below it. */
    @ParameterizedTest
    @MethodSource("seeds")
    void levelsHoldTheirShareOfTheArea(long seed) {
        Random random = new Random(~seed);
        List<Vec2> outline = outline(random);
        Polyhedron tank = Polyhedron.prism(outline, 1, 0);
        double lean = Math.PI * random.nextDouble();
        Vec2 up = new Vec2(Math.sin(lean), Math.cos(lean));
        double share = random.nextDouble();
        Polygon polygon = polygon(outline);
        Plane plane = Level.holding(
                tank, new Vec3(up.x(), up.y(), 0), share * tank.whole().volume(), Double.NaN);
        double area = polygon.intersection(below(up, plane.level())).getArea();
        assertThat(area / polygon.getArea()).isCloseTo(share, within(1e-9));
    }

    /** A star with teeth of any length, either way round. */
    private static List<Vec2> outline(Random random) {
        int corners = 3 + random.nextInt(22);
        Vec2 at = new Vec2(random.nextGaussian(), random.nextGaussian());
        double sense = random.nextBoolean() ? 1 : -1;
        List<Vec2> outline = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double turn = sense * 2 * Math.PI * i / corners;
            double far = 0.2 + random.nextDouble();
            outline.add(at.plus(new Vec2(far * Math.cos(turn), far * Math.sin(turn))));
        }
        return outline;
    }

    private static Polygon polygon(List<Vec2> outline) {
        Coordinate[] ring = new Coordinate[outline.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = coordinate(outline.get(i % outline.size()));
        }
        return JTS.createPolygon(ring);
    }

    /** A large square whose upper side is the surface. */
    private static Polygon below(Vec2 up, double level) {
        Vec2 along = new Vec2(up.y(), -up.x()).times(FAR);
        Vec2 surface = up.times(level);
        Vec2 bottom = surface.minus(up.times(FAR));
        return polygon(List.of(surface.minus(along), surface.plus(along), bottom.plus(along), bottom.minus(along)));
    }

    private static LineString line(Vec2 up, double level) {
        Vec2 along = new Vec2(up.y(), -up.x()).times(FAR);
        Vec2 surface = up.times(level);
        return JTS.createLineString(
                new Coordinate[] {coordinate(surface.minus(along)), coordinate(surface.plus(along))});
    }

    private static Coordinate coordinate(Vec2 p) {
        return new Coordinate(p.x(), p.y());
    }
}
