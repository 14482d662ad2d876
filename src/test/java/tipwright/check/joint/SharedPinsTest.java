// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.geometry.Vec2;

/** The middle pin of a knee, on which both links and the actuator meet. Source: balance of forces at a point. */
class SharedPinsTest {
    private static String knee(Vec2 frame, Vec2 foot) throws IOException {
        String yaml = Files.readString(Path.of("geometry", "knee-stand.yaml"));
        return swap(
                yaml,
                "frame-pin: [-950 mm, -450 mm]",
                "frame-pin: [" + 1000 * frame.x() + " mm, " + 1000 * frame.y() + " mm]",
                "foot-pin: [300 mm, -200 mm]",
                "foot-pin: [" + 1000 * foot.x() + " mm, " + 1000 * foot.y() + " mm]",
                "tilt: {to: 45 deg}",
                "tilt: {to: 1 deg, step: 1 deg}\nfriction: {pivot: 0, pins: 0}",
                "stroke: 620 mm",
                "stroke: 600 mm");
    }

    private static Vec2 at(double x, double y) {
        return new Vec2(x, y);
    }

    /** The three forces at the knee with the link to the tank pressed by so much: that of the actuator, and of the lower link. */
    private static double[] others(Vec2 frame, Vec2 foot, double upper) {
        Vec2 knee = at(-0.39, 0.03);
        Vec2 up = at(-0.19, 0.24).minus(knee).unit();
        Vec2 push = knee.minus(frame).unit();
        Vec2 down = foot.minus(knee).unit();
        double actuator = upper * up.cross(down) / push.cross(down);
        double lower = upper * up.cross(push) / down.cross(push);
        return new double[] {Math.abs(actuator), Math.abs(lower)};
    }

    private static void bears(Vec2 frame, Vec2 foot, int which) throws IOException, CannotComputeException {
        String yaml = knee(frame, foot);
        Finding tank = One.of(yaml, "pin/tank-pin");
        Finding middle = One.of(yaml, "pin/knee");
        assertThat(tank.worst().tilt()).isZero();
        assertThat(middle.worst().tilt()).isZero();
        // the two pins are alike: their stresses are as their forces
        double[] others = others(frame, foot, 1);
        double[] all = {1, others[0], others[1]};
        for (int i = 0; i < 3; i++) {
            assertThat(all[i]).isLessThanOrEqualTo(all[which]);
        }
        assertThat(middle.demand() / tank.demand()).isCloseTo(all[which], within(1e-6));
    }

    @Test
    void theLinkToTheTankPressesMost() throws IOException, CannotComputeException {
        bears(at(-1.09, 0.03), at(-0.6, -0.5), 0);
    }

    @Test
    void theActuatorPressesMost() throws IOException, CannotComputeException {
        bears(at(-0.95, -0.45), at(0.3, -0.2), 1);
    }

    @Test
    void theLowerLinkPressesMost() throws IOException, CannotComputeException {
        bears(at(-0.7, 0.66), at(-0.5, -0.5), 2);
    }

    /** A lug on the lower link may hold both others, or only the link to the tank, which presses with 1: the larger of the two. */
    private static void lugBears(Vec2 frame, Vec2 foot, double times) throws IOException, CannotComputeException {
        String lug = "lug: {width: 80 mm, thickness: 12 mm, hole: 30 mm, end: 40 mm, plates: 2}";
        String yaml =
                swap(knee(frame, foot), "fastenings:\n", "fastenings:\n  - {joint: knee, on: lower, " + lug + "}\n");
        double tank = One.of(yaml, "lug/tank-pin-bearing").demand();
        assertThat(One.of(yaml, "lug/knee-bearing").demand()).isCloseTo(times * tank, within(1e-6 * tank));
    }

    @Test
    void aLugOnTheLowerLinkHoldsAllThatIsOnThePin() throws IOException, CannotComputeException {
        double lower = others(at(-0.7, 0.66), at(-0.5, -0.5), 1)[1];
        assertThat(lower).isGreaterThan(1.5);
        lugBears(at(-0.7, 0.66), at(-0.5, -0.5), lower);
    }

    @Test
    void orTheLinkToTheTankAloneWhereThatIsMore() throws IOException, CannotComputeException {
        assertThat(others(at(-1.09, 0.03), at(-0.6, -0.5), 1)[1]).isLessThan(1);
        lugBears(at(-1.09, 0.03), at(-0.6, -0.5), 1);
    }
}
