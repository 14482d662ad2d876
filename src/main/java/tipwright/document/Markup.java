// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.List;
import tipwright.report.Prose;

/** Writes XHTML; what comes from a design file is made safe. */
final class Markup {
    private final StringBuilder out = new StringBuilder(1 << 16);

    /** A text with nothing in it that markup obeys. */
    static String safe(String text) {
        return Prose.safe(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** Markup as it is. */
    Markup raw(String markup) {
        out.append(markup).append('\n');
        return this;
    }

    /**
     * An element with a text in it.
     *
     * @param element with its attributes: 'p class="note"'
     */
    Markup line(String element, String text) {
        return inside(element, safe(text));
    }

    /** An element with markup in it. */
    Markup inside(String element, String markup) {
        int end = element.indexOf(' ');
        String name = end < 0 ? element : element.substring(0, end);
        return raw("<" + element + ">" + markup + "</" + name + ">");
    }

    Markup list(List<String> items) {
        raw("<ul>");
        items.forEach(i -> line("li", i));
        return raw("</ul>");
    }

    String text() {
        return out.toString();
    }
}
