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

/** When the cake slides, the door that let the water out hangs open: its weight pulls straight down at its hinge. Statics by hand. */
class SlideWithDoorTest {
    private static final double TILT = Math.toRadians(60);
    private static final double KG = 150;
    private static final String BOX = swap(Examples.DOOR_BOX, "pull: 12 kN", "pull: 12 kN, hold: 15 kN")
            + "friction: {pivot: 0, pins: 0}\ndump: {cake: one-slide}\n";

    private static Finding actuator(String name) throws CannotComputeException {
        return One.of(swap(BOX, "NAME", name), "slide/actuator");
    }

    @Test
    void weightOfTheOpenDoorPullsToo() throws CannotComputeException {
        double pinX = 0.4 - 0.85 * Math.cos(TILT);
        double pinY = 0.4 + 0.85 * Math.sin(TILT);
        double length = Math.hypot(pinX + 0.6, pinY + 0.5);
        double arm = ((pinX + 0.6) * (pinY - 0.4) - (pinY + 0.5) * (pinX - 0.4)) / length;
        // from half a metre under the hinge in the tank to straight under it
        double more = 9.80665 * KG * 0.5 * Math.sin(TILT) / Math.abs(arm);
        double stiff = actuator("lump").demand();
        assertThat(actuator("end").demand()).isCloseTo(stiff + more, within(1e-6 * stiff));
    }
}
