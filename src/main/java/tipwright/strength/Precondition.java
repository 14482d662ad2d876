// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** What the functions of this package refuse. */
final class Precondition {
    private Precondition() {}

    /** @throws OutOfRangeException unless the value is a number above 0 */
    static void positive(String name, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new OutOfRangeException(Text.words(name + " must be above 0"));
        }
    }

    /** @throws OutOfRangeException unless the value is a number of 0 or more */
    static void notNegative(String name, double value) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new OutOfRangeException(Text.words(name + " must be 0 or more"));
        }
    }

    /**
     * A range within which a rule holds, both ends allowed.
     *
     * @param what in plain words
     * @throws OutOfRangeException unless the value lies in it
     */
    static void within(String what, Kind kind, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new OutOfRangeException(Text.of(
                    what + " is {}; the rule holds from {} to {}",
                    Text.amount(value, kind),
                    Text.amount(least, kind),
                    Text.amount(most, kind)));
        }
    }

    /** The same of how many times one size goes into another. */
    static void times(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new OutOfRangeException(Text.of(
                    what + " is {}; the rule holds from {} to {}",
                    Text.number(value, 1),
                    Text.number(least, 1),
                    Text.number(most, 1)));
        }
    }
}
