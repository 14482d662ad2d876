// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

/**
 * How a mark is drawn.
 *
 * @param layer in formats that have layers
 * @param colour of lines and text as 0xRRGGBB; -1: no line
 * @param width of lines, mm
 * @param dash length of dashes and gaps, mm; 0: none
 * @param fill as 0xRRGGBB; -1: none
 */
public record Pen(String layer, int colour, double width, double dash, int fill) {
    public static final int NONE = -1;

    /** A full line. */
    public static Pen line(String layer, int colour, double width) {
        return new Pen(layer, colour, width, 0, NONE);
    }

    /** A filled area without a line. */
    public static Pen area(String layer, int fill) {
        return new Pen(layer, NONE, 0, 0, fill);
    }

    /** The same, dashed. */
    public Pen dashed(double length) {
        return new Pen(layer, colour, width, length, fill);
    }

    /** The same, filled. */
    public Pen filled(int with) {
        return new Pen(layer, colour, width, dash, with);
    }
}
