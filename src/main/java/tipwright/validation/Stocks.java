// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import tipwright.geometry.stock.PipeSize;
import tipwright.geometry.stock.RoundedTube;
import tipwright.geometry.stock.SheetGauge;

/** Sheet, pipe and tube as they are stocked. */
final class Stocks {
    private static final double POUND_PER_SQUARE_FOOT = 0.45359237 / (0.3048 * 0.3048);

    private Stocks() {}

    static void addTo(Figures figures) {
        figures.add("gauge-10", () -> tenGauge().mass(SheetGauge.STEEL_DENSITY));
        figures.add("gauge-10-table", () -> tenGauge().mass(SheetGauge.TABLE_DENSITY) / POUND_PER_SQUARE_FOOT);
        figures.add("tube-50-3", () -> new RoundedTube(0.05, 0.05, 0.003).mass(7850));
        figures.add("tube-100-50-4", () -> new RoundedTube(0.1, 0.05, 0.004).mass(7850));
        figures.add("tube-100-5", () -> new RoundedTube(0.1, 0.1, 0.005).mass(7850));
        figures.add("pipe-2-40", () -> PipeSize.of("2", "40").orElseThrow().area() * 7850 / 0.45359237 * 0.3048);
        figures.add("pipe-4-80", () -> PipeSize.of("4", "80").orElseThrow().area() * 7850 / 0.45359237 * 0.3048);
    }

    private static SheetGauge tenGauge() {
        return SheetGauge.of(SheetGauge.Metal.STEEL, 10).orElseThrow();
    }
}
