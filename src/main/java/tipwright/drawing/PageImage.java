// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A page of a PDF as a picture, to look at before it is written. */
public final class PageImage {
    private PageImage() {}

    /**
     * The first page as the bytes of a PNG file.
     *
     * @param scale pixels a point
     * @throws IOException when it cannot be read
     */
    public static byte[] first(byte[] pdf, double scale) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return Png.bytes(new PDFRenderer(document).renderImage(0, (float) scale));
        }
    }
}
