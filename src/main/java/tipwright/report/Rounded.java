// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers for machines: nine significant digits, nothing smaller than a billionth of the unit, no exponent. */
final class Rounded {
    private static final MathContext DIGITS = new MathContext(9, RoundingMode.HALF_EVEN);
    private static final int DECIMALS = 9;

    private Rounded() {}

    /** As written; only for finite numbers. */
    static String text(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS);
        if (rounded.scale() > DECIMALS) {
            rounded = rounded.setScale(DECIMALS, RoundingMode.HALF_EVEN);
        }
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
