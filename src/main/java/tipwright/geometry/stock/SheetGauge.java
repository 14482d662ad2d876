// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A gauge of sheet metal. One number means another thickness for each metal.
 *
 * <p>The gauge of plain steel was laid down by weight, 41.82 lb/ft2 for an inch, which makes 8038 kg/m3: the true mass is that of 7850
 * kg/m3, 2.3 % less than the weights of gauge tables.
 *
 * <p>Source: Manufacturers' Standard Gauge for steel, 8 to 12, 14, 16, 18 and 20 on a public page (read), the others from memory; the
 * gauges of galvanised steel, stainless steel and aluminium from memory, but for number 10 (read).
 *
 * @param metal of the sheet
 * @param number of the gauge
 * @param thickness m
 */
public record SheetGauge(Metal metal, int number, double thickness) {
    /** Mass of steel that a gauge table counts with, kg/m3: 41.82 lb/ft2 for an inch; too much for any real sheet. */
    public static final double TABLE_DENSITY = 41.82 * 0.45359237 / (0.3048 * 0.3048 * StockTable.INCH);

    /** Mass of steel, kg/m3. Source: a steelmaker's book of sections (read). */
    public static final double STEEL_DENSITY = 7850;

    /** What the sheet is of. */
    public enum Metal {
        /** Plain steel, hot or cold rolled. */
        STEEL(1),
        /** Zinc-coated steel; the coat is part of the thickness. */
        GALVANISED(2),
        /** Stainless steel. */
        STAINLESS(3),
        /** Aluminium. */
        ALUMINIUM(4);

        private final int column;

        Metal(int column) {
            this.column = column;
        }
    }

    /** The gauge of a metal and number, if there is one; 7 to 20. */
    public static Optional<SheetGauge> of(Metal metal, int number) {
        return all().stream()
                .filter(g -> g.metal() == metal && g.number() == number)
                .findFirst();
    }

    /** All gauges, metal by metal, thickest first. */
    public static List<SheetGauge> all() {
        List<SheetGauge> all = new ArrayList<>();
        for (Metal metal : Metal.values()) {
            for (String[] line : StockTable.lines("sheet-gauges.csv")) {
                double inches = Double.parseDouble(line[metal.column]);
                all.add(new SheetGauge(metal, Integer.parseInt(line[0]), inches * StockTable.INCH));
            }
        }
        return all;
    }

    /** Mass of a square metre at a density in kg/m3, kg/m2. */
    public double mass(double density) {
        return thickness * density;
    }
}
