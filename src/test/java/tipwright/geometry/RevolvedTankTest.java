// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RevolvedTankTest {
    private static final Vec3 X = new Vec3(1, 0, 0);
    private static final Vec3 Y = new Vec3(0, 1, 0);

    static LongStream seeds() {
        return LongStream.range(100, 120);
    }

    /** The wanted accuracy is 0.05 % of volume and 0.1 % of diameter; the mesh itself takes about half of that. */
    @ParameterizedTest
    @MethodSource("seeds")
    void agreesWithItsOwnMeshAtRandomPlanes(long seed) {
        RevolvedTank tank = Shapes.tank(seed);
        Polyhedron mesh = Polyhedron.of(tank.mesh(1e-4 * tank.diameter()));
        double volume = tank.whole().volume();
        Random random = new Random(seed);
        for (int i = 0; i < 20; i++) {
            Plane plane = Shapes.cutting(tank, random);
            Moments exact = tank.below(plane);
            Moments faceted = mesh.below(plane);
            assertThat(faceted.volume()).isCloseTo(exact.volume(), within(5e-4 * volume));
            assertThat(faceted.first().minus(exact.first()).norm() / volume)
                    .isLessThan(5e-4 * tank.middle().norm() + 5e-4 * tank.diameter());
            if (exact.volume() > 0.01 * volume) {
                assertThat(faceted.centroid().minus(exact.centroid()).norm()).isLessThan(1e-3 * tank.diameter());
            }
            assertThat(faceted.section()).isCloseTo(exact.section(), within(2e-3 * Math.pow(volume, 2.0 / 3)));
        }
        assertThat(mesh.skin().area())
                .isCloseTo(tank.skin().area(), within(5e-4 * tank.skin().area()));
        assertThat(mesh.skin().centroid().minus(tank.skin().centroid()).norm()).isLessThan(5e-4 * tank.diameter());
    }

    /** The volume agrees with the integral of the cut's area over the level, which takes another path through the sums. */
    @ParameterizedTest
    @MethodSource("seeds")
    void quadratureHasConverged(long seed) {
        RevolvedTank tank = Shapes.tank(seed);
        Random random = new Random(seed);
        for (int i = 0; i < 4; i++) {
            Plane plane = Shapes.cutting(tank, random);
            double summed = summedSections(tank, plane, tank.extent(plane.normal()));
            assertThat(tank.below(plane).volume())
                    .isCloseTo(summed, within(1e-7 * tank.whole().volume()));
        }
    }

    /** Integral of the section from the lowest point to the plane, with the square roots at its ends taken out. */
    private static double summedSections(RevolvedTank tank, Plane plane, Range range) {
        int steps = 3_000;
        double height = plane.level() - range.low();
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double t = (i + 0.5) / steps;
            // level = low + height t^2 (3 - 2 t): flat at both ends
            double level = range.low() + height * t * t * (3 - 2 * t);
            sum += tank.below(new Plane(plane.normal(), level)).section() * height * 6 * t * (1 - t) / steps;
        }
        return sum;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-12, 1e-10, 1e-8, 1e-6, 1e-4})
    void standsUprightOrNearlySo(double lean) {
        RevolvedTank tank = RevolvedTank.of(Vec3.ZERO, Y, 1, 2, Head.semiEllipsoidal(), Head.flat());
        Vec3 normal = new Vec3(Math.sin(lean), Math.cos(lean), 0);
        Moments wet = tank.below(new Plane(normal, 0.25));
        double head = Math.PI / 24;
        double shell = Math.PI / 4 * 1.25;
        assertThat(wet.volume()).isCloseTo(head + shell, within(1e-13 + lean * lean));
        assertThat(wet.section()).isCloseTo(Math.PI / 4, within(1e-5));
        double moment = -head * (1 + 3.0 / 32) + shell * -0.375;
        assertThat(wet.first().y()).isCloseTo(moment, within(1e-13 + lean * lean));
        // first order: the surface's second moment, pi/64, times the lean, and it lies lower on the +x side
        assertThat(wet.first().x()).isCloseTo(-Math.PI / 64 * Math.tan(lean), within(1e-10));
    }

    @Test
    void isExactWhenUpsideDown() {
        RevolvedTank tank = RevolvedTank.of(Vec3.ZERO, Y, 1, 2, Head.torispherical(), Head.flat());
        Plane up = new Plane(Y, -0.9);
        Plane down = new Plane(Y.times(-1), 0.9);
        assertThat(tank.below(up).volume() + tank.below(down).volume())
                .isCloseTo(tank.whole().volume(), within(1e-14));
    }

    @Test
    void aSphereIsTwoHemispheresWithNoShell() {
        RevolvedTank ball = RevolvedTank.of(X, new Vec3(1, 2, 3), 2, 0, Head.hemispherical(), Head.hemispherical());
        assertThat(ball.whole().volume()).isCloseTo(4 * Math.PI / 3, within(1e-14));
        assertThat(ball.skin().area()).isCloseTo(4 * Math.PI, within(1e-10));
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            Vec3 n = Shapes.direction(random);
            double h = 2 * random.nextDouble();
            Moments cap = ball.below(new Plane(n, n.x() - 1 + h));
            assertThat(cap.volume()).isCloseTo(Math.PI * h * h * (3 - h) / 3, within(1e-9));
            double depth = 3 * (2 - h) * (2 - h) / (4 * (3 - h));
            assertThat(cap.first()
                            .minus(X.minus(n.times(depth)).times(cap.volume()))
                            .norm())
                    .isLessThan(1e-9);
            assertThat(cap.section()).isCloseTo(Math.PI * h * (2 - h), within(1e-6));
        }
    }

    @Test
    void skinOfClosedForms() {
        RevolvedTank drum = RevolvedTank.of(Vec3.ZERO, X, 2, 3, Head.flat(), new Head.Conical(0.5));
        double cone = Math.PI * Math.sqrt(2);
        assertThat(drum.skin().area()).isCloseTo(Math.PI + 6 * Math.PI + cone, within(1e-12));
        double moment = -1.5 * Math.PI + cone * (1.5 + 1.0 / 3);
        assertThat(drum.skin().centroid().x()).isCloseTo(moment / drum.skin().area(), within(1e-12));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> RevolvedTank.of(Vec3.ZERO, X, 0, 1, Head.flat(), Head.flat()))
                .isInstanceOf(ShapeException.class)
                .hasMessage("the tank's diameter must be above 0, not 0.0 m");
        assertThatThrownBy(() -> RevolvedTank.of(Vec3.ZERO, Vec3.ZERO, 1, 1, Head.flat(), Head.flat()))
                .hasMessage("the tank needs a finite centre and an axis that is not zero");
        assertThatThrownBy(() -> RevolvedTank.of(Vec3.ZERO, X, 1, 0, Head.flat(), Head.flat()))
                .hasMessage("a tank with two flat heads needs a shell longer than 0");
        assertThatThrownBy(() -> RevolvedTank.of(Vec3.ZERO, X, 1, Double.NaN, Head.flat(), Head.flat()))
                .hasMessage("the tank's shell length must be 0 or more, not NaN m");
        assertThatThrownBy(() -> new Head.Torispherical(0.4, 0.06)).isInstanceOf(ShapeException.class);
        assertThatThrownBy(() -> new Head.Dished(0.6)).isInstanceOf(ShapeException.class);
    }
}
