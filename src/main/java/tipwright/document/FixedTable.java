// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A table whose columns have fixed shares of the width, so that it never runs over the margin; a column whose widest entry would not fit
 * gets more, from those that have room to spare.
 */
final class FixedTable {
    /** A table with more rows may break over pages. */
    private static final int TALL = 16;

    /** A table with more columns does not fit the width of a phone: its rows are stacked there. */
    private static final int NARROW = 3;

    /** Letters in a line of a table on paper, at the text's height there. */
    private static final double LINE = 104;

    /** Between the columns, letters. */
    private static final double APART = 2;

    private final String caption;
    private final List<Column> columns;
    private final List<String> rows = new ArrayList<>();
    private final int[] longest;
    private String style = "";

    FixedTable(String caption, Column... columns) {
        this.caption = caption;
        this.columns = List.of(columns);
        longest = this.columns.stream().mapToInt(c -> unbroken(c.head())).toArray();
    }

    /**
     * A column.
     *
     * @param share of the width, percent
     * @param number whether its texts stand at the right
     */
    record Column(String head, int share, boolean number) {
        static Column text(String head, int share) {
            return new Column(head, share, false);
        }

        static Column number(String head, int share) {
            return new Column(head, share, true);
        }
    }

    /** A row of texts. */
    FixedTable row(String... cells) {
        return row(List.of(cells));
    }

    FixedTable row(List<String> cells) {
        StringBuilder row = new StringBuilder("<tr" + role("row") + ">");
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i);
            longest[i] = Math.max(longest[i], columns.get(i).number() ? cell.length() : unbroken(cell));
            String tag = i == 0 ? "th scope=\"row\"" + role("rowheader") : "td" + role("cell");
            String side = columns.get(i).number() ? " class=\"n\"" : "";
            String head = " data-head=\"" + Markup.safe(columns.get(i).head()) + "\"";
            row.append('<')
                    .append(tag)
                    .append(side)
                    .append(i == 0 || !wide() ? "" : head)
                    .append('>');
            row.append(Markup.safe(cells.get(i))).append(i == 0 ? "</th>" : "</td>");
        }
        rows.add(row.append("</tr>").toString());
        return this;
    }

    /** With a class of its own for the style sheet. */
    FixedTable styled(String name) {
        style = name;
        return this;
    }

    private boolean wide() {
        return columns.size() > NARROW;
    }

    /** Said where a table's rows may be stacked, since a browser takes them for no table then. */
    private String role(String name) {
        return wide() ? " role=\"" + name + "\"" : "";
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Letters of the longest word. */
    private static int unbroken(String words) {
        return Arrays.stream(words.split(" ", -1))
                .mapToInt(String::length)
                .max()
                .orElse(0);
    }

    /** Shares of the width, percent, 100 in all. */
    double[] shares() {
        double[] least = Arrays.stream(longest)
                .mapToDouble(n -> 100 * (n + APART) / LINE)
                .toArray();
        double[] shares = columns.stream().mapToDouble(Column::share).toArray();
        double lacks = 0;
        double spare = 0;
        for (int i = 0; i < shares.length; i++) {
            lacks += Math.max(0, least[i] - shares[i]);
            spare += Math.max(0, shares[i] - least[i]);
        }
        double given = Math.min(lacks, spare);
        for (int i = 0; i < shares.length && given > 0; i++) {
            shares[i] += shares[i] < least[i]
                    ? (least[i] - shares[i]) * given / lacks
                    : -(shares[i] - least[i]) * given / spare;
        }
        return shares;
    }

    void to(Markup page) {
        String wide = wide() ? " wide" : "";
        String whole = rows.size() > TALL ? "" : " whole";
        page.raw("<table" + role("table") + " class=\"" + (style + wide + whole).strip() + "\">")
                .line("caption", caption)
                .raw("<colgroup>");
        for (double share : shares()) {
            page.raw("<col style=\"width:" + Math.round(10 * share) / 10.0 + "%\"/>");
        }
        page.raw("</colgroup><thead" + role("rowgroup") + "><tr" + role("row") + ">");
        for (Column c : columns) {
            page.line("th scope=\"col\"" + role("columnheader") + (c.number() ? " class=\"n\"" : ""), c.head());
        }
        page.raw("</tr></thead><tbody" + role("rowgroup") + ">");
        rows.forEach(page::raw);
        page.raw("</tbody></table>");
    }
}
