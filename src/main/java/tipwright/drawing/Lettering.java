// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import tipwright.geometry.MadeOnce;

/** The font of all drawings, from the PDF library's own resources. */
final class Lettering {
    /** As a picture's file names it. */
    static final String FAMILY = "Liberation Sans";

    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private static final MadeOnce<Font> FONT = new MadeOnce<>(Lettering::read);

    private Lettering() {}

    /** The font file; the caller closes it. */
    static InputStream open() throws IOException {
        InputStream in = PDDocument.class.getResourceAsStream(FILE);
        if (in == null) {
            throw new IOException("the font " + FILE + " is lost");
        }
        return in;
    }

    /** The font for Java's drawing calls, 1 high. */
    static Font font() {
        return FONT.get();
    }

    private static Font read() {
        try (InputStream in = open()) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the font " + FILE + " cannot be read", e);
        }
    }
}
