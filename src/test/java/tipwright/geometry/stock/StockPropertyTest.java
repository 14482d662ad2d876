// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tipwright.geometry.stock.SheetGauge.Metal;

/** What must hold for all that is stocked. */
class StockPropertyTest {
    @Test
    void aHigherGaugeIsThinner() {
        for (Metal metal : Metal.values()) {
            double last = Double.POSITIVE_INFINITY;
            for (int number = 7; number <= 20; number++) {
                double thickness = SheetGauge.of(metal, number).orElseThrow().thickness();
                assertThat(thickness).isLessThan(last).isPositive();
                last = thickness;
            }
            assertThat(SheetGauge.of(metal, 6)).isEmpty();
            assertThat(SheetGauge.of(metal, 21)).isEmpty();
        }
        assertThat(SheetGauge.all()).hasSize(14 * Metal.values().length);
    }

    @Test
    void everyPipeHasAHole() {
        Map<String, Double> walls = new HashMap<>();
        for (PipeSize pipe : PipeSize.all()) {
            assertThat(pipe.inside()).as("%s", pipe).isPositive();
            assertThat(walls.put(pipe.nominal() + " " + pipe.schedule(), pipe.wall()))
                    .isNull();
        }
        for (PipeSize pipe : PipeSize.all()) {
            if (pipe.schedule().equals("40")) {
                assertThat(walls.get(pipe.nominal() + " 10")).isLessThan(pipe.wall());
                assertThat(walls.get(pipe.nominal() + " 80")).isGreaterThan(pipe.wall());
            }
        }
        assertThat(PipeSize.of("2", "41")).isEmpty();
        assertThat(PipeSize.of("3-1/2", "160")).isEmpty();
    }

    @Test
    void roundCornersNeedRoom() {
        assertThatThrownBy(() -> new RoundedTube(0.011, 0.05, 0.003)).hasMessageContaining("four walls");
        assertThat(new RoundedTube(0.012, 0.05, 0.003).area()).isPositive();
        assertThat(new RoundedTube(0.05, 0.03, 0.003).area()).isEqualTo(new RoundedTube(0.03, 0.05, 0.003).area());
    }
}
