// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.geometry.Head;
import tipwright.geometry.Moments;
import tipwright.geometry.Plane;
import tipwright.geometry.RevolvedTank;
import tipwright.geometry.Vec3;

/** Heads alone: spherical caps, 2:1 ellipsoids and torispheres. */
class TankHeadTest {
    private static final Vec3 AXIS = new Vec3(1, 0, 0);
    private static final Vec3 UP = new Vec3(0, 1, 0);
    private static final double INCH = 0.0254;

    /** A head on a flat plate at its tangent plane x = 0. */
    private static RevolvedTank alone(Head head, double diameter) {
        return RevolvedTank.of(Vec3.ZERO, AXIS, diameter, 0, Head.flat(), head);
    }

    @ParameterizedTest(name = "R {0}, h {1}")
    @CsvFileSource(resources = "spherical-cap.csv")
    void sphericalCap(double radius, double depth, double volume, double fromCentre) {
        double diameter = 2 * Math.sqrt(depth * (2 * radius - depth));
        Moments cap = alone(new Head.Dished(depth / diameter), diameter).whole();
        assertThat(cap.volume()).isCloseTo(volume, within(1e-7));
        assertThat(cap.centroid().x()).isCloseTo(fromCentre - (radius - depth), within(1e-7));
        // the same cap cut off a ball
        RevolvedTank ball = RevolvedTank.of(Vec3.ZERO, AXIS, 2 * radius, 0, Head.hemispherical(), Head.hemispherical());
        Moments cut = ball.below(new Plane(UP, depth - radius));
        assertThat(cut.volume()).isCloseTo(volume, within(1e-7));
        assertThat(cut.centroid().y()).isCloseTo(-fromCentre, within(1e-7));
    }

    /**
     * Volume pi D^3 / 24 and centroid 3 D / 32 outward from the tangent plane, half the volume of a hemisphere.
     *
     * <p>Source: vessel design tips by A. Montemayor (the half hemisphere); the centroid from memory.
     */
    @Test
    void semiEllipsoidalHead() {
        Moments metric = alone(Head.semiEllipsoidal(), 1.2).whole();
        assertThat(metric.volume()).isCloseTo(0.2261947, within(5e-8));
        assertThat(metric.centroid().x()).isCloseTo(0.1125, within(1e-12));
        double half = 0.5 * alone(Head.hemispherical(), 1.2).whole().volume();
        assertThat(metric.volume()).isCloseTo(half, within(1e-14));
        double inches = alone(Head.semiEllipsoidal(), 48 * INCH).whole().volume() / (INCH * INCH * INCH);
        assertThat(inches).isCloseTo(14_476.459, within(5e-4));
        assertThat(inches / 231).isCloseTo(62.66865, within(5e-6));
    }

    /** Filled to z = depth / D, a head of a horizontal tank holds z^2 (3 - 2 z) of its volume; from memory. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.25, 0.5, 0.75, 0.99})
    void semiEllipsoidalHeadPartlyFilled(double z) {
        RevolvedTank head = alone(Head.semiEllipsoidal(), 2);
        double share =
                head.below(new Plane(UP, 2 * z - 1)).volume() / head.whole().volume();
        assertThat(share).isCloseTo(z * z * (3 - 2 * z), within(1e-9));
    }

    @ParameterizedTest(name = "crown {0}, knuckle {1}")
    @CsvFileSource(resources = "torispherical-head.csv")
    void torisphericalHead(double crown, double knuckle, double depth, double volume, double centroid) {
        Head head = new Head.Torispherical(crown, knuckle);
        Moments whole = alone(head, 1).whole();
        assertThat(head.depth(1)).isCloseTo(depth, within(5e-7));
        assertThat(whole.volume()).isCloseTo(volume, within(5e-7));
        assertThat(whole.centroid().x()).isCloseTo(centroid, within(5e-7));
        assertThat(whole.volume()).isCloseTo(closedForm(crown, knuckle, head.depth(1)), within(1e-12));
    }

    /** Source: vcalc.com, torispherical head volume and height. */
    private static double closedForm(double big, double small, double depth) {
        double c = 0.5 - small;
        double square = 2 * depth * big * big;
        double rest = (2 * small * small + c * c + 2 * small * big) * (big - depth);
        double bent = 3 * small * small * c * Math.asin((big - depth) / (big - small));
        return Math.PI / 3 * (square - rest + bent);
    }
}
