// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.geometry.Plane;
import tipwright.geometry.Vec3;

/** A door under settled solids with liquid over them, against a sum over small squares of what stands straight above each. */
class LayeredDoorTest {
    private static final double WATER = 9810;
    private static final double GRIT = 19000;
    private static final int CELLS = 1000;
    private static final List<Vec3> DOOR =
            List.of(new Vec3(0, 0, 0), new Vec3(0, 0, 1), new Vec3(0, 1, 1), new Vec3(0, 1, 0));

    @ParameterizedTest
    @CsvSource({
        "0.8, 0.3, 0, 0",
        "0.8, 0.3, 20, 0",
        "0.5, 0.6, 35, 0",
        "0.9, 0.4, -30, 15",
        "0.2, 0.7, 10, -20",
        "2, 1.5, 5, 0"
    })
    void everyPointBearsWhatIsStraightAboveIt(double level, double bed, double lean, double aside) {
        Vec3 normal = new Vec3(Math.sin(Math.toRadians(lean)), 1, Math.sin(Math.toRadians(aside))).unit();
        Plane surface = new Plane(new Vec3(0, 1, 0), level);
        Plane solids = new Plane(normal, normal.dot(new Vec3(0, bed, 0.5)));
        double force = 0;
        double lever = 0;
        double area = 1.0 / CELLS / CELLS;
        for (int i = 0; i < CELLS * CELLS; i++) {
            double y = (i / CELLS + 0.5) / CELLS;
            double z = (i % CELLS + 0.5) / CELLS;
            double ofSolids = Math.max(0, bed - y - (z - 0.5) * normal.z() / normal.y());
            double over = Math.max(0, level - y - ofSolids);
            double pressure = WATER * over + GRIT * ofSolids;
            force += pressure * area;
            lever += pressure * area * y;
        }
        DoorLoad load = DoorLoad.layered(DOOR, surface, solids, WATER, GRIT);
        assertThat(load.force()).isCloseTo(force, within(1e-4 * force));
        assertThat(load.moment().y()).isCloseTo(lever, within(1e-4 * force));
    }
}
