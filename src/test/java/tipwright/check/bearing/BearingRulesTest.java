// SPDX-License-Identifier: Apache-2.0
package tipwright.check.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.design.joint.HousingStrength;
import tipwright.geometry.Vec2;
import tipwright.strength.EquivalentLoad;

/** Rules of the bearing checks. */
class BearingRulesTest {
    /** Source: ISO 76, P0 = max(0.6 Fr + 0.5 Fa, Fr) for deep-groove ball bearings (from memory); values by hand. */
    @Test
    void staticEquivalentLoad() {
        assertThat(EquivalentLoad.ofRest(8, 4)).isEqualTo(8);
        assertThat(EquivalentLoad.ofRest(2, 5)).isCloseTo(3.7, within(1e-12));
    }

    @Test
    void angleToTheBaseIsZeroPressedOntoItAndHalfATurnPulledOffIt() {
        Vec2 base = new Vec2(0, -1);
        assertThat(BearingHousingCheck.angle(new Vec2(0, -5), base)).isCloseTo(0, within(1e-12));
        assertThat(BearingHousingCheck.angle(new Vec2(3, 0), base)).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(BearingHousingCheck.angle(new Vec2(-3, 0), base)).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(BearingHousingCheck.angle(new Vec2(0, 2), base)).isCloseTo(Math.PI, within(1e-12));
    }

    @Test
    void strengthIsTakenBetweenTheFiguresGiven() {
        List<HousingStrength> figures = List.of(
                new HousingStrength(0, 40_000),
                new HousingStrength(Math.PI / 2, 20_000),
                new HousingStrength(Math.PI, 16_000));
        assertThat(BearingHousingCheck.strength(figures, 0)).isEqualTo(40_000);
        assertThat(BearingHousingCheck.strength(figures, Math.PI / 4)).isCloseTo(30_000, within(1e-6));
        assertThat(BearingHousingCheck.strength(figures, Math.PI)).isEqualTo(16_000);
        assertThat(BearingHousingCheck.strength(figures.subList(0, 2), Math.PI)).isEqualTo(20_000);
    }
}
