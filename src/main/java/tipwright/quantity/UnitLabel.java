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

    /** The SI value of a number of these; 350 mm give 0.35 m exactly. */
    public double toSi(double number) {
        double parts = Math.rint(1 / factor);
        boolean even = parts > 1 && parts < 1e9 && Math.abs(parts * factor - 1) < 1e-15;
        return (even ? number / parts : number * factor) + offset;
    }

    /** The number of these in an SI value. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }
}
