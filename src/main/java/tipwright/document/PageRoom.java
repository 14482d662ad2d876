// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.text.AttributedString;
import java.util.List;
import java.util.Map;
import tipwright.report.Prose;

/** How much of a page is left while texts are put on it; sizes and margins are those of the style sheet. Mutable: owned by one caller. */
final class PageRoom {
    static final double BODY = 9.5;
    static final double CAPTION = 8.5;
    private static final double POINT = 25.4 / 72;
    private static final double LEADING = 1.35;
    private static final double AFTER = 5;
    private static final double AFTER_ITEM = 2.5;
    private static final double BULLET = 14;
    private static final double HEADING = 26;
    private static final double LIST = 6;
    /** Text is set a little wider than it is measured, in kerning and where a word does not fit any more. */
    private static final double WIDER = 1.03;

    private final double width;
    private final Font font;
    private final FontRenderContext measure = new FontRenderContext(null, true, true);
    private double left;

    /** An empty page. */
    PageRoom(PageSetting.Size size, Font font) {
        this.font = font;
        width = size.textWidth() / POINT;
        left = size.textHeight() / POINT;
    }

    /**
     * Lines that a text takes.
     *
     * @param size of its letters, points
     * @param wide points
     */
    private int lines(String text, double size, double wide) {
        String safe = Prose.safe(text);
        if (safe.isBlank()) {
            return 1;
        }
        AttributedString set = new AttributedString(safe, Map.of(TextAttribute.FONT, font.deriveFont((float) size)));
        LineBreakMeasurer breaks = new LineBreakMeasurer(set.getIterator(), measure);
        int lines = 0;
        while (breaks.getPosition() < safe.length()) {
            breaks.nextLayout((float) (wide / WIDER));
            lines++;
        }
        return lines;
    }

    private double height(String text, double size, double wide) {
        return lines(text, size, wide) * size * LEADING;
    }

    /** Takes some points away. */
    PageRoom take(double points) {
        left -= points;
        return this;
    }

    /** Takes what a paragraph needs. */
    PageRoom paragraph(String text, double size) {
        return take(height(text, size, width) + AFTER);
    }

    /** Takes what a text in a box with a margin needs. */
    PageRoom boxed(List<String> texts, double size, double around) {
        texts.forEach(t -> take(height(t, size, width - 2 * AFTER_ITEM - BULLET) + AFTER));
        return take(around);
    }

    /**
     * Takes what a row of a table needs.
     *
     * @param share of the page's width that the text has
     */
    PageRoom row(String text, double size, double share) {
        return take(height(text, size, share * width - 2 * AFTER_ITEM - AFTER_ITEM) + AFTER_ITEM + 1.5);
    }

    /** What a figure needs, mm high for its width of the page. */
    PageRoom figure(double mm) {
        return take(mm / POINT + HEADING + 2);
    }

    /** What the heading of a list, and its end, need. */
    PageRoom listed() {
        return take(HEADING + LIST);
    }

    private double item(String text) {
        return height(text, BODY, width - BULLET) + AFTER_ITEM;
    }

    /** Takes what an item needs, if there is as much. */
    boolean fits(String item) {
        double need = item(item);
        if (need > left) {
            return false;
        }
        left -= need;
        return true;
    }

    /** Whether a paragraph would fit. */
    boolean has(String text, double size) {
        return height(text, size, width) + AFTER <= left;
    }
}
