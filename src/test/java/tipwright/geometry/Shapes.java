// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Seeded shapes and planes that the property tests share. */
final class Shapes {
    private Shapes() {}

    static final List<Head> HEADS = List.of(
            Head.flat(),
            Head.hemispherical(),
            Head.semiEllipsoidal(),
            Head.torispherical(),
            new Head.Torispherical(1, 0.1),
            new Head.Torispherical(0.8, 0.154),
            new Head.Dished(0.1),
            new Head.Conical(0.3));

    /** A tank with random heads, size, place and axis. */
    static RevolvedTank tank(long seed) {
        Random random = new Random(seed);
        Vec3 middle = new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
        Vec3 axis = random.nextInt(3) == 0 ? new Vec3(1, 0, 0) : direction(random);
        return RevolvedTank.of(
                middle, axis, 0.3 + random.nextDouble(), 0.1 + 2 * random.nextDouble(), head(random), head(random));
    }

    private static Head head(Random random) {
        return HEADS.get(random.nextInt(HEADS.size()));
    }

    /** A random unit vector. */
    static Vec3 direction(Random random) {
        return new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
    }

    /** A plane with a random normal that cuts the solid. */
    static Plane cutting(Solid solid, Random random) {
        Vec3 normal = direction(random);
        Range range = solid.extent(normal);
        return new Plane(normal, range.low() + random.nextDouble() * range.span());
    }

    /** An L-shaped trough, hollow corner at (1, 1), drawn clockwise. */
    static Polyhedron trough() {
        List<Vec2> outline =
                List.of(new Vec2(0, 0), new Vec2(0, 2), new Vec2(1, 2), new Vec2(1, 1), new Vec2(3, 1), new Vec2(3, 0));
        return Polyhedron.prism(outline, 0.8, 0.1);
    }

    /** A comb: four teeth upward, so that a cut has up to four loops. */
    static Polyhedron comb() {
        Vec2[] points = new Vec2[16];
        for (int i = 0; i < 4; i++) {
            points[4 * i] = new Vec2(i, 0.2);
            points[4 * i + 1] = new Vec2(i, 1);
            points[4 * i + 2] = new Vec2(i + 0.5, 1);
            points[4 * i + 3] = new Vec2(i + 0.5, 0.2);
        }
        points[0] = new Vec2(0, 0);
        points[15] = new Vec2(3.5, 0);
        return Polyhedron.prism(Arrays.asList(points), 0.7, 0);
    }

    /** One of each kind of solid. */
    static Stream<Solid> solids() {
        return Stream.concat(
                Stream.of(1L, 2L, 3L, 4L, 5L, 6L, 7L, 8L).map(Shapes::tank),
                Stream.of(Polyhedron.box(new Vec3(1, 2, 3), new Vec3(0.5, -1, 2)), trough()));
    }
}
