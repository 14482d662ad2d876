// SPDX-License-Identifier: Apache-2.0
package tipwright.fuzz;

import java.nio.charset.StandardCharsets;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;

/** Any text as a quantity: a finite number, or a reason why not. The first byte chooses the kind. */
public final class QuantityFuzz {
    private QuantityFuzz() {}

    /** Throws when the answer is not as it should be. */
    public static void fuzzerTestOneInput(byte[] data) {
        if (data.length == 0) {
            return;
        }
        Kind kind = Kind.values()[(data[0] & 0xff) % Kind.values().length];
        String text = new String(data, 1, data.length - 1, StandardCharsets.UTF_8);
        try {
            double value = Quantities.parse(text, kind);
            if (!Double.isFinite(value)) {
                throw new AssertionError("'" + text + "' is " + value);
            }
        } catch (QuantityException told) {
            if (told.getMessage() == null || told.getMessage().isBlank()) {
                throw new AssertionError("refused without a word", told);
            }
        }
    }
}
