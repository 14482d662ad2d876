// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import tipwright.geometry.Vec2;

/** One drawing in every format, read back by readers that are not ours: true sizes, text as text, the font inside. */
class PainterTest {
    private static final double POINT = 72 / 25.4;
    private static final Pen LINE = Pen.line("x", 0x112233, 0.5);

    private static Drawing drawing() {
        Drawing.Board board = new Drawing.Board();
        board.line(new Vec2(20, 30), new Vec2(120, 30), LINE);
        board.ring(new Vec2(70, 60), 25, LINE.dashed(3).filled(0xeeeeee));
        board.text(new Vec2(70, 60), 10, 0, "middle", LINE);
        board.text(new Vec2(120, 80), 5, 1, "ends here", LINE);
        board.text(new Vec2(150, 40), 5, -1, 90, "upwards", LINE);
        return board.on("sizes", new Vec2(10, 20), new Vec2(210, 120));
    }

    /** Gathers lines, their widths and dashes in points of the page. */
    private static final class Lines extends PDFGraphicsStreamEngine {
        private final List<double[]> lines = new ArrayList<>();
        private final List<Double> widths = new ArrayList<>();
        private final List<String> dashes = new ArrayList<>();
        private Point2D at = new Point2D.Double();

        Lines(PDPage page) throws IOException {
            super(page);
            processPage(page);
        }

        @Override
        public void moveTo(float x, float y) {
            at = new Point2D.Double(x, y);
        }

        @Override
        public void lineTo(float x, float y) {
            lines.add(new double[] {at.getX(), at.getY(), x, y});
            moveTo(x, y);
        }

        @Override
        public void curveTo(float a, float b, float c, float d, float x, float y) {
            moveTo(x, y);
        }

        @Override
        public Point2D getCurrentPoint() {
            return at;
        }

        @Override
        public void strokePath() {
            widths.add((double) transformWidth(getGraphicsState().getLineWidth()));
            dashes.add(java.util.Arrays.toString(
                    getGraphicsState().getLineDashPattern().getDashArray()));
        }

        @Override
        public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {}

        @Override
        public void drawImage(PDImage image) {}

        @Override
        public void clip(int rule) {}

        @Override
        public void closePath() {}

        @Override
        public void endPath() {}

        @Override
        public void fillPath(int rule) {}

        @Override
        public void fillAndStrokePath(int rule) {}

        @Override
        public void shadingFill(COSName name) {}
    }

    /** The letters of a PDF's page as they stand there. */
    private static List<TextPosition> letters(PDDocument document) throws IOException {
        List<TextPosition> all = new ArrayList<>();
        new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
                all.add(text);
            }
        }.getText(document);
        return all;
    }

    @Test
    void pdfIsOfTrueSize() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.write("sizes", List.of(drawing()), out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            PDPage page = document.getPage(0);
            assertThat(page.getMediaBox().getWidth() / POINT).isCloseTo(200, within(1e-3));
            Lines found = new Lines(page);
            double[] line = found.lines.get(0);
            assertThat(line[0] / POINT).isCloseTo(10, within(1e-3));
            assertThat(line[1] / POINT).isCloseTo(10, within(1e-3));
            assertThat((line[2] - line[0]) / POINT).isCloseTo(100, within(1e-3));
            assertThat(found.widths.get(0) / POINT).isCloseTo(0.5, within(1e-3));
            assertThat(found.dashes.get(0)).isEqualTo("[]");
            assertThat(found.dashes.get(1)).startsWith("[8.50");
        }
    }

    @Test
    void pdfKeepsTextAsTextInOneFont() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.write("sizes", List.of(drawing(), drawing()), out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            assertThat(new PDFTextStripper().getText(document)).contains("middle", "ends here");
            List<TextPosition> letters = letters(document);
            TextPosition m = letters.get(0);
            TextPosition e = letters.get(5);
            assertThat(m.getUnicode() + e.getUnicode()).isEqualTo("me");
            double middle = (m.getX() + e.getX() + e.getWidth()) / 2 / POINT;
            assertThat(middle).isCloseTo(60, within(0.05));
            assertThat(m.getFontSize() / POINT).isCloseTo(10, within(0.01));
            assertThat((document.getPage(0).getMediaBox().getHeight() - m.getY()) / POINT)
                    .isCloseTo(40, within(0.01));
            TextPosition last = letters.get(6 + "endshere".length());
            assertThat(last.getUnicode()).isEqualTo("e");
            assertThat((last.getX() + last.getWidth()) / POINT).isCloseTo(110, within(0.05));
            TextPosition turned = letters.get(letters.size() / 2 - 1);
            assertThat(turned.getUnicode()).isEqualTo("s");
            assertThat(turned.getDir()).isEqualTo(90f);
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getXObjectNames()) {
                    var inner = ((PDFormXObject) page.getResources().getXObject(name)).getResources();
                    assertThat(inner.getFontNames()).isNotEmpty();
                    for (COSName font : inner.getFontNames()) {
                        assertThat(inner.getFont(font).isEmbedded()).isTrue();
                        assertThat(inner.getFont(font).getName()).endsWith("LiberationSans");
                    }
                }
            }
            // The font is in the file once, and of it only what is needed.
            assertThat(out.size()).isLessThan(30_000);
        }
    }

    @Test
    void svgIsInMillimetresAndItsTextIsText() throws Exception {
        String svg = Svg.of(drawing(), true);
        Element root = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();
        assertThat(root.getAttribute("width")).isEqualTo("200mm");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 200 100");
        assertThat(root.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("sizes");
        Element line = (Element) root.getElementsByTagName("line").item(0);
        assertThat(List.of("x1", "y1", "x2", "y2"))
                .extracting(line::getAttribute)
                .containsExactly("10", "90", "110", "90");
        Element ring = (Element) root.getElementsByTagName("circle").item(0);
        assertThat(List.of("cx", "cy", "r")).extracting(ring::getAttribute).containsExactly("60", "60", "25");
        List<String> words = new ArrayList<>();
        for (int i = 0; i < root.getElementsByTagName("text").getLength(); i++) {
            words.add(root.getElementsByTagName("text").item(i).getTextContent());
        }
        assertThat(words).containsExactly("middle", "ends here", "upwards");
        assertThat(svg).contains("'Liberation Sans', Arial, sans-serif").doesNotContain("<image");
        assertThat(Svg.of(drawing(), false)).startsWith("<svg ").doesNotContain("200mm");
    }

    @Test
    void pngHasItsLinesInPlace() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Png.write(drawing(), 4, out);
        var image = ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
        assertThat(image.getWidth()).isEqualTo(800);
        assertThat(image.getHeight()).isEqualTo(400);
        assertThat(image.getRGB(240, 360) & 0xffffff).isEqualTo(0x112233);
        assertThat(image.getRGB(240, 350) & 0xffffff).isEqualTo(0xffffff);
        assertThat(image.getRGB(200, 200) & 0xffffff).isEqualTo(0xeeeeee);
    }
}
