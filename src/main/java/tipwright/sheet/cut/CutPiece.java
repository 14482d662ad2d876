// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import java.util.List;
import tipwright.quantity.Text;

/**
 * A length of a section or of round bar.
 *
 * @param name in the builder's words
 * @param section what it is cut from, alike for all that come from the same bar
 * @param length over its longest edge, m; NaN where the design does not tell it
 * @param mitres how far each end is off a square cut, rad; two
 * @param count how many are cut
 * @param perMetre kg of a metre; NaN where the design does not tell it
 * @param note what else is to be known; may be empty
 */
public record CutPiece(
        String name, Text section, double length, List<Double> mitres, int count, double perMetre, Text note) {
    /** Copies the list. */
    public CutPiece {
        mitres = List.copyOf(mitres);
    }

    /** With square ends. */
    static CutPiece square(String name, Text section, double length, int count, double perMetre, Text note) {
        return new CutPiece(name, section, length, List.of(0.0, 0.0), count, perMetre, note);
    }

    /** Of one, kg, as if its ends were square; NaN where it cannot be told. */
    public double mass() {
        return length * perMetre;
    }

    boolean known() {
        return length > 0;
    }
}
