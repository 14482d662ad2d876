// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.geometry.Vec2;
import tipwright.linkage.Configuration;
import tipwright.linkage.Joint;
import tipwright.linkage.Linkage;
import tipwright.linkage.LinkageException;
import tipwright.linkage.Motion;
import tipwright.linkage.Skeleton;
import tipwright.linkage.Strut;

/**
 * The four-bar against Freudenstein's equation K1 cos th4 - K2 cos th2 + K3 = cos(th2 - th4), K1 = d/a, K2 = d/c,
 * K3 = (a^2 - b^2 + c^2 + d^2)/(2ac); a crank, b coupler, c rocker, d ground; angles counterclockwise from the ground link.
 * Source: F. Freudenstein, Approximate synthesis of four-bar linkages, Trans. ASME 77 (1955); R. L. Norton, Design of Machinery,
 * example 4-1 (both from memory, recomputed). The second and third sets are our own, from the same equation.
 */
class FreudensteinTest {
    private record Angles(double second, double third, double fourth) {}

    /** Closes the loop by two circles; the branch is +1 open, -1 crossed. */
    private static Angles close(double a, double b, double c, double d, double second, int branch) {
        Vec2 pin = new Vec2(a * Math.cos(second), a * Math.sin(second));
        Vec2 to = new Vec2(d, 0).minus(pin);
        double far = to.norm();
        double along = (b * b - c * c + far * far) / (2 * far);
        double across = branch * Math.sqrt(b * b - along * along);
        Vec2 u = to.times(1 / far);
        Vec2 other = pin.plus(u.times(along)).plus(new Vec2(-u.y(), u.x()).times(across));
        Vec2 coupler = other.minus(pin);
        Vec2 rocker = other.minus(new Vec2(d, 0));
        return new Angles(second, Math.atan2(coupler.y(), coupler.x()), Math.atan2(rocker.y(), rocker.x()));
    }

    /** The crank as the body that tilts, from one angle clockwise to another; the angles reached. */
    private static Angles turned(double a, double b, double c, double d, Angles from, double to)
            throws LinkageException {
        Vec2 crank = new Vec2(a * Math.cos(from.second()), a * Math.sin(from.second()));
        Vec2 rocker = new Vec2(d + c * Math.cos(from.fourth()), c * Math.sin(from.fourth()));
        Vec2 middle = new Vec2(Math.cos((from.second() + to) / 2), Math.sin((from.second() + to) / 2));
        // The actuator pulls across the crank's middle position, so that it keeps its arm on the way.
        Vec2 framePin = new Vec2(middle.y(), -middle.x()).times(5 * a);
        Skeleton skeleton = new Skeleton(
                List.of("frame", "crank", "coupler", "rocker"),
                1,
                List.of(
                        new Joint.Pin(Skeleton.PIVOT, 0, 1, Vec2.ZERO),
                        new Joint.Pin("crank-coupler", 1, 2, crank),
                        new Joint.Pin("coupler-rocker", 2, 3, rocker),
                        new Joint.Pin("rocker-frame", 0, 3, new Vec2(d, 0))),
                new Strut("actuator", 0, framePin, 1, crank));
        double tilt = from.second() - to;
        Motion motion = Linkage.of(skeleton).sweep(new double[] {0, tilt / 2, tilt});
        assertThat(motion.stop()).isNull();
        Configuration p = motion.configurations().get(2);
        return new Angles(to, from.third() - p.turn(2), from.fourth() - p.turn(3));
    }

    private static double deg(double rad) {
        return Math.toDegrees(rad);
    }

    @ParameterizedTest
    @CsvSource({"1, 20.298, 57.325", "-1, -60.978, -98.005"})
    void nortonsExampleOnBothBranches(int branch, double third, double fourth) throws LinkageException {
        Angles start = close(40, 120, 80, 100, Math.toRadians(75), branch);
        Angles end = turned(40, 120, 80, 100, start, Math.toRadians(40));
        assertThat(deg(end.third())).isCloseTo(third, within(1e-3));
        assertThat(deg(end.fourth())).isCloseTo(fourth, within(1e-3));
        assertThat(Math.abs(deg(end.fourth() - end.third()))).isCloseTo(37.027, within(1e-3));
    }

    @Test
    void transmissionAngleByTheCosineRule() throws LinkageException {
        Angles start = close(40, 90, 70, 100, Math.toRadians(100), 1);
        Angles end = turned(40, 90, 70, 100, start, Math.toRadians(45));
        assertThat(deg(end.fourth() - end.third())).isCloseTo(55.940, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({"90, 80", "45, 60"})
    void synthesisedLinkageMeetsItsThreePositions(double second, double fourth) throws LinkageException {
        Angles start = close(0.113497, 1.050144, 0.244311, 1, Math.toRadians(135), 1);
        assertThat(deg(start.fourth())).isCloseTo(100, within(1e-3));
        Angles end = turned(0.113497, 1.050144, 0.244311, 1, start, Math.toRadians(second));
        assertThat(deg(end.fourth())).isCloseTo(fourth, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({"40, 120, 80, 100", "40, 90, 70, 100", "113.497, 1050.144, 244.311, 1000"})
    void equationHoldsAllTheWay(double a, double b, double c, double d) throws LinkageException {
        double k1 = d / a;
        double k2 = d / c;
        double k3 = (a * a - b * b + c * c + d * d) / (2 * a * c);
        for (int branch : new int[] {1, -1}) {
            Angles start = close(a, b, c, d, Math.toRadians(120), branch);
            for (double second = 115; second > 40; second -= 5) {
                Angles at = turned(a, b, c, d, start, Math.toRadians(second));
                double left = k1 * Math.cos(at.fourth()) - k2 * Math.cos(at.second()) + k3;
                assertThat(left).isCloseTo(Math.cos(at.second() - at.fourth()), within(1e-11));
            }
        }
    }
}
