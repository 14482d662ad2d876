// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.design.around.SidePart;
import tipwright.design.around.Wheels;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Wind on wheels where the frame is drawn over them. Source: areas of discs, half discs and rectangles (elementary). */
class WheelWindTest {
    /** A tyre that is drawn as a member too counts once; a member beside it and one at another z count in full. */
    @Test
    void whatTheFrameTakesUpOfAWheelCountsOnce() {
        Wheels wheels = new Wheels(new Vec2(0, -0.4), 0.6, 0.2, 1);
        List<Vec2> around = new ArrayList<>();
        for (int i = 0; i < 360; i++) {
            double a = Math.toRadians(i);
            around.add(new Vec2(0.3 * Math.cos(a), -0.4 + 0.3 * Math.sin(a)));
        }
        double disc = Math.PI * 0.09;
        Vec3 fromTheSide = new Vec3(0, 0, 1);
        Vec3 fromTheEnd = new Vec3(1, 0, 0);
        SidePart drawn = new SidePart("tyre", around, List.of(0.4, 0.6), false);
        WheelWind once = WheelWind.of(wheels, List.of(drawn), 0.4, 0.6);
        assertThat(once.shown(fromTheSide)[0]).isCloseTo(disc, within(1e-3));
        assertThat(once.shown(fromTheSide)[1]).isCloseTo(disc * -0.4, within(1e-3));
        assertThat(once.shown(fromTheEnd)[0]).isCloseTo(0.6 * 0.2, within(1e-3));
        SidePart inside = new SidePart("rail", around, List.of(-0.3, 0.3), false);
        assertThat(WheelWind.of(wheels, List.of(inside), -0.3, 0.3).shown(fromTheSide)[0])
                .isCloseTo(2 * disc, within(1e-12));
        List<Vec2> half = List.of(new Vec2(-1, -0.4), new Vec2(1, -0.4), new Vec2(1, 1), new Vec2(-1, 1));
        SidePart guard = new SidePart("guard", half, List.of(), false);
        WheelWind lower = WheelWind.of(wheels, List.of(guard), -0.5, 0.5);
        assertThat(lower.shown(fromTheSide)[0]).isCloseTo(disc, within(1e-3));
        // half a disc has its middle 4 r / 3 pi from its straight edge
        assertThat(lower.shown(fromTheSide)[1]).isCloseTo(disc * (-0.4 - 4 * 0.3 / (3 * Math.PI)), within(1e-3));
        // from the end it takes up the inner half of the upper half of each tyre
        assertThat(lower.shown(fromTheEnd)[0]).isCloseTo(2 * (0.6 * 0.2 - 0.3 * 0.1), within(1e-9));
    }
}
