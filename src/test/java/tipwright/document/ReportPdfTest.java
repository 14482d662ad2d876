// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.drawing.HardSigns;

/** The report as a PDF: tagged, bookmarked, fonts in it, nothing over the margin. Source of the form: ISO 32000-1. */
class ReportPdfTest {
    /** Margins of the sheet, points. */
    private static final double MARGIN = 15 / 25.4 * 72;

    private static final String DEMO = "silt-trailer";

    @Test
    void isTaggedBookmarkedAndInALanguage() throws IOException {
        try (PDDocument pdf = Dossiers.pdf(DEMO, Dossiers.A4)) {
            assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(pdf.getDocumentCatalog().getStructureTreeRoot()).isNotNull();
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(pdf.getDocumentInformation().getTitle()).startsWith("Silt trailer");
            assertThat(bookmarks(pdf))
                    .startsWith("Silt trailer", "Forces over the tilt", "Does it empty, and the dump in time")
                    .endsWith("What this program does not look at", "Cautions", "Files this was made from");
            assertThat(text(pdf)).contains(Dossiers.of(DEMO).origin().hash(), "page 1 of " + pdf.getNumberOfPages());
        }
    }

    /** Twelve pages at most with five pictures of the usual size. */
    @Test
    void isShortWithItsPictures() throws IOException {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(800, 450, BufferedImage.TYPE_BYTE_GRAY), "png", png);
        List<Stills.Still> five = Collections.nCopies(5, new Stills.Still("At some tilt", png.toByteArray()));
        Dossier demo = Dossiers.of(DEMO);
        Dossier seen = new Dossier(demo.checked(), demo.origin(), new Stills(five, ""));
        try (PDDocument pdf = Dossiers.pdf(seen, Dossiers.A4)) {
            assertThat(pdf.getNumberOfPages()).isLessThanOrEqualTo(12);
        }
    }

    /** What hardly uses what there is stands below the table by its name. */
    @Test
    void whatIsHardlyUsedIsNamed() throws IOException {
        Finding hardly = Dossiers.of(DEMO).findings(Verdict.PASS).stream()
                .filter(f -> f.utilisation() < 0.01)
                .findFirst()
                .orElseThrow();
        try (PDDocument pdf = Dossiers.pdf(DEMO, Dossiers.A4)) {
            String names = text(pdf)
                    .replaceAll("\\s+", " ")
                    .replaceAll("Silt trailer Tipwright test .{40,60} page \\d+ of \\d+ ", "");
            int from = names.indexOf("passes too, with less than 10 % used: ");
            assertThat(names.indexOf("Weld tolerance", from)).isPositive();
            assertThat(names.substring(from, names.indexOf("Weld tolerance", from)))
                    .contains(hardly.title());
            assertThat(names).doesNotContain(hardly.title() + " + passes");
        }
    }

    /** Twelve pages at most; none is empty; the list of contents tells the pages on which the parts begin. */
    @Test
    void isShortAndTellsWhereItsPartsAre() throws IOException {
        try (PDDocument pdf = Dossiers.pdf(DEMO, Dossiers.A4)) {
            assertThat(pdf.getNumberOfPages()).isLessThanOrEqualTo(12);
            assertThat(page(pdf, 1))
                    .contains("Normal dump:", "If something goes wrong:", "Push", "What is close", "Never go under");
            assertThat(page(pdf, 1)).doesNotContain(Dossiers.of(DEMO).origin().hash());
            String contents = page(pdf, 2);
            List<String> parts = bookmarks(pdf);
            for (String part : parts.subList(1, parts.size())) {
                Matcher line =
                        Pattern.compile(Pattern.quote(part) + "[ .]*(\\d+)\\s").matcher(contents);
                assertThat(line.find()).as(part).isTrue();
                assertThat(page(pdf, Integer.parseInt(line.group(1)))).contains(part);
            }
            for (int i = 1; i <= pdf.getNumberOfPages(); i++) {
                assertThat(page(pdf, i).strip()).as("page " + i).hasSizeGreaterThan(300);
            }
        }
    }

    /** What the short one leaves out. */
    @Test
    void theEngineersPartComesWithFull() throws IOException {
        try (PDDocument pdf = Dossiers.pdf("saw-skid", Dossiers.LETTER.withFull(true))) {
            assertThat(bookmarks(pdf)).contains("How each check was worked out", "Inputs as read", "What was assumed");
            assertThat(text(pdf)).contains("Put in:", "Source: ", "metric US");
        }
    }

    /** No sign in a name or a text stops the report, whatever the typeface lacks. */
    @Test
    void anySignIsWritten() throws IOException {
        String signs = String.join(" ", HardSigns.all());
        DocumentFrame frame =
                new DocumentFrame("a " + signs + " z", Dossiers.of("wash-tub").origin(), Dossiers.A4);
        frame.part(signs);
        frame.page().line("h1", signs).line("p", "from " + signs + " to");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfWriter.write(frame.close(), out);
        try (PDDocument pdf = Loader.loadPDF(out.toByteArray())) {
            assertThat(text(pdf)).contains("from ", " to", "\u00d8");
        }
    }

    private static String page(PDDocument pdf, int number) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(number);
        stripper.setEndPage(number);
        return stripper.getText(pdf);
    }

    @Test
    void everyFontIsInTheFile() throws IOException {
        try (PDDocument pdf = Dossiers.pdf(DEMO, Dossiers.A4)) {
            List<String> fonts = new ArrayList<>();
            for (PDPage page : pdf.getPages()) {
                fonts(page.getResources(), fonts);
            }
            assertThat(fonts).isNotEmpty().allMatch(f -> f.endsWith("in the file"), "is in the file");
        }
    }

    private static void fonts(PDResources resources, List<String> found) throws IOException {
        for (COSName name : resources.getFontNames()) {
            var font = resources.getFont(name);
            found.add(font.getName() + (font.isEmbedded() ? " is in the file" : " is missing"));
        }
        for (COSName name : resources.getXObjectNames()) {
            PDXObject object = resources.getXObject(name);
            if (object instanceof PDFormXObject form && form.getResources() != null) {
                fonts(form.getResources(), found);
            }
        }
    }

    @Test
    void sheetsHaveTheSizeAskedFor() throws IOException {
        try (PDDocument a4 = Dossiers.pdf(DEMO, Dossiers.A4);
                PDDocument letter = Dossiers.pdf(DEMO, Dossiers.LETTER)) {
            assertSize(a4, PDRectangle.A4);
            assertSize(letter, PDRectangle.LETTER);
            assertThat(text(letter)).contains(" lbf").doesNotContain("not known");
        }
    }

    private static void assertSize(PDDocument pdf, PDRectangle size) {
        for (PDPage page : pdf.getPages()) {
            assertThat(page.getMediaBox().getWidth()).isCloseTo(size.getWidth(), within(1f));
            assertThat(page.getMediaBox().getHeight()).isCloseTo(size.getHeight(), within(1f));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"saw-skid", "too-small", "six-link"})
    void nothingRunsOverTheMargin(String design) throws IOException {
        assertInside(Dossiers.of(design), design.equals("saw-skid") ? Dossiers.LETTER.withFull(true) : Dossiers.A4);
    }

    @Test
    void sixtyChecksOnTwoActuatorsStillLayOut() throws IOException {
        Dossier dossier = Dossiers.withFindings(Dossiers.of("twin-rams"), 60);
        assertThat(dossier.design().drive().actuators()).hasSize(2);
        assertThat(dossier.checked().result().findings()).hasSizeGreaterThanOrEqualTo(60);
        assertInside(dossier, Dossiers.A4);
        assertInside(dossier, Dossiers.LETTER);
    }

    private static void assertInside(Dossier dossier, PageSetting paper) throws IOException {
        try (PDDocument pdf = Dossiers.pdf(dossier, paper)) {
            double width = pdf.getPage(0).getMediaBox().getWidth();
            List<String> over = new ArrayList<>();
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition at) {
                    double right = at.getXDirAdj() + at.getWidthDirAdj();
                    if (at.getXDirAdj() < MARGIN - 1 || right > width - MARGIN + 1) {
                        over.add("page " + getCurrentPageNo() + ": " + at);
                    }
                    super.processTextPosition(at);
                }
            };
            assertThat(stripper.getText(pdf)).contains(dossier.design().name());
            assertThat(over).isEmpty();
        }
    }

    private static List<String> bookmarks(PDDocument pdf) {
        List<String> all = new ArrayList<>();
        for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) {
            all.add(item.getTitle());
        }
        return all;
    }

    private static String text(PDDocument pdf) throws IOException {
        return new PDFTextStripper().getText(pdf);
    }
}
