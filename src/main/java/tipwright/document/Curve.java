// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

/**
 * A line of a plot, in the units of its axes.
 *
 * @param name written on the line
 * @param x along
 * @param y up; NaN leaves a gap
 * @param limit whether it is a limit, drawn thin and without marks
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Curve(String name, double[] x, double[] y, boolean limit) {
    static Curve of(String name, double[] x, double[] y) {
        return new Curve(name, x, y, false);
    }

    /** A level line. */
    static Curve limit(String name, double[] x, double y) {
        return new Curve(name, new double[] {x[0], x[x.length - 1]}, new double[] {y, y}, true);
    }
}
