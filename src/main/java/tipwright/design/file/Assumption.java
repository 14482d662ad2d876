// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;

/**
 * What was taken because a key was left out: a default, or what follows from the builder's own measures.
 *
 * @param path the key from the top
 * @param value as a builder would write it
 * @param note what the key means; may be empty
 * @param measured whether it was worked out from what the builder measured
 * @param kind what the quantities in the value are; null: it has none, or is told in the reader's units already
 */
public record Assumption(String path, String value, String note, boolean measured, @Nullable Kind kind) {
    private static final Pattern QUANTITY = Pattern.compile("[^\\[\\], ][^\\[\\],]*");

    /** A default. */
    public Assumption(String path, String value, String note) {
        this(path, value, note, false);
    }

    /** One that is told in the reader's units already. */
    public Assumption(String path, String value, String note, boolean measured) {
        this(path, value, note, measured, null);
    }

    /** The value in a system of units; as written where its unit is one of both. */
    public String shown(UnitSystem units) {
        Kind k = kind;
        if (k == null || Quantities.unit(k, UnitSystem.METRIC).equals(Quantities.unit(k, UnitSystem.US))) {
            return value;
        }
        return units == UnitSystem.METRIC ? value : QUANTITY.matcher(value).replaceAll(q -> inUs(q.group(), k));
    }

    private static String inUs(String quantity, Kind kind) {
        try {
            return Quantities.show(Quantities.parse(quantity.strip(), kind), kind, UnitSystem.US);
        } catch (QuantityException word) {
            return quantity;
        }
    }

    /** In plain words: 'friction.pins: 0.15 taken (in the actuator's pins)'. */
    public String text() {
        return path + ": " + value + " taken" + (note.isEmpty() ? "" : " (" + note + ")");
    }
}
