// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.Font;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import tipwright.drawing.Signs;
import tipwright.report.Scratch;

/** Sets XHTML as a tagged PDF with bookmarks and embedded fonts. Source of the form: ISO 32000-1, ISO 14289-1 (PDF/UA). */
final class PdfWriter {
    private static final int REGULAR = 400;
    private static final int BOLD = 700;
    private static final float VERSION = 1.7f;
    private static final int DIRECTORY = 12;
    private static final int ENTRY = 16;
    private static final int TAG = 4;

    /** The PDF library tells of fonts that this machine lacks and that are not used; held here so that the setting stays. */
    private static final Logger LIBRARY = Logger.getLogger("org.apache.pdfbox");

    private PdfWriter() {}

    /**
     * Writes the PDF.
     *
     * @throws IOException when it cannot be written, or when a figure or a font is missing in it
     */
    static void write(String xhtml, OutputStream out) throws IOException {
        // Fonts for figures are only taken from files.
        try (Scratch scratch = Scratch.open()) {
            File regular = file(Fonts.regular(), scratch.file("regular.ttf"));
            File bold = file(Fonts.bold(), scratch.file("bold.ttf"));
            Font face = Fonts.forPlots();
            write(Signs.shown(xhtml, face::canDisplay), out, regular, bold);
        }
    }

    private static File file(InputStream font, Path file) throws IOException {
        try (font) {
            Files.write(file, withoutLigatures(font.readAllBytes()));
        }
        return file.toFile();
    }

    /**
     * The font with its substitution table hidden: figures and keys are to be set letter by letter, and looking for ligatures takes
     * a third of the time of writing. The table directory has 16 bytes a table from byte 12 on, the tag first. Source: OpenType
     * specification, font file organization.
     */
    private static byte[] withoutLigatures(byte[] font) {
        int tables = ((font[4] & 0xff) << 8) | (font[5] & 0xff);
        for (int i = 0; i < tables; i++) {
            int at = DIRECTORY + ENTRY * i;
            if (new String(font, at, TAG, StandardCharsets.ISO_8859_1).equals("GSUB")) {
                font[at] = 'x';
            }
        }
        return font;
    }

    private static void write(String xhtml, OutputStream out, File regular, File bold) throws IOException {
        List<String> faults = new ArrayList<>();
        LIBRARY.setLevel(Level.SEVERE);
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        Set<FSFontUseCase> everywhere = EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG);
        builder.useFont(regular, Fonts.FAMILY, REGULAR, FontStyle.NORMAL, true, everywhere);
        builder.useFont(bold, Fonts.FAMILY, BOLD, FontStyle.NORMAL, true, everywhere);
        builder.useFastMode();
        builder.usePdfUaAccessibility(true);
        builder.usePdfVersion(VERSION);
        builder.withProducer("Tipwright");
        builder.useExternalResourceAccessControl(
                (uri, type) -> uri.startsWith("data:"), ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.withDiagnosticConsumer(d -> {
            if (d.getLevel().intValue() >= Level.WARNING.intValue()) {
                faults.add(d.getFormattedMessage());
            }
        });
        builder.withHtmlContent(xhtml, null);
        builder.toStream(out);
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            builder.useSVGDrawer(drawer);
            builder.run();
        }
        if (!faults.isEmpty()) {
            throw new IOException("the PDF came out with faults: " + String.join("; ", faults));
        }
    }
}
