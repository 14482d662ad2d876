// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.check.NotKnown;
import tipwright.check.Result;
import tipwright.design.file.Assumption;
import tipwright.drawing.Drawing;
import tipwright.drawing.Svg;
import tipwright.quantity.UnitSystem;
import tipwright.report.Cautions;
import tipwright.report.FillSection;
import tipwright.report.Style;
import tipwright.report.TimeSection;
import tipwright.sheet.SideView;
import tipwright.time.Cycle;

/** One document about one design, for the shop, the owner and the engineer. */
public final class Report {
    /** Room of the dimensioned side view, mm. */
    private static final double DIMENSIONS_WIDTH = 178;

    private static final double DIMENSIONS_HEIGHT = 130;

    /** What the folded parts of a page are written in. */
    private final Dossier dossier;

    private final PageSetting paper;
    private final UnitSystem units;
    private final Analysis analysis;
    private final DocumentFrame sheet;

    private Report(Dossier dossier, PageSetting paper) {
        this.dossier = dossier;
        this.paper = paper;
        this.units = paper.units();
        this.analysis = dossier.analysis();
        this.sheet = new DocumentFrame(dossier.design().name(), dossier.origin(), paper);
    }

    /**
     * Writes the document.
     *
     * @throws IOException when it cannot be written whole
     */
    public static void write(Dossier dossier, PageSetting paper, OutputStream out) throws IOException {
        String text = new Report(dossier, paper).text();
        if (paper.pdf()) {
            PdfWriter.write(text, out);
        } else {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
    }

    private String text() {
        TolerancePages tolerance = new TolerancePages(dossier.design(), units);
        Markup page = sheet.page();
        TiltPage tilt = paper.pdf() ? null : new TiltPage(dossier, units);
        if (tilt == null) {
            FirstPage first = new FirstPage(dossier, paper);
            first.to(page);
            sheet.contentsHere();
            first.about(page);
            if (first.more()) {
                sheet.part(FirstPage.BEHIND);
                first.rest(page);
            }
        } else {
            tilt.to(page);
            page.line("h2", "Everything else").line("p class=\"caption\"", inUnits(units));
            sheet.fold();
        }
        parts(page, tolerance);
        if (tilt != null) {
            tilt.scripts(sheet.last());
        }
        return sheet.close();
    }

    private void parts(Markup page, TolerancePages tolerance) {
        Plots plots = new Plots(analysis, new Plot(Fonts.forPlots()), units);
        CheckPages checks = new CheckPages(dossier, units);
        LoadPages loads = new LoadPages(analysis, units);
        Result result = dossier.checked().result();
        Cycle dump = result.timing().dump();
        boolean engineer = paper.engineer();
        sheet.part("Forces over the tilt");
        loads.cases(page);
        loads.envelope(page);
        figures(engineer ? plots.overTilt() : plots.fewOverTilt());
        sheet.part("Does it empty, and the dump in time");
        page.list(new FillSection(new Style(false, units)).empties(result));
        page.list(new TimeSection(dossier.design(), new Style(false, units)).sentences(result.timing()));
        loads.time(page, result.timing());
        if (dump != null) {
            figures(engineer ? plots.overTime(dump) : plots.overTime(dump).subList(0, 1));
        }
        sheet.part("All checks");
        checks.table(page, engineer);
        if (engineer) {
            sheet.part("Clearances and where the load lands");
            checks.room(page);
            sheet.part("Overturning and lifting");
            checks.stand(page);
        }
        sheet.part("Weld tolerance");
        tolerance.to(page);
        sheet.part("Where the pins go");
        dimensions().to(page, paper);
        new WeldPoints(analysis).to(page);
        if (paper.pdf()) {
            sheet.part("Pictures");
            stills();
        }
        if (engineer) {
            engineer(page, checks);
        }
        sheet.part("What this program does not look at");
        page.list(NotKnown.all());
        sheet.part("Cautions");
        page.list(Cautions.all());
        sheet.part("Files this was made from");
        page.line(
                "p class=\"hash\"",
                "Made by " + dossier.origin().version() + " on "
                        + dossier.origin().date() + " from " + dossier.origin().files() + ".");
        dossier.origin().lines().forEach(l -> page.line("p class=\"hash\"", l));
    }

    /** The engineer's part: how each check comes about, from what. */
    private void engineer(Markup page, CheckPages checks) {
        sheet.part("How each check was worked out");
        page.line(
                "p",
                "Used = needs / has, where has is what there is after the safety factor; over 100 % fails. Your numbers follow each formula.");
        checks.workings(page);
        sheet.part("Inputs as read");
        new InputTable(dossier.design()).to(page);
        sheet.part("What was assumed");
        assumptions(page);
    }

    private Figure dimensions() {
        Drawing drawing = SideView.besideList(dossier.analysis(), units, DIMENSIONS_WIDTH, DIMENSIONS_HEIGHT);
        return new Figure(
                Svg.of(drawing, false).strip(),
                drawing.title() + ", with the distances between the pins",
                drawing.title() + ". 'tipwright sheet' writes the weld sheet.");
    }

    private void figures(List<Figure> figures) {
        figures.forEach(f -> f.to(sheet.page(), paper));
    }

    private void stills() {
        Markup page = sheet.page().raw("<div class=\"stills\">");
        List<Stills.Still> pictures = dossier.stills().pictures();
        for (int i = 0; i < pictures.size(); i++) {
            Stills.Still still = pictures.get(i);
            // two in a row: the setter of the PDF breaks a page between rows only
            page.raw(i % 2 == 0 ? "<div class=\"whole\">" : "");
            String data = Base64.getEncoder().encodeToString(still.png());
            page.raw("<div class=\"figure\"><img alt=\"" + Markup.safe(still.caption())
                    + "\" src=\"data:image/png;base64," + data + "\"/>");
            page.line("p class=\"caption\"", still.caption()).raw("</div>");
            page.raw(i % 2 == 1 || i == pictures.size() - 1 ? "</div>" : "");
        }
        page.raw("</div>");
        if (!dossier.stills().why().isEmpty()) {
            page.line("p", dossier.stills().why());
        }
    }

    private void assumptions(Markup page) {
        FixedTable grid = new FixedTable(
                "Assumed, because the file does not say; change it there if yours differs",
                FixedTable.Column.text("key", 38),
                FixedTable.Column.text("taken", 24),
                FixedTable.Column.text("what it is", 38));
        for (Assumption a : dossier.checked().taken()) {
            grid.row(a.path(), a.shown(units), a.note());
        }
        if (grid.isEmpty()) {
            page.line("p", "Nothing: the file gives every key.");
        } else {
            grid.to(page);
        }
        page.line("p", "What was not checked is listed under 'All checks'.");
    }

    private static String inUnits(UnitSystem units) {
        return switch (units) {
            case METRIC -> "In metric units; inputs in both. For inches and pounds: tipwright report --units us.";
            case US -> "In US units; inputs in both. For millimetres and kilonewtons: tipwright report --units metric.";
        };
    }
}
