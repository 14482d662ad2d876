// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

/**
 * A drawing or plot.
 *
 * @param svg the element, without width and height, with a viewBox
 * @param about what it shows, for those who do not see it
 * @param caption under it
 */
record Figure(String svg, String about, String caption) {
    private static final String START = "<svg ";

    void to(Markup page, Paper paper) {
        String name = Markup.safe(about);
        // A PDF's reader takes the words from 'alt', a browser's from 'aria-label'.
        String words = paper.pdf() ? "alt=\"" + name + "\" " : "role=\"img\" aria-label=\"" + name + "\" ";
        page.raw("<div class=\"figure\">").line("p class=\"title\"", caption);
        page.raw(START + words + svg.substring(START.length())).raw("</div>");
    }
}
