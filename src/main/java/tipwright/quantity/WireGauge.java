// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** American wire gauges as they are said: '6', 'AWG 6', '6 AWG', '2/0'. As a number 1/0 is 0, 2/0 is -1. */
final class WireGauge {
    private static final Pattern GAUGE =
            Pattern.compile("\\s*(?:AWG|awg)?\\s*(\\d{1,2})(/0)?\\s*(?:AWG|awg|ga|gauge)?\\s*");

    private static final Pattern CORES = Pattern.compile("\\s*(\\d{1,2})/([1-9])\\b.*");

    private WireGauge() {}

    /** Whether it can only be a gauge of wire. */
    static boolean isNamed(String base) {
        return GAUGE.matcher(base).matches() && !base.strip().matches("\\d+");
    }

    /**
     * The gauge as a plain number; the text itself when it is no gauge.
     *
     * @throws QuantityException when it tells the cores too: '6/2'
     */
    static String asNumber(String base) throws QuantityException {
        Matcher cores = CORES.matcher(base);
        if (cores.matches()) {
            throw new QuantityException("'" + base.strip() + "' is a cable of " + cores.group(2)
                    + " cores; only the gauge of one core is needed, such as '" + cores.group(1) + "'");
        }
        Matcher gauge = GAUGE.matcher(base);
        if (!gauge.matches()) {
            return base;
        }
        int number = Integer.parseInt(gauge.group(1));
        return gauge.group(2) == null ? Integer.toString(number) : number == 0 ? base : Integer.toString(1 - number);
    }
}
