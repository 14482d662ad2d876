// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.io.IOException;
import java.io.OutputStream;
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
import org.apache.pdfbox.util.Matrix;
import tipwright.geometry.Vec2;

/** Writes drawings as the pages of a PDF at their true size, with the font in the file. */
public final class Pdf {
    private static final double POINT = 72 / 25.4;
    /** A circle by four cubic curves. Source: usual approximation, error 0.03 % of the radius (from memory). */
    private static final double ROUND = 0.5522847498;

    private Pdf() {}

    /** Writes a page for each drawing. */
    public static void write(String title, List<Drawing> pages, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument();
                TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(Lettering.open()))) {
            Face font = new Face(PDType0Font.load(document, face, true), face.getUnicodeCmapLookup());
            document.getDocumentInformation().setTitle(Signs.plain(title));
            for (Drawing drawing : pages) {
                page(document, drawing, font);
            }
            document.save(out);
        }
    }

    /** The typeface, and which signs it has. */
    private record Face(PDFont font, CmapLookup signs) {
        String shown(String text) {
            return Signs.shown(Signs.plain(text), c -> signs.getGlyphId(c) > 0);
        }
    }

    private static void page(PDDocument document, Drawing drawing, Face font) throws IOException {
        PDPage page =
                new PDPage(new PDRectangle((float) (drawing.width() * POINT), (float) (drawing.height() * POINT)));
        document.addPage(page);
        try (PDPageContentStream out = new PDPageContentStream(document, page)) {
            out.transform(new Matrix(
                    (float) POINT, 0, 0, (float) POINT, (float) (-drawing.low().x() * POINT), (float)
                            (-drawing.low().y() * POINT)));
            out.setLineCapStyle(1);
            out.setLineJoinStyle(1);
            for (Mark mark : drawing.marks()) {
                mark(out, mark, font);
            }
        }
    }

    private static void mark(PDPageContentStream out, Mark mark, Face face) throws IOException {
        if (mark instanceof Mark.Label label) {
            float size = (float) label.height();
            PDFont font = face.font();
            String text = face.shown(label.text());
            double width = font.getStringWidth(text) / 1000 * label.height();
            double turn = Math.toRadians(label.turn());
            double back = -width * (label.anchor() + 1) / 2;
            out.beginText();
            out.setFont(font, size);
            colour(out, mark.pen().colour(), false);
            out.setTextMatrix(new Matrix(
                    (float) Math.cos(turn),
                    (float) Math.sin(turn),
                    (float) -Math.sin(turn),
                    (float) Math.cos(turn),
                    (float) (label.at().x() + back * Math.cos(turn)),
                    (float) (label.at().y() + back * Math.sin(turn))));
            out.showText(text);
            out.endText();
            return;
        }
        boolean closed = true;
        if (mark instanceof Mark.Ring ring) {
            circle(out, ring);
        } else if (mark instanceof Mark.Path path) {
            closed = path.closed();
            boolean first = true;
            for (Vec2 p : path.points()) {
                if (first) {
                    out.moveTo((float) p.x(), (float) p.y());
                } else {
                    out.lineTo((float) p.x(), (float) p.y());
                }
                first = false;
            }
            if (closed) {
                out.closePath();
            }
        }
        paint(out, mark.pen());
    }

    private static void circle(PDPageContentStream out, Mark.Ring ring) throws IOException {
        float x = (float) ring.centre().x();
        float y = (float) ring.centre().y();
        float r = (float) ring.radius();
        float k = (float) (ROUND * ring.radius());
        out.moveTo(x + r, y);
        out.curveTo(x + r, y + k, x + k, y + r, x, y + r);
        out.curveTo(x - k, y + r, x - r, y + k, x - r, y);
        out.curveTo(x - r, y - k, x - k, y - r, x, y - r);
        out.curveTo(x + k, y - r, x + r, y - k, x + r, y);
        out.closePath();
    }

    private static void paint(PDPageContentStream out, Pen pen) throws IOException {
        if (pen.fill() >= 0) {
            colour(out, pen.fill(), false);
        }
        if (pen.colour() < 0) {
            out.fill();
            return;
        }
        colour(out, pen.colour(), true);
        out.setLineWidth((float) pen.width());
        float dash = (float) pen.dash();
        out.setLineDashPattern(dash > 0 ? new float[] {dash, dash} : new float[0], 0);
        if (pen.fill() >= 0) {
            out.fillAndStroke();
        } else {
            out.stroke();
        }
    }

    private static void colour(PDPageContentStream out, int rgb, boolean stroke) throws IOException {
        float r = (rgb >> 16 & 255) / 255f;
        float g = (rgb >> 8 & 255) / 255f;
        float b = (rgb & 255) / 255f;
        if (stroke) {
            out.setStrokingColor(r, g, b);
        } else {
            out.setNonStrokingColor(r, g, b);
        }
    }
}
