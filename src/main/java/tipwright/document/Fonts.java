// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;

/** The typeface of documents: Liberation Sans, from a library, so that a print looks the same on every machine. */
final class Fonts {
    static final String FAMILY = "Liberation Sans";
    private static final String FOLDER = "/liberation/";

    private Fonts() {}

    static InputStream regular() {
        return open("LiberationSans-Regular.ttf");
    }

    static InputStream bold() {
        return open("LiberationSans-Bold.ttf");
    }

    /** For measuring texts in plots, and for telling which signs there are; the bold one has the same. */
    static Font forPlots() {
        try (InputStream in = regular()) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException("the typeface beside the program cannot be read", e);
        }
    }

    private static InputStream open(String name) {
        InputStream in = Fonts.class.getResourceAsStream(FOLDER + name);
        if (in == null) {
            throw new IllegalStateException("the typeface " + name + " is missing beside the program");
        }
        return in;
    }
}
