// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.design.actuator.Actuator;
import tipwright.report.Cautions;
import tipwright.report.Checked;
import tipwright.report.Comparison;
import tipwright.report.Envelope;
import tipwright.report.Scale;
import tipwright.time.Cycle;

/** Two or more designs side by side: a table and plots laid over each other. */
public final class Contrast {
    private static final int NAME = 22;
    private static final int ALL = 100;
    private static final String TILT = "tilt, deg";

    private final List<Dossier> dossiers;
    private final List<Checked> designs;
    private final List<String> names;
    private final PageSetting paper;

    private Contrast(List<Dossier> dossiers, PageSetting paper) {
        this.dossiers = dossiers;
        this.designs = dossiers.stream().map(Dossier::checked).toList();
        this.names = Comparison.names(designs);
        this.paper = paper;
    }

    /**
     * Writes the document.
     *
     * @param dossiers two at least
     * @throws IOException when it cannot be written whole
     */
    public static void write(List<Dossier> dossiers, PageSetting paper, OutputStream out) throws IOException {
        String text = new Contrast(dossiers, paper).text();
        if (paper.pdf()) {
            PdfWriter.write(text, out);
        } else {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
    }

    private String text() {
        String title = String.join(" / ", names);
        DocumentFrame sheet = new DocumentFrame(title, dossiers.get(0).origin(), paper);
        Markup page = sheet.page();
        page.line("h1", "Designs side by side").line("p", title);
        table().to(page);
        for (int i = 0; i < dossiers.size(); i++) {
            Origin origin = dossiers.get(i).origin();
            page.line("p class=\"hash\"", names.get(i) + ":");
            origin.lines().forEach(l -> page.line("p class=\"hash\"", l));
        }
        sheet.part("Plots laid over each other");
        plots().forEach(f -> f.to(page, paper));
        sheet.part("Cautions");
        page.list(Cautions.all());
        return sheet.close();
    }

    private FixedTable table() {
        List<FixedTable.Column> columns = new ArrayList<>();
        columns.add(FixedTable.Column.text("", NAME));
        names.forEach(n -> columns.add(FixedTable.Column.text(n, (ALL - NAME) / names.size())));
        columns.set(0, FixedTable.Column.text("what", NAME));
        FixedTable grid = new FixedTable("Side by side", columns.toArray(FixedTable.Column[]::new));
        for (Comparison.Line line : Comparison.lines(designs, paper.units())) {
            List<String> cells = new ArrayList<>();
            cells.add(line.name());
            cells.addAll(line.values());
            grid.row(cells);
        }
        return grid;
    }

    private List<Figure> plots() {
        Plot plot = new Plot(Fonts.forPlots());
        Scale force = Scale.force(paper.units());
        List<Figure> all = new ArrayList<>();
        all.add(plot.of(
                "Largest push, worst of all load cases",
                TILT,
                "push, " + force.unit(),
                curves(e -> e.push() == null ? 0 : force.label().fromSi(e.push().value()))));
        all.add(plot.of(
                "Largest pull, worst of all load cases",
                TILT,
                "pull, " + force.unit(),
                curves(e -> e.pull() == null ? 0 : force.label().fromSi(e.pull().value()))));
        all.add(plot.of(
                "Load of the bearing that carries most",
                TILT,
                "load, " + force.unit(),
                curves(e -> e.bearing() == null
                        ? 0
                        : force.label().fromSi(e.bearing().peak().value()))));
        all.add(plot.of("Stroke used", TILT, "share of the stroke, %", strokes()));
        List<PlotCurve> contents = contents();
        if (!contents.isEmpty()) {
            all.add(plot.of("What is left in a normal dump", TILT, "share of the load, %", contents));
        }
        List<PlotCurve> tilts = tilts();
        if (!tilts.isEmpty()) {
            all.add(plot.of("Tilt during a dump", "time, s", TILT, tilts));
        }
        return all;
    }

    private List<PlotCurve> curves(ToDoubleFunction<Envelope> value) {
        List<PlotCurve> all = new ArrayList<>();
        for (int i = 0; i < designs.size(); i++) {
            List<Envelope> rows = Envelope.of(analysis(i));
            all.add(PlotCurve.of(
                    names.get(i),
                    rows.stream()
                            .mapToDouble(e -> Math.toDegrees(e.pose().tilt()))
                            .toArray(),
                    rows.stream().mapToDouble(value).toArray()));
        }
        return all;
    }

    private Analysis analysis(int design) {
        return designs.get(design).result().analysis();
    }

    private List<PlotCurve> strokes() {
        List<PlotCurve> all = new ArrayList<>();
        for (int i = 0; i < designs.size(); i++) {
            Actuator a = analysis(i).design().drive().actuators().get(0).actuator();
            all.add(PlotCurve.of(
                    names.get(i),
                    analysis(i).poses().stream()
                            .mapToDouble(p -> Math.toDegrees(p.tilt()))
                            .toArray(),
                    analysis(i).poses().stream()
                            .mapToDouble(p -> 100 * (p.length() - a.closed()) / a.stroke())
                            .toArray()));
        }
        return all;
    }

    private List<PlotCurve> contents() {
        List<PlotCurve> all = new ArrayList<>();
        for (int i = 0; i < designs.size(); i++) {
            for (CaseResult c : analysis(i).cases()) {
                if (c.name().equals("draining") && c.load().contents() > 0) {
                    double full = c.load().contents();
                    all.add(PlotCurve.of(
                            names.get(i),
                            c.rows().stream()
                                    .mapToDouble(r -> Math.toDegrees(r.tilt()))
                                    .toArray(),
                            c.rows().stream()
                                    .mapToDouble(r -> 100 * r.load().volume() / full)
                                    .toArray()));
                }
            }
        }
        return all;
    }

    private List<PlotCurve> tilts() {
        List<PlotCurve> all = new ArrayList<>();
        for (int i = 0; i < designs.size(); i++) {
            Cycle dump = designs.get(i).result().timing().dump();
            if (dump != null && dump.moments().size() > 1) {
                all.add(PlotCurve.of(
                        names.get(i),
                        dump.moments().stream().mapToDouble(m -> m.time()).toArray(),
                        dump.moments().stream()
                                .mapToDouble(m -> Math.toDegrees(m.tilt()))
                                .toArray()));
            }
        }
        return all;
    }
}
