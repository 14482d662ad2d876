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

/** One document about one design, to take to the shop, the boss and the engineer. */
public final class Report {
    /** Room of the dimensioned side view, mm. */
    private static final double DIMENSIONS_WIDTH = 178;

    private static final double DIMENSIONS_HEIGHT = 130;

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
        Plots plots = new Plots(analysis, new Plot(Fonts.forPlots()), units);
        CheckPages checks = new CheckPages(dossier, units);
        LoadPages loads = new LoadPages(analysis, units);
        Result result = dossier.checked().result();
        Style style = new Style(false, units);
        Markup page = sheet.page();
        new FirstPage(dossier, paper).to(page, new MachineView(analysis).figure());
        sheet.part("Load cases and forces");
        loads.cases(page);
        loads.envelope(page);
        sheet.part("Plots over the tilt");
        figures(plots.overTilt());
        sheet.part("Does it empty?");
        page.list(new FillSection(style).empties(result));
        sheet.part("The dump in time");
        page.list(new TimeSection(dossier.design(), style).sentences(result.timing()));
        loads.time(page, result.timing());
        Cycle dump = result.timing().dump();
        if (dump != null) {
            figures(plots.overTime(dump));
        }
        sheet.part("All checks");
        checks.table(page);
        sheet.part("Clearances and where the load lands");
        checks.room(page);
        sheet.part("Tipping over and hanging");
        checks.stand(page);
        sheet.part("Weld tolerance");
        tolerance.to(page);
        sheet.part("Sheet to weld from");
        dimensions().to(page, paper);
        new WeldPoints(analysis).to(page);
        sheet.part("Pictures");
        stills();
        sheet.part("How each check was worked out");
        page.line(
                "p",
                "Used = needs / has, where has is what there is after the safety factor; over 100 % fails. Your numbers follow each formula.");
        checks.workings(page);
        sheet.part("Inputs as read");
        dossier.origin().lines().forEach(l -> page.line("p class=\"hash\"", l));
        new InputTable(dossier.design()).to(page);
        sheet.part("What was assumed");
        assumptions(page);
        sheet.part("What no check knows");
        page.list(NotKnown.all());
        sheet.part("Cautions");
        page.list(Cautions.all());
        return sheet.close();
    }

    private Figure dimensions() {
        Drawing drawing = SideView.of(dossier.analysis(), units, DIMENSIONS_WIDTH, DIMENSIONS_HEIGHT);
        return new Figure(
                Svg.of(drawing, false).strip(),
                drawing.title() + ", with the distances between the pins",
                drawing.title() + ". 'tipwright sheet' writes it with a 1:1 template.");
    }

    private void figures(List<Figure> figures) {
        figures.forEach(f -> f.to(sheet.page(), paper));
    }

    private void stills() {
        Markup page = sheet.page().raw("<div class=\"stills\">");
        for (Stills.Still still : dossier.stills().pictures()) {
            String data = Base64.getEncoder().encodeToString(still.png());
            page.raw("<div class=\"figure\"><img alt=\"" + Markup.safe(still.caption())
                    + "\" src=\"data:image/png;base64," + data + "\"/>");
            page.line("p class=\"caption\"", still.caption()).raw("</div>");
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
            grid.row(a.path(), a.value(), a.note());
        }
        if (grid.isEmpty()) {
            page.line("p", "Nothing: the file gives every key.");
        } else {
            grid.to(page);
        }
        page.line("p", "What was not checked is listed under 'All checks'.");
    }
}
