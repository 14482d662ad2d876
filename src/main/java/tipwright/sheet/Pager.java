// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.List;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.drawing.TextWidth;
import tipwright.geometry.Vec2;

/** Pages of headings, sentences, tables and drawings that follow each other from above. Mutable: owned by one caller. */
final class Pager {
    static final double MARGIN = 12;
    static final double LETTERS = 3.1;
    static final double LINE = 4.2;

    private static final double TITLE = 5.5;
    private static final double HEADING = 4;
    private static final double FOOT = 8;
    private static final double BOTTOM = 14;
    private static final double BETWEEN = 3;
    private static final Pen RULE = Pen.line("rules", Ink.GREY, 0.2);

    private final String name;
    private final Paper paper;
    private final TextWidth text = new TextWidth();
    private final List<Drawing.Board> boards = new ArrayList<>();
    private final List<String> titles = new ArrayList<>();
    private double y;

    Pager(String name, Paper paper) {
        this.name = name;
        this.paper = paper;
    }

    /** Of what can be printed on, mm. */
    double width() {
        return paper.width() - 2 * MARGIN;
    }

    /** What is left above the foot of the page, mm. */
    double left() {
        return y - BOTTOM;
    }

    Drawing.Board board() {
        return boards.get(boards.size() - 1);
    }

    void page(String title) {
        boards.add(new Drawing.Board());
        titles.add(title);
        y = paper.height() - MARGIN - TITLE;
        board().text(new Vec2(MARGIN, y), TITLE, -1, title, Ink.TEXT);
        y -= 7;
    }

    /** Starts a page where less than this is left, mm. */
    void room(double height) {
        if (left() < height) {
            String title = titles.get(titles.size() - 1);
            page(title.endsWith(MORE) ? title : title + MORE);
        }
    }

    private static final String MORE = ", continued";

    /** Starts a page where a heading and so many rows do not fit. */
    void keep(int rows) {
        room((rows + 3) * LINE + HEADING);
    }

    void down(double by) {
        y -= by;
    }

    void heading(String words) {
        room(HEADING + 4 * LINE);
        y -= 3;
        board().text(new Vec2(MARGIN, y), HEADING, -1, words, Ink.TEXT);
        board().line(new Vec2(MARGIN, y - 1.3), new Vec2(MARGIN + width(), y - 1.3), RULE);
        y -= 5.8;
    }

    /** A sentence or more, over as many lines as it takes. */
    void line(String words) {
        for (String line : text.wrapped(words, LETTERS, width())) {
            room(LINE);
            board().text(new Vec2(MARGIN, y), LETTERS, -1, line, Ink.TEXT);
            y -= LINE;
        }
    }

    /** A numbered or marked line, what follows the mark set in. */
    void item(String mark, String words) {
        double in = 5;
        boolean first = true;
        List<String> lines = text.wrapped(words, LETTERS, width() - in);
        room(lines.size() * LINE);
        for (String line : lines) {
            if (first) {
                board().text(new Vec2(MARGIN, y), LETTERS, -1, mark, Ink.TEXT);
            }
            board().text(new Vec2(MARGIN + in, y), LETTERS, -1, line, Ink.TEXT);
            y -= LINE;
            first = false;
        }
    }

    /** A drawing in the middle of the page. */
    void drawing(Drawing drawing) {
        room(drawing.height());
        Vec2 corner = new Vec2(paper.width() / 2 - drawing.width() / 2, y - drawing.height() + LETTERS);
        board().add(drawing, corner.minus(drawing.low()));
        y -= drawing.height() + 1;
    }

    /**
     * A table. Columns of numbers stand to the right; the widest column of words gives way where there is too little room.
     *
     * @param kinds a letter for each column: 'l' words, 'r' numbers, 'b' a box to write in
     * @param head of each column
     */
    void table(String kinds, String[] head, List<String[]> rows) {
        double[] wide = widths(kinds, head, rows);
        if (!String.join("", head).isBlank()) {
            row(kinds, wide, head, true);
        }
        for (String[] row : rows) {
            row(kinds, wide, row, false);
        }
        y -= 1;
    }

    private double[] widths(String kinds, String[] head, List<String[]> rows) {
        double[] wide = new double[kinds.length()];
        double all = 0;
        int widest = 0;
        for (int i = 0; i < wide.length; i++) {
            wide[i] = kinds.charAt(i) == 'b' ? 24 : text.of(head[i], LETTERS);
            for (String[] row : rows) {
                wide[i] = Math.max(wide[i], text.of(row[i], LETTERS));
            }
            all += wide[i] + BETWEEN;
            boolean words = kinds.charAt(i) == 'l';
            widest = words && (kinds.charAt(widest) != 'l' || wide[i] > wide[widest]) ? i : widest;
        }
        if (all > width()) {
            wide[widest] = Math.max(20, wide[widest] - (all - width()));
        } else {
            double more = Math.min(6, (width() - all) / wide.length);
            for (int i = 0; i < wide.length; i++) {
                wide[i] += more;
            }
        }
        return wide;
    }

    private void row(String kinds, double[] wide, String[] cells, boolean head) {
        List<List<String>> lines = new ArrayList<>();
        int most = 1;
        for (int i = 0; i < cells.length; i++) {
            lines.add(text.wrapped(cells[i], LETTERS, wide[i] + 0.01));
            most = Math.max(most, lines.get(i).size());
        }
        room(most * LINE + (head ? 2 * LINE : 0));
        double x = MARGIN;
        for (int i = 0; i < cells.length; i++) {
            boolean right = kinds.charAt(i) == 'r';
            if (kinds.charAt(i) == 'b' && !head) {
                board().box(new Vec2(x, y - 1), new Vec2(x + wide[i], y + LETTERS), RULE);
            }
            for (int k = 0; k < lines.get(i).size(); k++) {
                Vec2 at = new Vec2(right ? x + wide[i] : x, y - k * LINE);
                board().text(at, LETTERS, right ? 1 : -1, lines.get(i).get(k), head ? Ink.QUIET : Ink.TEXT);
            }
            x += wide[i] + BETWEEN;
        }
        y -= most * LINE;
    }

    /** All pages, each with its number at the foot. */
    List<Drawing> pages() {
        List<Drawing> pages = new ArrayList<>();
        for (int i = 0; i < boards.size(); i++) {
            String foot = name + ": weld sheet, page " + (i + 1) + " of " + boards.size();
            boards.get(i).text(new Vec2(paper.width() - MARGIN, FOOT), 2.8, 1, foot, Ink.QUIET);
            pages.add(boards.get(i).on(titles.get(i), Vec2.ZERO, new Vec2(paper.width(), paper.height())));
        }
        return pages;
    }
}
