// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.design.NumberedPlace;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.Support;
import tipwright.design.tank.CaseName;
import tipwright.doubt.SampledShare;
import tipwright.drawing.Drawing;
import tipwright.drawing.Dxf;
import tipwright.drawing.Pdf;
import tipwright.geometry.Vec2;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachinePose;
import tipwright.outline.View;
import tipwright.placement.Tolerance;
import tipwright.placement.Welder;
import tipwright.quantity.Kind;
import tipwright.quantity.UnitSystem;
import tipwright.report.Cautions;
import tipwright.report.JsonReport;
import tipwright.report.JsonTime;
import tipwright.report.Vocabulary;
import tipwright.sheet.CutDrawing;
import tipwright.sheet.Paper;
import tipwright.sheet.WeldSheet;
import tipwright.sheet.bracket.Bracket;
import tipwright.sheet.bracket.Brackets;
import tipwright.sheet.cut.CutList;
import tipwright.sheet.cut.CutPiece;
import tipwright.sheet.cut.Nesting;
import tipwright.sheet.cut.PlateCut;

/**
 * Backwards: every number with a unit that stands on the sheet, the templates, the plates' DXF, the report and the phone's page is a
 * value of the JSON, of the design or of what is worked out here from it, or one of the few constants that are named below.
 */
class NumbersBackTest {
    /** Numbers that no design has, each with its reason. */
    private static final Map<String, String> CONSTANTS = Map.of(
            "100 mm", "bars to check the print",
            "4 in", "bars to check the print",
            "100 %", "print again at 100 %; over 100 % fails",
            "500 mm", "bar beside the side views",
            "20 in", "bar beside the side views",
            "10 deg", "stop at every 10 deg",
            "1 mm", "places are to the nearest 1 mm",
            "1/16 in", "places are to the nearest 1/16 in",
            "95 %", "how sure the sampled share is",
            "870 kg/m3", "oil, where a source is told");

    /** Steps of a worked formula: another test works them out anew. */
    private static final String PUT_IN = "Put in: [^<]*";

    /** Formulas, and what is told of their sources. */
    private static final String FORMULA = "<p class=\"formula\">[^<]*|Source: [^<]*";

    @ParameterizedTest
    @CsvSource({"silt-trailer, METRIC", "saw-skid, US"})
    void everyNumberComesFromSomewhere(String name, UnitSystem units) throws Exception {
        Dossier dossier = Dossiers.of(name);
        KnownNumbers known = known(dossier, units);
        Set<PrintedNumbers.Number> printed = new LinkedHashSet<>();
        List<String> texts = sheet(dossier.design(), units);
        try (PDDocument report = Dossiers.pdf(name, units == UnitSystem.US ? Dossiers.LETTER : Dossiers.A4)) {
            texts.add(new PDFTextStripper().getText(report));
        }
        texts.add(page(name));
        Vocabulary.assertKnown("sheet, report and page of " + name, String.join("\n", texts), shipped(name));
        texts.add(Dxf.of(CutDrawing.of(dossier.design(), units)).replace("\n", " | "));
        String unit = units == UnitSystem.US ? "in" : "mm";
        for (String text : texts) {
            printed.addAll(PrintedNumbers.of(text.replaceAll("\\s+|\\.{5,} *\\d+", " ")));
            printed.addAll(PrintedNumbers.bare(text, unit));
        }
        Set<String> unknown = new TreeSet<>();
        int altered = 0;
        int explained = 0;
        for (PrintedNumbers.Number number : printed) {
            if (!CONSTANTS.containsKey(number.text()) && !known.has(number)) {
                unknown.add(number.text());
            }
            if (!List.of("%", "deg").contains(number.unit())) {
                altered++;
                explained += known.has(number.wrong(1.37)) ? 1 : 0;
            }
        }
        assertThat(printed).hasSizeGreaterThan(200);
        assertThat(unknown).isEmpty();
        assertThat(explained).as("wrong numbers that would be explained").isLessThan(altered / 2);
        for (NumberedPlace place : NumberedPlace.of(dossier.design())) {
            assertThat(texts.stream().map(t -> t.replaceAll("\\s+", " ")).filter(t -> t.contains(place.words())))
                    .as(place.words() + " on sheet, report and page")
                    .hasSizeGreaterThanOrEqualTo(3);
        }
    }

