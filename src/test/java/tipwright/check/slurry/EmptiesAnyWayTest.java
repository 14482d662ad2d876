// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.One;
import tipwright.check.rule.Finding;

/**
 * What stays in a box whose dump end opens 200 mm above its floor, on every ground on which it may stand. By geometry: tipped by a, a
 * wedge h^2 / (2 tan a) stays behind the sill; ground that falls to the far side takes its slope off a.
 */
class EmptiesAnyWayTest {
    private static final String BOX = swap(
            Examples.BOX,
            "{name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
            "{name: end, rim: rectangle, width: 1 m, height: 800 mm, centre: [500 mm, 1100 mm, 0 mm], normal: x}",
            "{fill: 100 %, density: 1400 kg/m3, repose: 30 deg}",
            "{fill: 50 %, solids-by-volume: 20 %, solids-density: 2650 kg/m3, packing: 60 %, repose: 30 deg}",
            "tilt: {to: 80 deg}",
            "tilt: {to: 50 deg}");

    private static Finding of(String site, String part) throws CannotComputeException {
        return One.of(BOX + site, "empties/" + part);
    }

    private static double wedge(double degrees) {
        return 0.04 / (2 * Math.tan(Math.toRadians(degrees)));
    }

    @Test
    void groundThatFallsToTheFarSideKeepsMore() throws CannotComputeException {
        Finding liquid = of("site: {any-way: 6 deg}\n", "liquid");
        assertThat(liquid.demand()).isCloseTo(wedge(44) / 0.5, within(1e-9));
        assertThat(liquid.loadCase()).isEqualTo("ground down to the far side");
        assertThat(of("", "liquid").demand()).isCloseTo(wedge(50) / 0.5, within(1e-9));
        assertThat(of("", "liquid").loadCase()).isNull();
    }

    /** As the eight grounds give it that are stated outright: tangents of grade and cross slope are the parts of the slope's. */
    @Test
    void theWorstOfEightGrounds() throws CannotComputeException {
        for (String part : new String[] {"liquid", "settled-solids"}) {
            double most = 0;
            for (int i = 0; i < 8; i++) {
                double steep = Math.tan(Math.toRadians(6));
                double grade = Math.atan(steep * Math.cos(i * Math.PI / 4));
                double cross = Math.atan(steep * Math.sin(i * Math.PI / 4));
                String site = "site: {grade: " + Math.toDegrees(grade) + " deg, cross-slope: " + Math.toDegrees(cross)
                        + " deg}\n";
                most = Math.max(most, of(site, part).demand());
            }
            Finding found = of("site: {any-way: 6 deg}\n", part);
            assertThat(found.demand()).isCloseTo(most, within(1e-9));
            assertThat(found.demand()).isGreaterThan(1.1 * of("", part).demand());
        }
    }
}
