// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.design.joint.Bolts;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Shear strength of a bolt through its thread: alpha_v = 0.6 for class 8.8, 0.5 for the cold-formed and brittle ones, 4.8, 5.8, 6.8
 * and 10.9. Where the tensile strength alone does not tell the class, as 4.6 from 4.8, the lower one counts. Source: EN 1993-1-8,
 * table 3.4 (from memory).
 */
class BoltClassTest {
    /** One M16 bolt of 157 mm2 in plain shear of 10 kN. */
    @ParameterizedTest
    @CsvSource({"400, 0.5", "500, 0.5", "600, 0.5", "800, 0.6", "830, 0.6", "1000, 0.5", "1040, 0.5", "1200, 0.5"})
    void shearThroughTheThread(double ultimate, double alpha) {
        BoltGroup group = new BoltGroup(
                new Bolts(Vec3.ZERO, new Vec3(0, 1, 0), List.of(Vec2.ZERO), 0.016, 157e-6, ultimate * 1e6));
        double strength = alpha * ultimate * 1e6 * 157e-6 / 1.25;
        assertThat(group.share(new Vec3(10_000, 0, 0), Vec3.ZERO)).isCloseTo(10_000 / strength, within(1e-9));
    }

    /** Coarse inch threads. Source: tensile stress areas of ASME B1.1 as in Shigley, table 8-2 (from memory), in2. */
    @ParameterizedTest
    @CsvSource({
        "0.25, 0.0318",
        "0.3125, 0.0524",
        "0.375, 0.0775",
        "0.4375, 0.1063",
        "0.5, 0.1419",
        "0.5625, 0.182",
        "0.625, 0.226",
        "0.75, 0.334",
        "0.875, 0.462",
        "1, 0.606",
        "1.25, 0.969",
        "1.5, 1.405"
    })
    void inchThreads(double diameter, double area) {
        assertThat(BoltGroup.stressArea(diameter * 0.0254) / (0.0254 * 0.0254)).isCloseTo(area, within(0.004 * area));
    }
}
