// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import tipwright.quantity.UnitSystem;

/**
 * How a document is set.
 *
 * @param medium where it is read
 * @param size of the sheet
 * @param units that results are shown in
 * @param full whether paper has the engineer's part too; a page for the browser always has it, folded
 */
public record PageSetting(Medium medium, Size size, UnitSystem units, boolean full) {
    /** Without the engineer's part on paper. */
    public PageSetting(Medium medium, Size size, UnitSystem units) {
        this(medium, size, units, false);
    }

    /** The same with the engineer's part, or without. */
    public PageSetting withFull(boolean wanted) {
        return new PageSetting(medium, size, units, wanted);
    }

    /** Whether the engineer's part is wanted. */
    boolean engineer() {
        return full || !pdf();
    }

    /** Where a document is read. */
    public enum Medium {
        PDF,
        HTML
    }

    /** Sheets; the word is the one of CSS. */
    public enum Size {
        A4(210, 297),
        LETTER(215.9, 279.4);

        private static final double MARGINS = 34;
        private static final double TOP_AND_FOOT = 31;
        private final double width;
        private final double height;

        Size(double width, double height) {
            this.width = width;
            this.height = height;
        }

        /** Between the margins, mm. */
        double textWidth() {
            return width - MARGINS;
        }

        /** Between head and foot, mm. */
        double textHeight() {
            return height - TOP_AND_FOOT;
        }
    }

    boolean pdf() {
        return medium == Medium.PDF;
    }
}
