// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.ActuatorSpeed;

/** A telescopic cylinder stage by stage. Source: v = Q/A, F = p A (hydrostatics); order of the stages: common practice. */
class TelescopicCylinderTest {
    private static final TelescopicCylinder RAM = new TelescopicCylinder(
            List.of(
                    new TelescopicCylinder.Stage(0.08, 0.3, 0.068),
                    new TelescopicCylinder.Stage(0.06, 0.25, 0.048),
                    new TelescopicCylinder.Stage(0.04, 0.2, 0.0)),
            0.5,
            16e6,
            2e-4,
            null,
            null,
            355e6,
            205e9,
            new Tube(0.1, 0.085, 0.45),
            null,
            0.95,
            null);

    private static double area(double diameter) {
        return Math.PI * diameter * diameter / 4;
    }

    @Test
    void widestStageGoesFirstAndTheNarrowestLast() {
        assertThat(RAM.stroke()).isCloseTo(0.75, within(1e-15));
        double[] lengths = {0.5, 0.79, 0.81, 1.04, 1.06, 1.25};
        double[] moving = {0.08, 0.08, 0.06, 0.06, 0.04, 0.04};
        for (int i = 0; i < lengths.length; i++) {
            assertThat(RAM.oilArea(lengths[i], true)).isCloseTo(area(moving[i]), within(1e-15));
            assertThat(RAM.ratedPush(lengths[i])).isCloseTo(16e6 * area(moving[i]) * 0.95, within(1e-6));
        }
        assertThat(RAM.ratedPush()).isCloseTo(16e6 * area(0.04) * 0.95, within(1e-6));
        assertThat(RAM.ratedPull()).isZero();
    }

    @Test
    void itGetsFasterFromStageToStageAndStallsInTheNarrowOneFirst() {
        assertThat(ActuatorSpeed.at(RAM, 0.6, 1000, true)).isCloseTo(2e-4 / area(0.08), within(1e-12));
        assertThat(ActuatorSpeed.at(RAM, 1.2, 1000, true)).isCloseTo(2e-4 / area(0.04), within(1e-12));
        double between = 0.5 * (RAM.ratedPush(1.0) + RAM.ratedPush(1.2));
        assertThat(ActuatorSpeed.at(RAM, 1.0, between, true)).isGreaterThan(0);
        assertThat(ActuatorSpeed.at(RAM, 1.2, between, true)).isZero();
    }

    private static void stands(double length, double... parts) {
        List<TelescopicCylinder.Part> column = RAM.column(length);
        assertThat(column.stream().mapToDouble(TelescopicCylinder.Part::length).toArray())
                .containsExactly(parts, within(1e-12));
        assertThat(column.stream().mapToDouble(TelescopicCylinder.Part::length).sum())
                .isCloseTo(length, within(1e-12));
    }

    /** Body 450 mm, eye 50 mm; by hand. */
    @Test
    void standsBetweenItsPinsAsFarAsEachStageIsOut() {
        stands(0.5, 0.45, 0.05);
        stands(0.6, 0.45, 0.1, 0.05);
        stands(0.9, 0.45, 0.3, 0.1, 0.05);
        stands(1.25, 0.45, 0.3, 0.25, 0.25);
        List<TelescopicCylinder.Part> out = RAM.column(1.25);
        assertThat(out.stream().mapToDouble(TelescopicCylinder.Part::outside).toArray())
                .containsExactly(0.1, 0.08, 0.06, 0.04);
        assertThat(out.get(1).area()).isCloseTo(area(0.08) - area(0.068), within(1e-15));
        assertThat(out.get(3).inertia()).isCloseTo(Math.PI * Math.pow(0.04, 4) / 64, within(1e-18));
    }
}
