// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;

/** A table whose columns have fixed shares of the width, so that it never runs over the margin. */
final class FixedTable {
    /** A table with more rows may break over pages. */
    private static final int TALL = 16;

    /** A table with more columns does not fit the width of a phone: its rows are stacked there. */
    private static final int NARROW = 3;

    private final String caption;
    private final List<Column> columns;
    private final List<String> rows = new ArrayList<>();
    private String style = "";

    FixedTable(String caption, Column... columns) {
        this.caption = caption;
        this.columns = List.of(columns);
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

    void to(Markup page) {
        String wide = wide() ? " wide" : "";
        String whole = rows.size() > TALL ? "" : " whole";
        page.raw("<table" + role("table") + " class=\"" + (style + wide + whole).strip() + "\">")
                .line("caption", caption)
                .raw("<colgroup>");
        columns.forEach(c -> page.raw("<col style=\"width:" + c.share() + "%\"/>"));
        page.raw("</colgroup><thead" + role("rowgroup") + "><tr" + role("row") + ">");
        for (Column c : columns) {
            page.line("th scope=\"col\"" + role("columnheader") + (c.number() ? " class=\"n\"" : ""), c.head());
        }
        page.raw("</tr></thead><tbody" + role("rowgroup") + ">");
        rows.forEach(page::raw);
        page.raw("</tbody></table>");
    }
}
