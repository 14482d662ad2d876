// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;

/** How much room a text takes in a drawing. Owned by one caller. */
public final class TextWidth {
    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);
    private final Font font = Lettering.font();

    /** Width of a text whose letters are so high, mm. */
    public double of(String text, double height) {
        Font sized = font.deriveFont((float) height);
        return sized.getStringBounds(Signs.plain(text), MEASURE).getWidth();
    }

    /** The text in lines of at most this width, mm; a word that is longer is cut. Never empty. */
    public List<String> wrapped(String text, double height, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            String longer = line.length() == 0 ? word : line + " " + word;
            if (of(longer, height) <= width) {
                line.setLength(0);
                line.append(longer);
                continue;
            }
            if (line.length() > 0) {
                lines.add(line.toString());
                line.setLength(0);
            }
            String rest = word;
            while (of(rest, height) > width && rest.length() > 1) {
                int end = rest.offsetByCodePoints(0, 1);
                while (end < rest.length() && of(rest.substring(0, rest.offsetByCodePoints(end, 1)), height) <= width) {
                    end = rest.offsetByCodePoints(end, 1);
                }
                lines.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            line.append(rest);
        }
        if (line.length() > 0 || lines.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }
}
