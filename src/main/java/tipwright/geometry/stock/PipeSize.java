// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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
    private static final Pattern WRITTEN = Pattern.compile(
            "\\s*([0-9][0-9 /-]*?)\\s*(?:in|inch|\"|'')?\\s*(?:schedule|sch\\.?)?\\s*(10|40|80|160|STD|XS)\\s*");
    private static final Pattern SCHEDULED = Pattern.compile(".*(?:sch|STD|XS).*");

    /** The pipe that a text such as '2 in schedule 40' or '1-1/2 in XS' names, if it is stocked. */
    public static Optional<PipeSize> named(String text) {
        Matcher written = WRITTEN.matcher(text);
        return written.matches() && SCHEDULED.matcher(text).matches()
                ? of(written.group(1).strip().replace(' ', '-'), written.group(2))
                : Optional.empty();
    }

    /** The nominal sizes as the trade says them, inches, smallest first. */
    public static List<String> sizes() {
        return all().stream().map(p -> p.nominal().replace('-', ' ')).distinct().toList();
    }

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
