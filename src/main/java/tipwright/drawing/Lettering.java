// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The font of all drawings, from the PDF library's own resources. */
final class Lettering {
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private Lettering() {}

    /** The font file; the caller closes it. */
    static InputStream open() throws IOException {
        InputStream in = PDDocument.class.getResourceAsStream(FONT);
        if (in == null) {
            throw new IOException("the font " + FONT + " is lost");
        }
        return in;
    }
}
