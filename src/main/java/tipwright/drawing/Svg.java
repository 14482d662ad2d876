// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

/** Writes drawings as SVG, one unit a millimetre; text stays text, and what shows it brings its own fonts for signs that ours lacks. */
public final class Svg {
    private Svg() {}

    /**
     * The file's text.
     *
     * @param sized whether width and height in mm are given; not for a figure inside a page
     */
    public static String of(Drawing drawing, boolean sized) {
        SvgCanvas canvas = new SvgCanvas(drawing.width(), drawing.height(), "", SvgCanvas.FINE);
        new Painter(canvas.pen(), 1, text -> text, 0).paint(drawing);
        return canvas.element(Signs.plain(drawing.title()), sized) + "\n";
    }
}
