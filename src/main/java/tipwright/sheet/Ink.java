// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import tipwright.drawing.Pen;

/** Pens of all sheets. */
final class Ink {
    static final int BLACK = 0x000000;
    static final int GREY = 0x666666;
    static final int PALE = 0xdddddd;
    static final int WHITE = 0xffffff;
    static final Pen TEXT = Pen.line("text", BLACK, 0.2);
    static final Pen QUIET = Pen.line("text", GREY, 0.2);

    private Ink() {}
}
