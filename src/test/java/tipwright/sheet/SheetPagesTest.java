// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Pose;
import tipwright.analysis.RandomDesigns;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.joint.Support;
import tipwright.design.key.Copy;
import tipwright.drawing.Drawing;
import tipwright.drawing.Dxf;
import tipwright.drawing.HardSigns;
import tipwright.drawing.Mark;
import tipwright.drawing.Pdf;
import tipwright.geometry.Vec2;
import tipwright.quantity.Marks;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.bracket.Bracket;
import tipwright.sheet.bracket.Brackets;
import tipwright.sheet.bracket.CutPlate;
import tipwright.sheet.cut.CutList;
import tipwright.sheet.cut.CutPiece;

/** Every page of the sheet is read back from its file: it has something on it, its numbers are the design's, and true size is true. */
class SheetPagesTest {
    private static final double TRUE = 0.05;

    /** Random designs; with more than a few of them every shipped design is looked at too. */
    private static final int RANDOM = Integer.getInteger("test.sheets", 2);

    private static final List<String> FEW = List.of("crank-cart.yaml", "saw-skid.yaml");

    static List<Path> shipped() throws IOException {
        try (Stream<Path> list = Files.list(Path.of("geometry"))) {
            return list.filter(p -> p.toString().endsWith(".yaml"))
                    .filter(p -> RANDOM > 2 || FEW.contains(String.valueOf(p.getFileName())))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void shippedDesign(Path file) throws IOException, CannotComputeException {
        Reading.Good read = (Reading.Good) DesignFile.read(file);
        look(read.design(), file.toString().contains("saw-skid") ? UnitSystem.US : UnitSystem.METRIC);
    }

    /** 100 of them were looked at by -Dtest.sheets=100. */
    @Test
    void randomDesigns() throws IOException {
        RandomDesigns designs = new RandomDesigns(Long.getLong("test.seed", 17));
        int made = 0;
        for (int i = 0; i < RANDOM; i++) {
            Design design = designs.next();
            try {
                look(design, i % 2 == 0 ? UnitSystem.METRIC : UnitSystem.US);
                made++;
            } catch (CannotComputeException told) {
                assertThat(told.getMessage()).isNotBlank();
            }
        }
        assertThat(made).isGreaterThan(RANDOM / 4);
    }

    /** No sign in a name stops the sheet, the side view or the plates, whatever the typeface lacks. */
    @Test
    void anySignInAName() throws IOException, CannotComputeException {
        Design plain = ((Reading.Good) DesignFile.shipped("silt-trailer.yaml")).design();
        Design named = Copy.with(plain, "name", String.join(" ", HardSigns.all()));
        WeldSheet sheet = WeldSheet.of(named, UnitSystem.METRIC);
        Pager pager = new Pager(named.name(), Paper.A4);
        sheet.assembly(pager);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.write(named.name(), pager.pages(), out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            assertThat(new PDFTextStripper().getText(document)).contains("600 mm", "380 mm", "\u00d8");
        }
        assertThat(Dxf.of(CutDrawing.of(named, UnitSystem.METRIC)))
                .contains("CUT")
                .matches("[\\n\\x20-\\x7e]*");
    }

    private static void look(Design design, UnitSystem units) throws IOException, CannotComputeException {
        Design rounded = WeldSheet.rounded(design, units);
        WeldSheet sheet = WeldSheet.of(design, units);
        Brackets brackets = sheet.brackets();
        List<Drawing> pages = sheet.pages(Paper.A4, List.of("take care"));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.write(design.name(), pages, out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            PDFTextStripper stripper = new PDFTextStripper();
            List<String> texts = new ArrayList<>();
            for (int i = 1; i <= document.getNumberOfPages(); i++) {
                stripper.setStartPage(i);
                stripper.setEndPage(i);
                texts.add(stripper.getText(document));
            }
            for (int i = 0; i < texts.size(); i++) {
                assertThat(texts.get(i).lines().count())
                        .as("page " + (i + 1) + " has something on it")
                        .isGreaterThan(4);
            }
            rounded.drive().places(rounded.pivot().at()).forEach((name, at) -> assertThat(texts.get(0))
                    .as(name)
                    .contains(Marks.show(at.x(), units), Marks.show(at.y(), units)));
            numbers(sheet, rounded, units, String.join(" ", texts).replaceAll("\\s+", " "));
            List<Drawing> own = pages.stream()
                    .filter(p ->
                            p.marks().stream().anyMatch(m -> m.pen().layer().equals("cut")))
                    .toList();
            assertThat(own).as("a page for each bracket").hasSize(brackets.all().size());
            for (int i = 0; i < own.size(); i++) {
                Bracket bracket = brackets.all().get(i);
                int page = pages.indexOf(own.get(i));
                assertThat(texts.get(page)).contains("cut " + bracket.count());
                if (!texts.get(page).contains("NOT TRUE SIZE")) {
                    boolean side = texts.get(page).contains("on its side");
                    trueSize(
                            side ? bracket.plate().turned() : bracket.plate(),
                            PageReader.shapes(document.getPage(page)));
                } else {
                    assertThat(bracket.plate().holes())
                            .as(bracket.name() + ", "
                                    + bracket.plate()
                                            .high()
                                            .minus(bracket.plate().low()) + " m")
                            .noneMatch(CutPlate.PlateHole::pin);
                }
            }
        }
        pages.forEach(SheetPagesTest::nothingRunsOff);
    }

    /** Lengths at both ends, angles, straight distances, offsets, lengths to cut: worked out here from the design. */
    private static void numbers(WeldSheet sheet, Design design, UnitSystem units, String text)
            throws CannotComputeException {
        Analysis analysis = Analyser.analyse(design);
        for (Pose pose : List.of(
                analysis.poses().get(0), analysis.poses().get(analysis.poses().size() - 1))) {
            assertThat(text)
                    .contains(
                            Marks.show(pose.length(), units),
                            Text.degrees(pose.tilt(), 1).metric());
        }
        List<Vec2> places =
                List.copyOf(design.drive().places(design.pivot().at()).values());
        for (Vec2 place : places) {
            assertThat(text).contains(Marks.show(place.norm(), units));
            for (Support s : design.pivot().bearings()) {
                double flat = place.minus(design.pivot().at()).norm();
                for (PlacedActuator a : design.drive().actuators()) {
                    if (place.equals(places.get(1))) {
                        assertThat(text).contains(Marks.show(Math.hypot(flat, s.z() - a.z()), units));
                    }
                }
                assertThat(text).contains("z " + Marks.show(s.z(), units));
            }
        }
        for (Bracket bracket : sheet.brackets().all()) {
            for (CutPlate.PlateHole hole : bracket.plate().holes()) {
                assertThat(text).contains(Text.size(hole.diameter()).show(units));
            }
            if (!Double.isNaN(bracket.plate().thickness())) {
                assertThat(text)
                        .contains("Plate "
                                + Text.size(bracket.plate().thickness()).show(units) + " thick");
            }
        }
        for (CutPiece piece : CutList.of(analysis, sheet.brackets(), units).pieces()) {
            if (!Double.isNaN(piece.length())) {
                assertThat(text).contains(Marks.show(piece.length(), units));
            }
        }
    }

    /** The plate's box, each hole's box and where it is in the plate, on the paper. */
    private static void trueSize(CutPlate plate, List<PageReader.Shape> shapes) {
        Vec2 size = plate.high().minus(plate.low()).times(1000);
        PageReader.Shape outline = shapes.stream()
                .filter(s -> near(s.box().getWidth(), size.x()) && near(s.box().getHeight(), size.y()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no outline of " + size + " mm"));
        for (CutPlate.PlateHole hole : plate.holes()) {
            double d = 1000 * hole.diameter();
            Vec2 at = hole.at().minus(plate.low()).times(1000);
            assertThat(shapes)
                    .as("hole of " + d + " mm at " + at)
                    .anyMatch(s -> s.curved()
                            && near(s.box().getWidth(), d)
                            && near(s.box().getHeight(), d)
                            && near(s.box().getCenterX() - outline.box().getMinX(), at.x())
                            && near(s.box().getCenterY() - outline.box().getMinY(), at.y()));
        }
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) < TRUE;
    }

    private static void nothingRunsOff(Drawing page) {
        for (Mark mark : page.marks()) {
            List<Vec2> points = new ArrayList<>();
            if (mark instanceof Mark.Ring ring) {
                Vec2 r = new Vec2(ring.radius(), ring.radius());
                points.addAll(List.of(ring.centre().minus(r), ring.centre().plus(r)));
            } else if (mark instanceof Mark.Path path) {
                points.addAll(path.points());
            } else {
                points.add(((Mark.Label) mark).at());
            }
            for (Vec2 p : points) {
                assertThat(p.x()).as(page.title() + ": " + mark).isBetween(3.0, page.width() - 3);
                assertThat(p.y()).as(page.title() + ": " + mark).isBetween(3.0, page.height() - 3);
            }
        }
    }
}
