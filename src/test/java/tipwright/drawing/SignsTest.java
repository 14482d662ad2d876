// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import tipwright.geometry.Vec2;

/** A drawing with any sign in it is written, and what the typeface lacks is marked. */
class SignsTest {
    static List<String> signs() {
        return HardSigns.all();
    }

    private static Drawing drawing(String text) {
        Drawing.Board board = new Drawing.Board();
        board.text(new Vec2(10, 10), 5, 0, text, Pen.line("x", 0, 0.2));
        return board.on(text, Vec2.ZERO, new Vec2(200, 40));
    }

    @ParameterizedTest
    @MethodSource("signs")
    void pdfSvgAndPngAreWritten(String sign) throws IOException, ParserConfigurationException, SAXException {
        Drawing drawing = drawing("a" + sign + "z");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.write(drawing.title(), List.of(drawing, drawing), out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            assertThat(new PDFTextStripper().getText(document).replaceAll("\\s", ""))
                    .startsWith("a")
                    .endsWith("z");
        }
        DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(Svg.of(drawing, true))));
        Png.write(drawing, 1, new ByteArrayOutputStream());
        assertThat(Dxf.of(drawing)).matches("[\\n\\x20-\\x7e]*");
    }

    @Test
    void whatIsLackingIsMarkedAndWhatIsThereStays() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.write(
                "t",
                List.of(drawing(
                        "\u00d8 90 \u00b0 \u00fc \u03bb \u0416|\u2300|\ud83d\ude9c|\u0e01\u0e02|\ud800|\u0007|\n|")),
                out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            assertThat(new PDFTextStripper().getText(document).strip())
                    .isEqualTo("\u00d8 90 \u00b0 \u00fc \u03bb \u0416|#|#|##| | | |");
        }
    }

    /** One look at the regular typeface tells for both, in documents. */
    @Test
    void theBoldTypefaceHasTheSameSigns() throws IOException, FontFormatException {
        Font regular = font("Regular");
        Font bold = font("Bold");
        for (int c = ' '; c <= Character.MAX_CODE_POINT; c++) {
            assertThat(bold.canDisplay(c)).as(Integer.toHexString(c)).isEqualTo(regular.canDisplay(c));
        }
    }

    private static Font font(String weight) throws IOException, FontFormatException {
        try (InputStream in = SignsTest.class.getResourceAsStream("/liberation/LiberationSans-" + weight + ".ttf")) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        }
    }
}
