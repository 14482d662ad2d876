// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Thicknesses as steel is sold: '16 ga', '3/16 plate', '6 mm plate'. Source: Manufacturers' Standard Gauge for uncoated steel sheet, a
 * seller's table for 8 to 12, 14, 16, 18 and 20; the others from memory.
 */
final class SheetThickness {
    private static final Pattern GAUGE = Pattern.compile("\\s*(\\d{1,2}) ?(?:ga|gauge|gage|ga\\.)\\s*");
    private static final Pattern PLATE = Pattern.compile("\\s*(.*?)\\s+plate\\s*");

    /** Gauge number to inches. */
    private static final Map<Integer, String> INCHES = Map.ofEntries(
            Map.entry(7, "0.1793"),
            Map.entry(8, "0.1644"),
            Map.entry(9, "0.1495"),
            Map.entry(10, "0.1345"),
            Map.entry(11, "0.1196"),
            Map.entry(12, "0.1046"),
            Map.entry(13, "0.0897"),
            Map.entry(14, "0.0747"),
            Map.entry(15, "0.0673"),
            Map.entry(16, "0.0598"),
            Map.entry(17, "0.0538"),
            Map.entry(18, "0.0478"),
            Map.entry(19, "0.0418"),
            Map.entry(20, "0.0359"));

    private SheetThickness() {}

    static boolean isGauge(String base) {
        return GAUGE.matcher(base).matches();
    }

    /** The thickness as a plain length; the text itself when it is neither a gauge nor called plate. */
    static String asLength(String base) throws QuantityException {
        Matcher gauge = GAUGE.matcher(base);
        if (gauge.matches()) {
            @Nullable String inches = INCHES.get(Integer.valueOf(gauge.group(1)));
            if (inches == null) {
                throw new QuantityException("no steel sheet of '" + base.strip()
                        + "' is known here; allowed: 7 ga to 20 ga, or the thickness itself, such as '1/8 in'");
            }
            return inches + " in";
        }
        Matcher plate = PLATE.matcher(base);
        if (!plate.matches()) {
            return base;
        }
        String thickness = plate.group(1);
        return thickness.matches("(\\d+[ -])?\\d+/\\d+") ? thickness + " in" : thickness;
    }
}
