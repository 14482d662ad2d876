// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.design.Design;
import tipwright.design.drive.Straight;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.drawing.Drawing;
import tipwright.drawing.Dxf;
import tipwright.drawing.Mark;
import tipwright.drawing.Pdf;
import tipwright.drawing.Png;
import tipwright.drawing.Svg;
import tipwright.geometry.Vec2;
import tipwright.placement.Pin;
import tipwright.placement.PlacementMap;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/** The workshop's files, opened by readers that are not ours. */
class SheetFilesTest {
    private static final Design DESIGN =
            Examples.read(swap(Examples.BOX, "[-600 mm, -500 mm]", "[-601.3 mm, -499.8 mm]"));

    /** ezdxf (Debian: python3-ezdxf) audits the file and measures a pin's place in it. */
    @Test
    void dxfIsSoundToAnotherReader(@TempDir Path folder)
            throws IOException, InterruptedException, CannotComputeException {
        Path file = folder.resolve("side.dxf");
        Files.writeString(
                file,
                Dxf.of(SideView.trueSize(Analyser.analyse(DESIGN), UnitSystem.METRIC)),
                StandardCharsets.US_ASCII);
        String script = "import ezdxf,sys\n"
                + "d=ezdxf.readfile(sys.argv[1]); a=d.audit()\n"
                + "print(d.dxfversion, len(a.errors), len(a.fixes))\n"
                + "print(sorted(l.dxf.name for l in d.layers))\n"
                + "l=[e for e in d.modelspace() if e.dxf.layer=='ACTUATOR'][0]\n"
                + "print(*['%.3f %.3f' % (v.dxf.location.x, v.dxf.location.y) for v in l.vertices])\n";
        Process process = new ProcessBuilder("/usr/bin/python3", "-c", script, file.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        List<String> lines = said.lines().toList();
        assertThat(lines.get(0)).isEqualTo("AC1009 0 0");
        assertThat(lines.get(1)).contains("'ACTUATOR'", "'PINS'", "'TANK'", "'DIMENSIONS'");
        assertThat(lines.get(2)).isEqualTo("-601.300 -499.800 -450.000 400.000");
    }

    @Test
    void pdfHasItsFontInsideAndPagesOfTrueSize() throws IOException, CannotComputeException {
        List<Drawing> pages = WeldSheet.pages(DESIGN, UnitSystem.METRIC, Paper.LETTER, List.of("take care"));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.write("sheet", pages, out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            assertThat(document.getNumberOfPages()).isEqualTo(pages.size()).isGreaterThan(3);
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(612f, within(0.1f));
            assertThat(document.getPage(1).getMediaBox().getHeight()).isCloseTo(792f, within(0.1f));
            var fonts = document.getPage(0).getResources();
            for (var name : fonts.getFontNames()) {
                assertThat(fonts.getFont(name).isEmbedded()).isTrue();
            }
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains("-601 mm", "-601.3 mm", "both bars are 100 mm long");
        }
    }

    @Test
    void distancesOnTheSheetAreThoseOfTheRoundedPins() throws CannotComputeException {
        Design rounded = WeldSheet.rounded(DESIGN, UnitSystem.US);
        Vec2 frame = ((Straight) rounded.drive()).framePin();
        assertThat(frame.x() / 0.0254 * 16).isCloseTo(Math.rint(-0.6013 / 0.0254 * 16), within(1e-9));
        assertThat(Marks.show(0.0254 * 16.25, UnitSystem.US)).isEqualTo("16 1/4 in");
        assertThat(Marks.show(-0.0254 * 0.375, UnitSystem.US)).isEqualTo("-3/8 in");
        assertThat(Marks.show(0.4126, UnitSystem.METRIC)).isEqualTo("413 mm");
    }

    /** Of a linkage the lengths of its links are on the sheet: worked out here from the design file's own points. */
    @ParameterizedTest
    @CsvSource({
        "kerb-swing, 1 pivot to 4 main tank pin, 283 mm, 150, 240",
        "slide-back, 5 tie frame pin to 6 tie tank pin, 1057 mm, 870, 600"
    })
    void everyMechanismHasItsSheet(String name, String span, String length, double across, double up)
            throws IOException, CannotComputeException {
        Design design = ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
        assertThat(Math.hypot(across, up)).isCloseTo(Integer.parseInt(swap(length, " mm", "")), within(0.5));
        List<Drawing> pages = WeldSheet.pages(design, UnitSystem.METRIC, Paper.A4, List.of("take care"));
        List<String> texts = pages.stream()
                .flatMap(page -> page.marks().stream())
                .filter(m -> m instanceof Mark.Label)
                .map(m -> ((Mark.Label) m).text())
                .toList();
        assertThat(texts).contains(span);
        assertThat(texts.get(texts.indexOf(span) + 1)).isEqualTo(length);
        double low = pages.stream()
                .flatMap(page -> page.marks().stream())
                .filter(m -> m instanceof Mark.Label)
                .mapToDouble(m -> ((Mark.Label) m).at().y())
                .min()
                .orElse(0);
        assertThat(low).as("nothing runs off the page").isGreaterThan(7);
    }

    /** The cross stands where the file has the pin, the square where the map's own design has it; the key tells both places. */
    @Test
    void crossAndSquareOfAMapStandWhereTheySay() throws Exception {
        PlacementMap map = PlacementMap.whole(DESIGN, "frame-pin", 12);
        Vec2 drawn = map.drawn().plus(new Vec2(-0.03, 0.02));
        Drawing picture = MapPicture.of(map, Analyser.analyse(DESIGN), UnitSystem.METRIC, drawn, null);
        List<Mark.Ring> rings = picture.marks().stream()
                .filter(m -> m instanceof Mark.Ring && m.pen().layer().equals("pin"))
                .map(m -> (Mark.Ring) m)
                .toList();
        List<Mark.Ring> dots = picture.marks().stream()
                .filter(m -> m instanceof Mark.Ring && m.pen().layer().equals("answer"))
                .map(m -> (Mark.Ring) m)
                .toList();
        assertThat(rings).as("on the map and in the key").hasSize(2);
        assertThat(dots).hasSize(2);
        double side = 150.0 / Math.max(map.utilisation().length, map.utilisation()[0].length);
        Vec2 apart = dots.get(0).centre().minus(rings.get(0).centre()).times(map.cell() / side);
        assertThat(apart.x()).isCloseTo(0.03, within(1e-9));
        assertThat(apart.y()).isCloseTo(-0.02, within(1e-9));
        assertThat(picture.marks().stream().map(m -> m instanceof Mark.Label l ? l.text() : ""))
                .contains("as drawn, " + Lengths.point(drawn, UnitSystem.METRIC))
                .contains("answer 1, " + Lengths.point(map.drawn(), UnitSystem.METRIC))
                .contains("edge of where it works");
    }

    @Test
    void mapIsSoundXmlAndAPicture() throws Exception {
        Drawing map =
                MapPicture.of(PlacementMap.of(DESIGN, Pin.FRAME, 20), Analyser.analyse(DESIGN), UnitSystem.METRIC);
        var xml = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(Svg.of(map, true).getBytes(StandardCharsets.UTF_8)));
        assertThat(xml.getDocumentElement().getAttribute("viewBox")).startsWith("0 0 ");
        assertThat(xml.getElementsByTagName("text").getLength()).isGreaterThan(10);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Png.write(map, 2, out);
        var image = ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
        assertThat(image.getWidth()).isEqualTo((int) Math.ceil(map.width() * 2));
    }
}
