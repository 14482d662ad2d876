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
record PlotCurve(String name, double[] x, double[] y, boolean limit) {
    static PlotCurve of(String name, double[] x, double[] y) {
        return new PlotCurve(name, x, y, false);
    }

    /** A level line. */
    static PlotCurve limit(String name, double[] x, double y) {
        return new PlotCurve(name, new double[] {x[0], x[x.length - 1]}, new double[] {y, y}, true);
    }
}
