// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sizes of a pipe.
 *
 * @param outside diameter, m
 * @param wall m
 */
public record PipeSize(double outside, double wall) {
    private static final double INCH = 0.0254;
    private static final Pattern WRITTEN =
            Pattern.compile("\\s*([0-9][0-9 /-]*?)\\s*(?:in|inch|\"|'')?\\s*(?:schedule|sch\\.?)\\s*(40|80)\\s*");

    /** Outside diameter, wall of schedule 40, wall of schedule 80, in. Source: ASME B36.10M (from memory). */
    private static final Map<String, List<Double>> SIZES = sizes();

    /** What is not known comes as not a number. */
    private static final PipeSize UNKNOWN = new PipeSize(Double.NaN, Double.NaN);

    private static Map<String, List<Double>> sizes() {
        Map<String, List<Double>> all = new LinkedHashMap<>();
        all.put("1/2", List.of(0.840, 0.109, 0.147));
        all.put("3/4", List.of(1.050, 0.113, 0.154));
        all.put("1", List.of(1.315, 0.133, 0.179));
        all.put("1 1/4", List.of(1.660, 0.140, 0.191));
        all.put("1 1/2", List.of(1.900, 0.145, 0.200));
        all.put("2", List.of(2.375, 0.154, 0.218));
        all.put("2 1/2", List.of(2.875, 0.203, 0.276));
        all.put("3", List.of(3.500, 0.216, 0.300));
        all.put("3 1/2", List.of(4.000, 0.226, 0.318));
        all.put("4", List.of(4.500, 0.237, 0.337));
        all.put("5", List.of(5.563, 0.258, 0.375));
        all.put("6", List.of(6.625, 0.280, 0.432));
        all.put("8", List.of(8.625, 0.322, 0.500));
        return all;
    }

    /** Of a text such as '2 in schedule 40'; not a number where it is not known. */
    public static PipeSize of(String text) {
        Matcher written = WRITTEN.matcher(text);
        if (!written.matches()) {
            return UNKNOWN;
        }
        List<Double> row = SIZES.get(written.group(1).strip().replace('-', ' '));
        return row == null
                ? UNKNOWN
                : new PipeSize(row.get(0) * INCH, row.get(written.group(2).equals("40") ? 1 : 2) * INCH);
    }

    /** Whether the size is known. */
    public boolean isKnown() {
        return !Double.isNaN(outside);
    }

    /** The nominal sizes that are known, in. */
    public static List<String> nominal() {
        return List.copyOf(SIZES.keySet());
    }

    /** Area of the section, m2. */
    public double area() {
        return Math.PI * wall * (outside - wall);
    }
}
