// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;

/** A table whose columns have fixed shares of the width, so that it never runs over the margin. */
final class FixedTable {
    /** A table with more rows may break over pages. */
    private static final int TALL = 16;

    private final String caption;
    private final List<Column> columns;
    private final List<String> rows = new ArrayList<>();

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
        StringBuilder row = new StringBuilder("<tr>");
        for (int i = 0; i < cells.size(); i++) {
            String tag = i == 0 ? "th scope=\"row\"" : "td";
            String side = columns.get(i).number() ? " class=\"n\"" : "";
            row.append('<').append(tag).append(side).append('>');
            row.append(Markup.safe(cells.get(i))).append(i == 0 ? "</th>" : "</td>");
        }
        rows.add(row.append("</tr>").toString());
        return this;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    void to(Markup page) {
        page.raw(rows.size() > TALL ? "<table>" : "<table class=\"whole\">")
                .line("caption", caption)
                .raw("<colgroup>");
        columns.forEach(c -> page.raw("<col style=\"width:" + c.share() + "%\"/>"));
        page.raw("</colgroup><thead><tr>");
        for (Column c : columns) {
            page.line("th scope=\"col\"" + (c.number() ? " class=\"n\"" : ""), c.head());
        }
        page.raw("</tr></thead><tbody>");
        rows.forEach(page::raw);
        page.raw("</tbody></table>");
    }
}
