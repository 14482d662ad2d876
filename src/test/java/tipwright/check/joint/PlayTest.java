// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.geometry.Vec2;

/** How far play in the actuator's pins lets the rim of an empty box move, by hand; its centre passes over the pivot at tan = 0.4/0.5. */
class PlayTest {
    private static final Vec2 PIVOT = new Vec2(0.4, 0.4);
    private static final String BOX = Examples.BOX
            + "cases: {skip: [held, draining, heaped, caked, heel, settled, slid]}\n"
            + "friction: {pivot: 0, pins: 0}\n";
    private static final String PIN = "    frame-pin-joint: {diameter: 20 mm, lug: 20 mm, cheek: 10 mm, gap: 1 mm}\n"
            + "    tank-pin-joint: {diameter: 24 mm, lug: 20 mm, cheek: 10 mm, gap: 1 mm}\n    actuators:";

    /** From the pivot square to the line from pin to pin, m. */
    private static double arm(double tilt) {
        Vec2 frame = new Vec2(-0.6, -0.5);
        Vec2 tank = PIVOT.plus(new Vec2(-0.85 * Math.cos(tilt), 0.85 * Math.sin(tilt)));
        return Math.abs(tank.minus(frame).unit().cross(PIVOT.minus(frame)));
    }

    /** 1 mm in each pin, times the farthest corner's 1421 mm over the arm: most where the arm is least, and where the load changes sides. */
    @Test
    void theRimMovesByThePlayOverTheArm() throws CannotComputeException {
        String yaml = BOX + "wear: {play: 1 mm, rattle: 8 mm}\n";
        double rim = Math.hypot(0.9, 1.1);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 80; i++) {
            least = Math.min(least, arm(Math.toRadians(i)));
        }
        Finding play = One.of(yaml, "play");
        assertThat(play.demand()).isCloseTo(0.002 * rim / least, within(1e-3 * play.demand()));
        assertThat(play.capacity()).isEqualTo(0.008);
        assertThat(play.note().metric())
                .isEqualTo("at the rim, 1421 mm from the pivot, with 2.0 mm of play in the actuator's pins");
        double over = Math.atan(0.8);
        Finding drop = One.of(yaml, "play/drop");
        assertThat(drop.tilt()).isCloseTo(over, within(Math.toRadians(0.02)));
        assertThat(drop.demand()).isCloseTo(0.002 * rim / arm(over), within(1e-3 * drop.demand()));
        assertThat(drop.note().metric())
                .isEqualTo("at the rim, through the play, where push and pull change, at 39 deg");
        // short of that tilt the force never changes its sign
        assertThat(One.all(swap(yaml, "to: 80 deg", "to: 38 deg"), "play"))
                .extracting(Finding::id)
                .containsExactly("play");
    }

    /** The larger of what is drilled and what is worn, at each pin for itself. */
    @Test
    void drilledOrWorn() {
        String lug = "{width: 60 mm, thickness: 10 mm, hole: %s mm, end: 35 mm}";
        String yaml = swap(BOX, "    actuators:", PIN) + "fastenings:\n"
                + "  - {joint: frame-pin, lug: " + lug.formatted("20.5") + "}\n"
                + "  - {joint: tank-pin, lug: " + lug.formatted("26") + "}\n"
                + "  - {joint: bearing-1, lug: " + lug.formatted("40") + "}\n";
        Design design = Examples.read(yaml + "wear: {play: 1 mm}\n");
        assertThat(PlayCheck.play(design, "frame-pin")).isCloseTo(0.001, within(1e-12));
        assertThat(PlayCheck.play(design, "rod-pin")).isCloseTo(0.002, within(1e-12));
        Design tight = Examples.read(yaml + "wear: {play: 0.1 mm}\n");
        assertThat(PlayCheck.play(tight, "frame-pin")).isCloseTo(0.0005, within(1e-12));
        assertThat(PlayCheck.play(Examples.read(BOX + "wear: {play: 1 mm}\n"), "rod-pin"))
                .isEqualTo(0.001);
    }
}
