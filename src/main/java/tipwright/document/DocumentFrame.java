// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The frame of a document: head, styles, parts with their bookmarks, header and footer of each page. */
final class DocumentFrame {
    private final String title;
    private final Origin origin;
    private final PageSetting paper;
    private final List<String> parts = new ArrayList<>();
    private final Markup page = new Markup();

    DocumentFrame(String title, Origin origin, PageSetting paper) {
        this.title = title;
        this.origin = origin;
        this.paper = paper;
    }

    Markup page() {
        return page;
    }

    /** Starts a part. */
    void part(String heading) {
        parts.add(heading);
        page.line("h2 id=\"part-" + parts.size() + "\"" + (parts.size() == 1 ? " class=\"new\"" : ""), heading);
    }

    /** The whole document. */
    String close() {
        Markup all = new Markup();
        all.raw("<!DOCTYPE html>");
        all.raw("<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\"><head><meta charset=\"UTF-8\"/>");
        if (!paper.pdf()) {
            all.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>");
        }
        all.line("title", title + ": Tipwright report");
        all.raw("<meta name=\"description\" content=\"" + Markup.safe("Report on " + title) + "\"/>");
        all.raw("<style>" + pages() + css("report.css") + (paper.pdf() ? "" : css("screen.css")) + "</style>");
        if (paper.pdf()) {
            bookmarks(all);
        }
        all.raw("</head><body>");
        if (!paper.pdf()) {
            all.raw("<nav aria-label=\"Parts of this report\"><ul>");
            for (int i = 1; i <= parts.size(); i++) {
                all.inside("li", "<a href=\"#part-" + i + "\">" + Markup.safe(parts.get(i - 1)) + "</a>");
            }
            all.raw("</ul></nav>");
        }
        all.raw("<main id=\"top\">").raw(page.text()).raw("</main></body></html>");
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

    private static String css(String name) {
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
