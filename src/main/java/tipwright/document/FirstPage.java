// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Pose;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.actuator.Actuator;
import tipwright.design.tank.CaseName;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.report.Cautions;
import tipwright.report.FillSection;
import tipwright.report.FixText;
import tipwright.report.Job;
import tipwright.report.Peak;
import tipwright.report.Prose;
import tipwright.report.Scale;
import tipwright.report.Style;
import tipwright.report.VerdictText;
import tipwright.time.Cycle;

/** First page: job, picture, verdict, five numbers and fixes. */
final class FirstPage {
    private static final int MOST = 6;

    private final Dossier dossier;
    private final PageSetting paper;
    private final Result result;

    FirstPage(Dossier dossier, PageSetting paper) {
        this.dossier = dossier;
        this.paper = paper;
        this.result = dossier.checked().result();
    }

    void to(Markup page, Figure side) {
        page.line("h1", dossier.design().name());
        String about = dossier.design().about();
        if (about != null) {
            page.line("p", about);
        }
        page.line("p", new Job(dossier.design(), paper.units()).sentence());
        side.to(page, paper);
        page.line(
                "p class=\"caption\"",
                MachineView.LEGEND + (dossier.design().assists().isEmpty() ? "" : MachineView.ASSISTS));
        page.inside("div class=\"verdict\"", verdict());
        five(page);
        mend(page);
        List<Finding> skipped = dossier.findings(Verdict.NOT_CHECKED);
        if (!skipped.isEmpty()) {
            String names =
                    String.join("; ", skipped.stream().map(Finding::title).toList());
            page.line("h2 class=\"small\"", "Cannot tell: sizes missing").line("p", names + ".");
        }
        String full = new FillSection(new Style(false, paper.units())).howFull(result.howFull());
        page.line("h2 class=\"small\"", "How full may it be?").line("p", full);
        for (Text mistake : dossier.checked().mistakes()) {
            page.line("p", "! " + mistake.show(paper.units()));
        }
        for (String warning : dossier.checked().warnings()) {
            page.line("p", "! " + warning);
        }
        page.inside(
                "div class=\"caution\"",
                Markup.safe(Cautions.all().get(0) + " " + Cautions.FIGURES + " More cautions at the end."));
        Origin origin = dossier.origin();
        page.line(
                "p class=\"hash\"",
                "Made by " + origin.version() + " on " + origin.date() + " from " + origin.files() + ", SHA-256 "
                        + origin.hash() + ".");
    }

    private String verdict() {
        VerdictText text = new VerdictText(result.parts(), paper.units());
        String word =
                Words.sign(result.verdict()) + " " + result.verdict().says().toUpperCase(Locale.ROOT);
        StringBuilder all = new StringBuilder("<span class=\"word\">" + Markup.safe(word) + "</span>");
        for (String sentence : text.sentences()) {
            all.append("<br/>").append(Markup.safe(sentence));
        }
        return all.toString();
    }

    private void five(Markup page) {
        Peak push = Peak.force(dossier.analysis().cases(), Peak.Tilts.ALL, true);
        Peak pull = Peak.force(dossier.analysis().cases(), Peak.Tilts.ALL, false);
        int bearings = dossier.design().pivot().bearings().size();
        Peak.OnBearing bearing = Peak.bearing(dossier.analysis().cases(), Peak.Tilts.ALL, 0, bearings);
        page.raw("<table class=\"five\"><caption>Five numbers</caption><thead><tr>");
        List.of("Largest push", "Largest pull", "Stroke used", "Most loaded bearing", "Dump time")
                .forEach(h -> page.line("th scope=\"col\"", h));
        page.raw("</tr></thead><tbody><tr>");
        page.line("td", force(push, "none"));
        page.line("td", force(pull, "none"));
        page.line("td", stroke());
        page.line("td", force(bearing == null ? null : bearing.peak(), "-"));
        Cycle dump = result.timing().dump();
        page.line("td", dump == null || !dump.complete() || stopsShort(dump) ? "-" : Words.seconds(dump.total()));
        page.raw("</tr><tr>");
        page.line("td class=\"where\"", where(push));
        page.line("td class=\"where\"", where(pull));
        page.line("td class=\"where\"", strokeShare());
        page.line(
                "td class=\"where\"",
                bearing == null ? "" : "bearing " + (bearing.bearing() + 1) + ", " + where(bearing.peak()));
        page.line("td class=\"where\"", dump == null ? "" + result.timing().missing() : reach(dump) + dumpWords(dump));
        page.raw("</tr></tbody></table>");
    }

    private boolean stopsShort(Cycle dump) {
        return dump.shortOf(dossier.design().tilt().to());
    }

    private String reach(Cycle dump) {
        return stopsShort(dump) ? "it gets to " + Scale.angle().show(dump.highest()) + " only; " : "";
    }

    private String force(@Nullable Peak peak, String none) {
        return peak == null ? none : Scale.force(paper.units()).show(peak.value());
    }

    private String where(@Nullable Peak peak) {
        if (peak == null) {
            return "";
        }
        UnitSystem other = paper.units() == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US;
        return Scale.force(other).show(peak.value()) + "; at " + Scale.angle().show(peak.tilt()) + ", "
                + CaseName.shown(peak.loadCase()) + ", " + peak.motion();
    }

    private double[] lengths() {
        return dossier.analysis().poses().stream()
                .mapToDouble(Pose::length)
                .sorted()
                .toArray();
    }

    private String stroke() {
        double[] lengths = lengths();
        return Scale.length(paper.units()).show(lengths[lengths.length - 1] - lengths[0]);
    }

    private String strokeShare() {
        Actuator actuator = dossier.design().drive().actuators().get(0).actuator();
        double[] lengths = lengths();
        Scale length = Scale.length(paper.units());
        return "of " + length.show(actuator.stroke()) + "; pin to pin " + length.show(lengths[0]) + " to "
                + length.show(lengths[lengths.length - 1]);
    }

    private static String dumpWords(Cycle dump) {
        return dump.complete()
                ? "up " + Words.seconds(dump.raise()) + ", back " + Words.seconds(dump.lower())
                : "it does not get up and back";
    }

    private void mend(Markup page) {
        List<Finding> bad = new ArrayList<>(dossier.findings(Verdict.FAIL));
        bad.addAll(dossier.findings(Verdict.CLOSE));
        page.line(
                "h2 class=\"small\"",
                bad.isEmpty() ? "Closest to failing" : "What fails or is close, and how to fix it");
        if (bad.isEmpty()) {
            List<Finding> passed = dossier.findings(Verdict.PASS);
            page.list(passed.stream()
                    .limit(2)
                    .map(f -> Words.used(f) + " " + f.title() + ": "
                            + Prose.safe(f.note().show(paper.units())))
                    .toList());
            return;
        }
        List<String> items = new ArrayList<>();
        for (Finding f : bad.subList(0, Math.min(MOST, bad.size()))) {
            items.add(Words.sign(f.verdict()) + " " + f.verdict().says().toUpperCase(Locale.ROOT) + " " + Words.used(f)
                    + " " + f.title() + ": " + f.note().show(paper.units()) + ". "
                    + FixText.of(f, dossier.checked().fixes(), paper.units()));
        }
        if (bad.size() > MOST) {
            items.add((bad.size() - MOST) + " more: see all checks.");
        }
        page.list(items);
    }
}