    private static String shipped(String name) throws IOException {
        return Files.readString(Path.of("geometry", name + ".yaml"));
    }

    /** Strings of the sheet's PDF, each label for itself. */
    private static List<String> sheet(Design design, UnitSystem units) throws Exception {
        List<Drawing> pages =
                WeldSheet.pages(design, units, units == UnitSystem.US ? Paper.LETTER : Paper.A4, Cautions.all());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.write(design.name(), pages, out);
        List<String> texts = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> at) throws IOException {
                    texts.add(text);
                    super.writeString(text, at);
                }
            };
            texts.add(stripper.getText(document));
        }
        return texts;
    }

    /** The page's text; a cell of a table whose head has a unit is read with it. */
    private static String page(String name) {
        String page =
                Dossiers.page(name).replaceAll("(?s)<(script|style|svg).*?</\\1\\s*>|" + PUT_IN + "|" + FORMULA, " ");
        Matcher cell =
                Pattern.compile("data-head=\"[^\"]*, ([^\"]*)\">([^<]*)<").matcher(page);
        StringBuilder all = new StringBuilder();
        while (cell.find()) {
            all.append(cell.group(2)).append(' ').append(cell.group(1)).append(" ; ");
        }
        return all + page.replaceAll("<[^>]*>", " ");
    }

    private static KnownNumbers known(Dossier dossier, UnitSystem units) throws Exception {
        KnownNumbers known = new KnownNumbers();
        ObjectMapper mapper = new ObjectMapper();
        StringWriter json = new StringWriter();
        JsonReport.write(dossier.checked(), json);
        known.json(mapper.readTree(json.toString()));
        StringWriter time = new StringWriter();
        JsonTime.write("x", dossier.checked().result().timing(), time);
        known.json(mapper.readTree(time.toString()));
        Design design = dossier.design();
        known.record(design)
                .record(dossier.checked().result().findings())
                .record(dossier.checked().taken());
        dossier.checked().result().findings().forEach(f -> PrintedNumbers.of(
                        f.loadCase() == null ? "" : CaseName.shown(f.loadCase(), design.tank()))
                .forEach(n -> known.add(Kind.RATIO, n.si())));
        Welder welder = new Welder(design);
        double by = design.mounts() == null ? 0.005 : design.mounts().wants().weld();
        Tolerance tolerance = welder.tolerance(by, welder.usualRuns(), 1);
        known.record(tolerance);
        SampledShare share = SampledShare.of(tolerance.chance(), tolerance.runs());
        PrintedNumbers.of(share.words()).forEach(n -> known.add(Kind.RATIO, n.si()));
        places(known, WeldSheet.rounded(design, units));
        places(known, design);
        machine(known, dossier.analysis(), units);
        for (Design with :
                List.of(design, design.withSlurry(design.slurry().withFill(0.5).withDensity(1000)))) {
            cases(known, Analyser.analyse(with));
        }
        return known;
    }

    /** From place to place, straight and through space, and from the frame's edges. */
    private static void places(KnownNumbers known, Design design) {
        List<Vec2> points = new ArrayList<>(List.of(Vec2.ZERO));
        NumberedPlace.of(design).forEach(p -> points.add(p.at()));
        List<Double> across = new ArrayList<>(List.of(0.0));
        design.pivot().bearings().stream().map(Support::z).forEach(across::add);
        design.drive().actuators().stream().map(PlacedActuator::z).forEach(across::add);
        for (Vec2 a : points) {
            for (Vec2 b : points) {
                known.apart(a, b);
                for (double z : across) {
                    across.forEach(w -> known.length(Math.hypot(a.minus(b).norm(), z - w)));
                }
            }
            if (design.frame() != null) {
                design.frame().members().forEach(m -> m.outline().forEach(c -> known.apart(a, c)));
            }
        }
    }

    /** The most of each load, of what is rated, and what is in the tank. */
    private static void cases(KnownNumbers known, Analysis analysis) {
        double rated = analysis.design().drive().actuators().stream()
                .mapToDouble(a -> a.actuator().ratedPush())
                .sum();
        for (CaseResult c : Analyser.all(analysis)) {
            double push = 0;
            double pull = 0;
            for (Row row : c.rows()) {
                for (Balance b : List.of(row.rest(), row.raise(), row.lower())) {
                    push = Math.max(push, b.force());
                    pull = Math.max(pull, -b.force());
                }
                known.add(Kind.VOLUME, row.load().volume());
            }
            known.add(Kind.FORCE, push).add(Kind.FORCE, pull).add(Kind.RATIO, push / rated);
            double full = c.rows().isEmpty() ? 0 : c.rows().get(0).load().volume();
            known.add(Kind.MASS, full * analysis.design().slurry().mixtureDensity());
        }
        known.add(Kind.DENSITY, analysis.design().slurry().mixtureDensity());
    }

    private static void machine(KnownNumbers known, Analysis analysis, UnitSystem units) throws Exception {
        Design design = analysis.design();
        Brackets brackets = Brackets.of(analysis, units);
        CutList cuts = CutList.of(analysis, brackets, units);
        known.record(brackets.all()).record(brackets.design()).record(cuts);
        for (PlateCut cut : cuts.plates()) {
            Vec2 size = cut.plate().high().minus(cut.plate().low());
            known.length(size.x()).length(size.y()).add(Kind.MASS, cut.plate().mass());
            cut.plate().holes().forEach(h -> {
                known.apart(h.at(), cut.plate().low()).apart(h.at(), cut.plate().high());
                cut.plate().holes().forEach(o -> known.apart(h.at(), o.at()));
            });
        }
        for (Bracket b : brackets.all()) {
            assertThat(b.count()).isPositive();
        }
        known.add(Kind.MASS, cuts.plateMass()).add(Kind.MASS, cuts.pieceMass());
        cuts.pieces().stream().mapToDouble(CutPiece::mass).forEach(m -> known.add(Kind.MASS, m));
        double kerf = units == UnitSystem.US ? 0.0254 / 8 : 0.003;
        for (Nesting.Group group : cuts.nesting().bars()) {
            double sold = 0;
            double used = 0;
            for (List<Double> bar : group.bars()) {
                double pieces = bar.stream().mapToDouble(d -> d).sum();
                known.length(cuts.nesting().stock() - pieces - kerf * bar.size());
                sold += cuts.nesting().stock();
                used += pieces;
            }
            known.add(Kind.RATIO, 1 - used / sold);
        }
        Map<Double, Double> boxes = new TreeMap<>();
        for (PlateCut cut : cuts.plates()) {
            Vec2 size = cut.plate().high().minus(cut.plate().low());
            boxes.merge(cut.plate().thickness(), size.x() * size.y() * cut.count(), Double::sum);
        }
        boxes.values().forEach(a -> known.add(Kind.AREA, a));
        List<Pose> poses = analysis.poses();
        Actuator actuator = design.drive().actuators().get(0).actuator();
        for (Pose pose : poses) {
            known.length(pose.length() - actuator.closed());
            known.length(actuator.closed() + actuator.stroke() - pose.length());
            known.add(
                    Kind.ANGLE,
                    Math.atan2(
                            Math.abs(pose.tankPin().y() - pose.framePin().y()),
                            Math.abs(pose.tankPin().x() - pose.framePin().x())));
        }
        known.record(poses.get(0)).record(poses.get(poses.size() - 1));
        MachinePose home = MachinePose.of(poses.get(0)).doorsShut();
        new MachineOutline(analysis).at(home, View.SIDE).forEach(s -> s.corners()
                .forEach(c -> known.apart(c, design.pivot().at())));
    }
}
