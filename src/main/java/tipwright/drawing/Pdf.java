// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.io.IOException;
import java.io.OutputStream;
import java.text.AttributedCharacterIterator;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Writes drawings as the pages of a PDF at their true size, with the font in the file and text as text. */
public final class Pdf {
    private static final double POINT = 72 / 25.4;

    private Pdf() {}

    /** Writes a page for each drawing. */
    public static void write(String title, List<Drawing> pages, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument();
                TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(Lettering.open()))) {
            document.getDocumentInformation().setTitle(Signs.plain(title));
            CmapLookup signs = face.getUnicodeCmapLookup();
            try (OneFont text = new OneFont(PDType0Font.load(document, face, true))) {
                for (Drawing drawing : pages) {
                    page(document, drawing, text, signs);
                }
                document.save(out);
            }
        }
    }

    private static void page(PDDocument document, Drawing drawing, OneFont text, CmapLookup signs) throws IOException {
        PDRectangle size = new PDRectangle((float) (drawing.width() * POINT), (float) (drawing.height() * POINT));
        PDPage page = new PDPage(size);
        document.addPage(page);
        PdfBoxGraphics2D pen = new PdfBoxGraphics2D(document, size);
        pen.setFontTextDrawer(text);
        new Painter(pen, POINT, t -> Signs.shown(t, c -> signs.getGlyphId(c) > 0), 0).paint(drawing);
        pen.dispose();
        try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
            stream.drawForm(pen.getXFormObject());
        }
    }

    /** Takes every font for the one of all drawings. */
    private static final class OneFont extends PdfBoxGraphics2DFontTextDrawer {
        private final PDFont font;

        OneFont(PDFont font) {
            this.font = font;
        }

        @Override
        protected PDFont mapFont(Font asked, IFontTextDrawerEnv env) {
            return font;
        }

        @Override
        public boolean canDrawText(AttributedCharacterIterator text, IFontTextDrawerEnv env) {
            return true;
        }
    }
}
