// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.strength.PlateUnderPressure;
import tipwright.strength.PlateUnderPressure.Edge;

/** What is kept of a flat wall is told apart by everything that the wall is told by. */
final class FlatWallKeyTest {
    @Test
    void everyNumberAndEdgeCounts() {
        PlateUnderPressure plate =
                new PlateUnderPressure(1.2, 0.9, 0.006, 200e9, 0.3, Edge.SUPPORTED, Edge.CLAMPED, Edge.FREE, 17);
        List<Object> key = FlatWallCheck.key(plate);
        assertThat(key)
                .containsExactly(1.2, 0.9, 0.006, 200e9, 0.3, Edge.SUPPORTED, Edge.CLAMPED, Edge.FREE, 17.0)
                .hasSameSizeAs(PlateUnderPressure.class.getRecordComponents());
    }
}
