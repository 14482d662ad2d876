// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.LongStream;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Revolved tanks by an independent numerics library: whole ones as discs stacked along the axis, cut ones as circular segments.
 * The profiles are written here anew from the geometry of each head. Source: Hipparchus, Gauss-Legendre quadrature.
 */
class QuadratureRefereeTest {
    private static final int PANELS = 100;
    private static final int POINTS = 10;
    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();
    private static final Vec3 X = new Vec3(1, 0, 0);

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void volumeAndCentroidAgree(long seed) {
        Case c = Case.of(new Random(seed));
        Moments ours = c.tank().whole();
        double volume = c.integral(x -> area(c.radius(x)));
        double first = c.integral(x -> x * area(c.radius(x)));
        assertThat(ours.volume()).isCloseTo(volume, within(1e-7 * volume));
        assertThat(ours.first().x()).isCloseTo(first, within(1e-7 * volume));
        assertThat(Math.hypot(ours.first().y(), ours.first().z())).isLessThan(1e-12);
    }

    /** The surface leans along the tank: at each place along the axis what is wet of the disc is a circular segment. */
    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsBelowALeaningSurfaceAgrees(long seed) {
        Random random = new Random(seed);
        Case c = Case.of(random);
        double lean = (random.nextDouble() - 0.5) * 1.2;
        Vec3 up = new Vec3(Math.sin(lean), Math.cos(lean), 0);
        Range range = c.tank().extent(up);
        double level = range.low() + (0.1 + 0.8 * random.nextDouble()) * range.span();
        Moments ours = c.tank().below(new Plane(up, level));
        DoubleUnaryOperator depth = x -> (level - x * up.x()) / up.y();
        double volume = c.integral(x -> segment(c.radius(x), depth.applyAsDouble(x)));
        double firstX = c.integral(x -> x * segment(c.radius(x), depth.applyAsDouble(x)));
        double firstY = c.integral(x -> segmentMoment(c.radius(x), depth.applyAsDouble(x)));
        double whole = c.tank().whole().volume();
        assertThat(ours.volume()).isCloseTo(volume, within(1e-7 * whole));
        assertThat(ours.first().x()).isCloseTo(firstX, within(1e-7 * whole));
        assertThat(ours.first().y()).isCloseTo(firstY, within(1e-7 * whole));
    }

    private static double area(double r) {
        return Math.PI * r * r;
    }

    /** Area of a disc below a height above its middle. */
    private static double segment(double r, double y) {
        double h = Math.max(-r, Math.min(r, y));
        return r == 0 ? 0 : r * r * (Math.PI / 2 + Math.asin(h / r)) + h * Math.sqrt(r * r - h * h);
    }

    /** Its moment about the middle's height: the integral of y times the chord. */
    private static double segmentMoment(double r, double y) {
        double h = Math.max(-r, Math.min(r, y));
        return -2.0 / 3 * Math.pow(r * r - h * h, 1.5);
    }

    /** A tank along x with its middle in the origin. */
    private record Case(double diameter, double length, Head left, Head right) {
        static Case of(Random random) {
            return new Case(
                    0.3 + random.nextDouble(),
                    0.1 + 2 * random.nextDouble(),
                    Shapes.HEADS.get(random.nextInt(Shapes.HEADS.size())),
                    Shapes.HEADS.get(random.nextInt(Shapes.HEADS.size())));
        }

        RevolvedTank tank() {
            return RevolvedTank.of(Vec3.ZERO, X, diameter, length, left, right);
        }

        double radius(double x) {
            double out = Math.abs(x) - length / 2;
            return out <= 0 ? diameter / 2 : head(x < 0 ? left : right, out);
        }

        /** Radius of a head at a distance outward from its tangent plane. */
        private double head(Head head, double out) {
            double half = diameter / 2;
            if (head instanceof Head.Ellipsoidal e) {
                double share = out / (e.depthShare() * diameter);
                return half * Math.sqrt(Math.max(0, 1 - share * share));
            }
            if (head instanceof Head.Dished d) {
                double deep = d.depthShare() * diameter;
                double ball = (half * half + deep * deep) / (2 * deep);
                return circle(ball, out + ball - deep);
            }
            if (head instanceof Head.Conical c) {
                return half * Math.max(0, 1 - out / (c.depthShare() * diameter));
            }
            if (head instanceof Head.Torispherical t) {
                double big = t.crown() * diameter;
                double small = t.knuckle() * diameter;
                // the centre of the crown is on the axis, so far inward that the two circles touch from inside
                double inward = Math.sqrt((big - small) * (big - small) - (half - small) * (half - small));
                double touch = small * inward / (big - small);
                return out < touch ? half - small + circle(small, out) : circle(big, out + inward);
            }
            return 0;
        }

        private static double circle(double r, double at) {
            return Math.sqrt(Math.max(0, r * r - at * at));
        }

        /** Integral along the axis, each head by itself with the root at its tip taken out. */
        double integral(DoubleUnaryOperator f) {
            double half = length / 2;
            double a = half + left.depth(diameter);
            double b = half + right.depth(diameter);
            return part(f, -a, -half) + part(f, -half, half) + part(f, half, b);
        }

        /** The surface may end anywhere on the profile, which leaves kinks: many short panels. */
        private static double part(DoubleUnaryOperator f, double low, double high) {
            double mid = (low + high) / 2;
            double span = (high - low) / 2;
            double sum = 0;
            for (int i = 0; i < PANELS; i++) {
                double from = Math.PI * ((double) i / PANELS - 0.5);
                double to = Math.PI * ((i + 1.0) / PANELS - 0.5);
                sum += GAUSS.legendre(POINTS, from, to)
                        .integrate(u -> span * Math.cos(u) * f.applyAsDouble(mid + span * Math.sin(u)));
            }
            return sum;
        }
    }
}
