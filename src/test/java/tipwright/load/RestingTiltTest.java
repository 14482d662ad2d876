// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import org.junit.jupiter.api.Test;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.HowFull;
import tipwright.design.Design;
import tipwright.geometry.Vec3;

/** A tank that starts tipped lets its solids settle as it stands there, not as it is drawn. */
class RestingTiltTest {
    private static final double FROM = Math.toRadians(20);
    private static final String YAML =
            swap(Examples.BOX, "tilt: {to", "tilt: {from: 20 deg, to", "density: 1400 kg/m3", "density: 1200 kg/m3");

    private static LoadCase find(LoadTable table, String name) {
        return table.cases().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /**
     * In a box 1 m wide a level surface at a tilt is a straight line across: the middle of a volume of mean depth d lies
     * tan(tilt)/(12 d) towards the low side and d/2 + tan^2(tilt)/(24 d) up. Source: integral of a trapezium.
     */
    @Test
    void theCakeIsLevelWhereTheTankStarts() {
        Design design = Examples.read(YAML);
        double depth = 200.0 / 1650 / 0.6;
        LoadTable table = LoadTable.of(design, new double[] {FROM, Math.toRadians(25), Math.toRadians(60)});
        EmptyTank empty = EmptyTank.of(design, design.tank().interior().solid());
        double t = Math.tan(FROM);
        assertThat(depth).isGreaterThan(t / 2);
        Vec3 middle = new Vec3(t / (12 * depth), 0.5 + depth / 2 + t * t / (24 * depth), 0);
        for (LoadState state : find(table, "caked").states().subList(0, 2)) {
            double cake = state.mass() - empty.mass();
            assertThat(cake).isCloseTo(depth * (0.6 * 2650 + 0.4 * 1000), within(1e-6));
            Vec3 at = state.centroid()
                    .times(state.mass())
                    .minus(empty.centroid().times(empty.mass()))
                    .times(1 / cake);
            assertThat(at.minus(middle).norm()).isLessThan(1e-9);
        }
    }

    /** Five degrees on it has tipped less than its angle of repose, so the heap still lies as it settled. */
    @Test
    void theHeapMovesOnceItHasTippedByItsRepose() {
        Design design = Examples.read(YAML);
        LoadTable table = LoadTable.of(
                design,
                new double[] {FROM, Math.toRadians(35), Math.toRadians(49), Math.toRadians(51.5), Math.toRadians(60)});
        var heaped = find(table, "heaped").states();
        assertThat(heaped.get(1).centroid().minus(heaped.get(0).centroid()).norm())
                .isLessThan(1e-9);
        assertThat(heaped.get(2).centroid().minus(heaped.get(0).centroid()).norm())
                .isLessThan(1e-9);
        assertThat(heaped.get(3).centroid().x())
                .isGreaterThan(heaped.get(0).centroid().x());
    }

    /** The level switch is set with the tank where it starts: half of a box tipped by 20 degrees stands (sin + cos)/2 high. */
    @Test
    void theLevelSwitchIsSetWhereTheTankStarts() throws Exception {
        Design design = Examples.read(
                swap(YAML, "fill: 100 %", "fill: 50 %") + "cases: {skip: [draining, heaped, caked, heel]}\n");
        HowFull full = Checker.check(design).howFull();
        assertThat(full).isNotNull();
        double level = full.level();
        // volume under the level, with the corner regions above and below cut off
        double low = Math.sin(FROM);
        double high = Math.cos(FROM);
        double area = area(level, low, high);
        assertThat(area).isCloseTo(full.volume(), within(1e-4));
    }

    /** Area of a unit square, tipped, below a level over its lowest corner. */
    private static double area(double level, double low, double high) {
        double slant = low * high;
        if (level <= low) {
            return level * level / (2 * slant);
        }
        if (level <= high) {
            return low / (2 * high) + (level - low) / high;
        }
        double rest = low + high - level;
        return 1 - rest * rest / (2 * slant);
    }
}
