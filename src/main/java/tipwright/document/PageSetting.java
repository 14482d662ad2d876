// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import tipwright.quantity.UnitSystem;

/**
 * How a document is set.
 *
 * @param medium where it is read
 * @param size of the sheet
 * @param units that results are shown in
 */
public record PageSetting(Medium medium, Size size, UnitSystem units) {
    /** Where a document is read. */
    public enum Medium {
        PDF,
        HTML
    }

    /** Sheets; the word is the one of CSS. */
    public enum Size {
        A4(210),
        LETTER(215.9);

        private static final double MARGINS = 34;
        private final double width;

        Size(double width) {
            this.width = width;
        }

        /** Between the margins, mm. */
        double textWidth() {
            return width - MARGINS;
        }
    }

    boolean pdf() {
        return medium == Medium.PDF;
    }
}
