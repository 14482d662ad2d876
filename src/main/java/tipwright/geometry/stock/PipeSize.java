// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Steel pipe by nominal size and schedule. The nominal size is a name and no measure: 2 in pipe is 2.375 in outside.
 *
 * <p>Source: ASME B36.10 (from memory). The mill may roll the wall 12.5 % thinner.
 *
 * @param nominal size as the trade says it, such as '2' or '1-1/2', inches
 * @param schedule such as '40', or 'STD' and 'XS'
 * @param outside diameter, m
 * @param wall m
 */
public record PipeSize(String nominal, String schedule, double outside, double wall) {
    /** The pipe of a size and schedule, if it is stocked. */
    public static Optional<PipeSize> of(String nominal, String schedule) {
        return all().stream()
                .filter(p -> p.nominal().equals(nominal) && p.schedule().equals(schedule))
                .findFirst();
    }

    /** All pipes, size by size. */
    public static List<PipeSize> all() {
        List<PipeSize> all = new ArrayList<>();
        List<String[]> lines = StockTable.lines("pipe-sizes.csv");
        String[] head = lines.get(0);
        for (String[] line : lines.subList(1, lines.size())) {
            double outside = Double.parseDouble(line[1]) * StockTable.INCH;
            for (int i = 2; i < line.length; i++) {
                if (!line[i].equals("-")) {
                    double wall = Double.parseDouble(line[i]) * StockTable.INCH;
                    all.add(new PipeSize(line[0], head[i], outside, wall));
                }
            }
        }
        return all;
    }

    /** Diameter inside, m. */
    public double inside() {
        return outside - 2 * wall;
    }

    /** Area of the steel, m2. */
    public double area() {
        return Math.PI * wall * (outside - wall);
    }
}
