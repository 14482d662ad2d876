// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The frame of a document: head, styles, parts with their bookmarks, header and footer of each page. */
final class DocumentFrame {
    private static final String CONTENTS = "<!-- contents -->";

    /** Nothing is fetched from anywhere. Source of the form: W3C Content Security Policy Level 3. */
    private static final String POLICY =
            "default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'; img-src data:";

    private final String title;
    private final Origin origin;
    private final PageSetting paper;
    private final List<String> parts = new ArrayList<>();
    private final Markup page = new Markup();
    private final Markup last = new Markup();
    private boolean folding;
    private boolean folded;

    DocumentFrame(String title, Origin origin, PageSetting paper) {
        this.title = title;
        this.origin = origin;
        this.paper = paper;
    }

    Markup page() {
        return page;
    }

    /** From now on the parts of a page for the browser are folded. */
    void fold() {
        folding = !paper.pdf();
    }

    /** Starts a part. */
    void part(String heading) {
        parts.add(heading);
        String id = "id=\"part-" + parts.size() + "\"";
        if (folding) {
            page.raw(folded ? "</details>" : "").raw("<details " + id + "><summary>");
            page.line("h2", heading).raw("</summary>");
            folded = true;
        } else {
            page.line("h2 " + id, heading);
        }
    }

    /** What stands at the end of a page for the browser, outside of its parts. */
    Markup last() {
        return last;
    }

    /** Where each part begins; it may be shown before the parts are there. */
    private String contents() {
        Markup all = new Markup();
        all.raw("<div class=\"contents\">")
                .line("h2 class=\"small\"", "Contents")
                .raw("<ol>");
        for (int i = 1; i <= parts.size(); i++) {
            all.inside("li", "<a href=\"#part-" + i + "\">" + Markup.safe(parts.get(i - 1)) + "</a>");
        }
        return all.raw("</ol></div>").text();
    }

    /** Leaves room for the list of contents; on paper only, since a browser's page is folded. */
    void contentsHere() {
        if (paper.pdf()) {
            page.raw(CONTENTS);
        }
    }

    /** The whole document. */
    String close() {
        Markup all = new Markup();
        all.raw("<!DOCTYPE html>");
        all.raw("<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\"><head><meta charset=\"UTF-8\"/>");
        if (!paper.pdf()) {
            all.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>");
            all.raw("<meta name=\"color-scheme\" content=\"light dark\"/>");
            all.raw("<meta http-equiv=\"Content-Security-Policy\" content=\"" + POLICY + "\"/>");
        }
        all.line("title", title + ": Tipwright report");
        all.raw("<meta name=\"description\" content=\"" + Markup.safe("Report on " + title) + "\"/>");
        all.raw("<style>" + pages() + resource("report.css") + (paper.pdf() ? "" : resource("screen.css"))
                + "</style>");
        if (paper.pdf()) {
            bookmarks(all);
        }
        all.raw("</head><body>");
        page.raw(folded ? "</details>" : "");
        String units = paper.units().name().toLowerCase(Locale.ROOT);
        all.raw("<main id=\"top\" data-units=\"" + units + "\">");
        all.raw(page.text().replace(CONTENTS, contents())).raw("</main>");
        all.raw(last.text()).raw("</body></html>");
        return all.text();
    }

    private void bookmarks(Markup all) {
        all.raw("<bookmarks>");
        all.raw("<bookmark name=\"" + Markup.safe(title) + "\" href=\"#top\"/>");
        for (int i = 1; i <= parts.size(); i++) {
            all.raw("<bookmark name=\"" + Markup.safe(parts.get(i - 1)) + "\" href=\"#part-" + i + "\"/>");
        }
        all.raw("</bookmarks>");
    }

    private String pages() {
        String size = paper.size() == PageSetting.Size.A4 ? "A4" : "letter";
        String font = "font-family: '" + Fonts.FAMILY + "', sans-serif; font-size: 8pt; ";
        String left = origin.version() + "   " + origin.files() + "   SHA-256 " + origin.shortHash();
        return "@page { size: " + size + " portrait; margin: 15mm 15mm 16mm 15mm;"
                + " @top-left { " + font + "content: \"" + quoted(title) + "\"; }"
                + " @bottom-left { " + font + "content: \"" + quoted(left) + "\"; }"
                + " @bottom-right { " + font + "content: \"page \" counter(page) \" of \" counter(pages); } }\n";
    }

    private static String quoted(String text) {
        return text.replaceAll("[\\p{Cntrl}\"\\\\<>&]", "'");
    }

    /** A text beside the program. */
    static String resource(String name) {
        try (InputStream in = DocumentFrame.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing in the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(name + " cannot be read", e);
        }
    }
}
