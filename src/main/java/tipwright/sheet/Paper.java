// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

/** Sizes of paper, upright, mm. */
public enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }
}
