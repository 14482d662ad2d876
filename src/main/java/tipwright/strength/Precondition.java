// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/** What the functions of this package refuse: a caller's mistake, so an exception and no verdict. */
final class Precondition {
    private Precondition() {}

    /** @throws IllegalArgumentException unless the value is a number above 0 */
    static void positive(String name, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be above 0, is " + value);
        }
    }

    /** @throws IllegalArgumentException unless the value is a number of 0 or more */
    static void notNegative(String name, double value) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be 0 or more, is " + value);
        }
    }

    /** @throws IllegalArgumentException unless the value lies between the two, both allowed */
    static void within(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(name + " must be from " + least + " to " + most + ", is " + value);
        }
    }
}
