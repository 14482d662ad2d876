// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A drawing or plot.
 *
 * @param svg the element, without width and height, with a viewBox
 * @param about what it shows, for those who do not see it
 * @param caption under it
 */
record Figure(String svg, String about, String caption) {
    private static final String START = "<svg ";
    private static final Pattern BOX = Pattern.compile("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"");

    void to(Markup page, PageSetting paper) {
        String name = Markup.safe(about);
        // A PDF's reader takes the words from 'alt', a browser's from 'aria-label'.
        String words =
                paper.pdf() ? "alt=\"" + name + "\" " + style(paper) : "role=\"img\" aria-label=\"" + name + "\" ";
        page.raw("<div class=\"figure\">").line("p class=\"title\"", caption);
        page.raw(START + words + svg.substring(START.length())).raw("</div>");
    }

    /** The setter of the PDF does not take a figure's height from its box: it is said in mm of the paper. */
    private String style(PageSetting paper) {
        double height = height(paper);
        return height > 0 ? String.format(Locale.ROOT, "style=\"height: %.1fmm\" ", height) : "";
    }

    /** As high as it is on paper, over the whole width, mm; 0: not known. */
    double height(PageSetting paper) {
        Matcher box = BOX.matcher(svg);
        return box.find()
                ? Double.parseDouble(box.group(2))
                        / Double.parseDouble(box.group(1))
                        * paper.size().textWidth()
                : 0;
    }
}
