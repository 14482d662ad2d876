// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What lies below two planes, against the body that the first leaves, cut again by the second. */
class TwoPlanesTest {
    @ParameterizedTest
    @MethodSource("tipwright.geometry.MeshCutTest#solids")
    void theSameAsOneCutAfterTheOther(Solid solid) {
        Random random = new Random(23);
        Polyhedron faceted = Polyhedron.of(solid.mesh(5e-3).welded());
        Mesh mesh = faceted.mesh(0);
        double size = mesh.size();
        double room = Math.pow(size, 3);
        for (int i = 0; i < 200; i++) {
            Plane one = Shapes.cutting(faceted, random);
            // every other time all but parallel, down to a billionth
            Vec3 lean = new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                    .times(Math.pow(10, -9 * random.nextDouble()));
            Plane two = i % 2 == 0
                    ? Shapes.cutting(faceted, random)
                    : Plane.through(
                            one.normal().times(one.level()),
                            one.normal().plus(lean).unit());
            Moments both = faceted.below(one, two);
            Moments after = Polyhedron.unchecked(MeshCut.below(mesh, one)).below(two);
            // the cut may lower its plane by 1.6e-8 of the size
            assertThat(both.volume()).isCloseTo(after.volume(), within(1e-7 * room));
            assertThat(both.first().minus(after.first()).norm()).isLessThan(1e-7 * room * (size + 1));
            Moments turned = faceted.below(two, one);
            assertThat(turned.volume()).isCloseTo(both.volume(), within(1e-12 * room));
        }
    }

    @ParameterizedTest
    @MethodSource("tipwright.geometry.MeshCutTest#solids")
    void theReachIsThatOfTheCorners(Solid solid) {
        Random random = new Random(24);
        Polyhedron faceted = Polyhedron.of(solid.mesh(5e-3).welded());
        for (int i = 0; i < 100; i++) {
            Vec3 way = new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
            Range corners = faceted.mesh(0).extent(way);
            assertThat(faceted.extent(way).low()).isCloseTo(corners.low(), within(1e-11));
            assertThat(faceted.extent(way).high()).isCloseTo(corners.high(), within(1e-11));
        }
    }
}
