// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.geometry.Vec2;

/** Friction moments against the power they take. */
class FrictionTest {
    private static final Vec2 PIVOT = new Vec2(0.64, 0.26);
    private static final Vec2 FRAME = new Vec2(-0.3, -0.12);
    private static final Vec2 TANK = new Vec2(-0.25, 0.42);
    private static final Push WEIGHT = new Push(1, new Vec2(0.1, 0.6), new Vec2(0, -9000));

    @Test
    void pivotFrictionAddsItsMomentOverTheArm() throws LinkageException {
        assertExtraForce(new Drag(new double[] {55}, 0, 0), p -> 55);
    }

    @Test
    void endPinFrictionAddsItsMomentTimesItsRelativeTurn() throws LinkageException {
        Strut strut = Skeleton.straight(PIVOT, FRAME, TANK).actuator();
        assertExtraForce(new Drag(new double[] {0}, 30, 0), p -> 30 * Math.abs(p.lineRate(strut)));
        assertExtraForce(new Drag(new double[] {0}, 0, 40), p -> 40 * Math.abs(1 - p.lineRate(strut)));
    }

    private static void assertExtraForce(Drag drag, java.util.function.ToDoubleFunction<Configuration> power)
            throws LinkageException {
        Linkage linkage = Linkage.of(Skeleton.straight(PIVOT, FRAME, TANK));
        for (Configuration p : linkage.sweep(new double[] {0, 0.3, 0.7, 1.1}).configurations()) {
            double without = Objects.requireNonNull(linkage.reactions(p, List.of(WEIGHT), null))
                    .force();
            double with = Objects.requireNonNull(linkage.reactions(p, List.of(WEIGHT), drag))
                    .force();
            assertThat((with - without) * p.arm()).isCloseTo(power.applyAsDouble(p), within(1e-8));
        }
    }

    @Test
    void lineRateIsTheTurnOfTheActuatorPerTurnOfTheTank() throws LinkageException {
        Linkage linkage = Linkage.of(Skeleton.straight(PIVOT, FRAME, TANK));
        double h = 1e-5;
        List<Configuration> p =
                linkage.sweep(new double[] {0.5 - h, 0.5, 0.5 + h}).configurations();
        double turned = Math.atan2(
                p.get(0).line().cross(p.get(2).line()),
                p.get(0).line().dot(p.get(2).line()));
        assertThat(p.get(1).lineRate(linkage.skeleton().actuator())).isCloseTo(-turned / (2 * h), within(1e-7));
    }
}
