// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The font of all drawings, from the PDF library's own resources. */
final class Lettering {
    /** As a picture's file names it. */
    static final String FAMILY = "Liberation Sans";

    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private Lettering() {}

    /** The font file; the caller closes it. */
    static InputStream open() throws IOException {
        InputStream in = PDDocument.class.getResourceAsStream(FILE);
        if (in == null) {
            throw new IOException("the font " + FILE + " is lost");
        }
        return in;
    }

    /** The font for Java's drawing calls. */
    static Font font() {
        try (InputStream in = open()) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the font " + FILE + " cannot be read", e);
        }
    }
}
