// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import java.util.List;

/**
 * A unit as builders write it.
 *
 * @param name the usual spelling: 'mm'
 * @param aliases other spellings that are read too: 'inch', 'inches'
 * @param kind what it measures
 * @param factor SI units in one of it
 * @param offset SI value of its zero; 0 but for temperatures
 */
public record UnitLabel(String name, List<String> aliases, Kind kind, double factor, double offset) {
    /** Copies the list. */
    public UnitLabel {
        aliases = List.copyOf(aliases);
    }

    /** The SI value of a number of these. */
    public double toSi(double number) {
        return number * factor + offset;
    }

    /** The number of these in an SI value. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }
}
