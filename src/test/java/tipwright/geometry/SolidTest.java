// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every solid. */
class SolidTest {
    static Stream<Solid> solids() {
        return Shapes.solids();
    }

    @ParameterizedTest
    @MethodSource("solids")
    void theTwoSidesOfAPlaneMakeTheWhole(Solid solid) {
        Random random = new Random(11);
        Moments whole = solid.whole();
        for (int i = 0; i < 100; i++) {
            Plane plane = Shapes.cutting(solid, random);
            Plane turned = new Plane(plane.normal().times(-1), -plane.level());
            Moments wet = solid.below(plane);
            Moments dry = solid.below(turned);
            assertThat(wet.volume() + dry.volume()).isCloseTo(whole.volume(), within(1e-8 * whole.volume()));
            assertThat(wet.first().plus(dry.first()).minus(whole.first()).norm())
                    .isLessThan(1e-8 * whole.volume());
            assertThat(wet.section()).isCloseTo(dry.section(), within(1e-6));
        }
    }

    @ParameterizedTest
    @MethodSource("solids")
    void volumeRisesWithTheLevelAtTheRateOfTheSection(Solid solid) {
        Random random = new Random(12);
        for (int i = 0; i < 20; i++) {
            Vec3 normal = Shapes.direction(random);
            Range range = solid.extent(normal);
            double step = 1e-4 * range.span();
            double before = 0;
            for (double level = range.low() + step; level < range.high(); level += 0.05 * range.span()) {
                double under = solid.below(new Plane(normal, level - step)).volume();
                double over = solid.below(new Plane(normal, level + step)).volume();
                assertThat(over).isGreaterThan(before);
                double slope = (over - under) / (2 * step);
                assertThat(solid.below(new Plane(normal, level)).section())
                        .isCloseTo(slope, within(0.02 * solid.whole().volume() / range.span()));
                before = under;
            }
        }
    }

    @ParameterizedTest
    @MethodSource("solids")
    void theExtentIsWhereTheVolumeBegins(Solid solid) {
        Random random = new Random(13);
        double whole = solid.whole().volume();
        for (int i = 0; i < 50; i++) {
            Vec3 normal = Shapes.direction(random);
            Range range = solid.extent(normal);
            double hair = 1e-3 * range.span();
            assertThat(solid.below(new Plane(normal, range.low() - 1e-9)).volume())
                    .isZero();
            assertThat(solid.below(new Plane(normal, range.low() + hair)).volume())
                    .isGreaterThan(0);
            assertThat(solid.below(new Plane(normal, range.high() + 1e-9)).volume())
                    .isCloseTo(whole, within(1e-12 * whole));
            assertThat(solid.below(new Plane(normal, range.high() - hair)).volume())
                    .isLessThan(whole);
        }
    }

    @ParameterizedTest
    @MethodSource("solids")
    void theLevelHoldsTheVolume(Solid solid) {
        Random random = new Random(14);
        double whole = solid.whole().volume();
        for (int i = 0; i < 100; i++) {
            Vec3 normal = Shapes.direction(random);
            double volume = whole * random.nextDouble();
            double guess = i % 3 == 0 ? Double.NaN : solid.extent(normal).low() + random.nextDouble();
            Plane plane = Level.holding(solid, normal, volume, guess);
            assertThat(solid.below(plane).volume()).isCloseTo(volume, within(1e-10 * whole));
            assertThat(plane.normal()).isEqualTo(normal);
        }
    }

    @ParameterizedTest
    @MethodSource("solids")
    void theMeshIsASoundBodyWithinTheSag(Solid solid) {
        Mesh mesh = solid.mesh(1e-3);
        assertThat(MeshCheck.fault(mesh.welded())).isNull();
        Random random = new Random(15);
        for (int i = 0; i < 50; i++) {
            Vec3 normal = Shapes.direction(random);
            Range real = solid.extent(normal);
            Range meshed = mesh.extent(normal);
            assertThat(meshed.low()).isBetween(real.low() - 1e-12, real.low() + 1e-3);
            assertThat(meshed.high()).isBetween(real.high() - 1e-3, real.high() + 1e-12);
        }
        assertThat(mesh.volume())
                .isCloseTo(solid.whole().volume(), within(1e-3 * solid.skin().area()));
        assertThat(Polyhedron.of(mesh).convex()).isEqualTo(solid.convex());
    }
}
