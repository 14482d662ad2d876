// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.List;
import java.util.Locale;
import tipwright.analysis.CaseResult;
import tipwright.design.actuator.Actuator;
import tipwright.design.tank.CaseName;
import tipwright.quantity.UnitSystem;
import tipwright.report.Cautions;
import tipwright.report.Job;
import tipwright.report.Scale;

/** What a phone opens on: the verdict, the machine to be tipped by a finger with its numbers, what to weld by, cautions. */
final class TiltPage {
    private final Dossier dossier;
    private final UnitSystem first;
    private final TiltTable table;

    TiltPage(Dossier dossier, UnitSystem first) {
        this.dossier = dossier;
        this.first = first;
        this.table =
                new TiltTable(dossier.analysis(), dossier.checked().result().timing());
    }

    void to(Markup page) {
        page.line("h1", dossier.design().name());
        units(page);
        both(page, Summary::verdict);
        tilting(page);
        both(page, Summary::numbers);
        both(page, Summary::change);
        both(page, Summary::mistakes);
        both(page, Summary::cannotTell);
        both(page, Summary::howFull);
        page.line("h2", "To weld by");
        for (UnitSystem units : UnitSystem.values()) {
            page.raw(start(units));
            new WeldPoints(dossier.analysis()).brief(page, units);
            page.raw("</div>");
        }
        page.line("h2", "Cautions");
        page.raw("<div class=\"caution\">").list(Cautions.all()).raw("</div>");
        page.line("h2", "What this is about");
        String about = dossier.design().about();
        if (about != null) {
            page.line("p", about);
        }
        both(page, (summary, p) -> p.line("p", new Job(dossier.design(), summary.units()).sentence()));
    }

    /** The table that the page looks up, and what looks it up. */
    void scripts(Markup page) {
        page.raw("<script type=\"application/json\" id=\"table\">" + table.json() + "</script>");
        page.raw("<script>" + DocumentFrame.resource("tilt.js") + "</script>");
    }

    private static String start(UnitSystem units) {
        return "<div class=\"" + word(units) + "\">";
    }

    private static String word(UnitSystem units) {
        return units.name().toLowerCase(Locale.ROOT);
    }

    private interface Piece {
        void to(Summary summary, Markup page);
    }

    /** In both systems; the switch shows one of them. */
    private void both(Markup page, Piece piece) {
        for (UnitSystem units : UnitSystem.values()) {
            page.raw(start(units));
            piece.to(new Summary(dossier, units), page);
            page.raw("</div>");
        }
    }

    private void units(Markup page) {
        page.raw("<fieldset class=\"switch needs-script\"><legend>Units</legend>");
        for (UnitSystem units : UnitSystem.values()) {
            page.raw("<label><input type=\"radio\" name=\"units\" value=\"" + word(units) + "\""
                    + (units == first ? " checked=\"checked\"" : "") + "/> "
                    + (units == UnitSystem.METRIC ? "mm, kN" : "in, lbf") + "</label>");
        }
        page.raw("</fieldset>");
    }

    private void tilting(Markup page) {
        page.raw("<section class=\"tilting\" aria-labelledby=\"tip-it\">");
        page.line("h2 id=\"tip-it\"", "Tip it");
        page.raw(table.picture().svg());
        page.line(
                "p class=\"caption needs-script\"",
                "Drag the picture sideways, or the slider. " + new PlaceMarks(dossier.analysis()).legend()
                        + " Thin dashed: only sketched.");
        page.raw(
                "<p class=\"needs-script\"><label for=\"tilt\">Tilt</label> <output id=\"angle\" for=\"tilt\"></output>"
                        + "<input id=\"tilt\" type=\"range\" min=\"0\" max=\"" + (table.rows() - 1)
                        + "\" step=\"1\" value=\"0\"/></p>");
        page.raw("<p class=\"jumps needs-script\"><button type=\"button\" data-go=\"first\">Stowed</button>"
                + "<button type=\"button\" data-go=\"hardest\">Largest force</button>"
                + "<button type=\"button\" data-go=\"last\">Full tilt</button></p>");
        loads(page);
        now(page);
        page.line("noscript", "This part needs scripts. The numbers over the tilt are in the tables below.");
        page.raw("</section>");
    }

    private void loads(Markup page) {
        page.raw("<p class=\"needs-script\"><label for=\"load\">Load</label> <select id=\"load\">");
        List<CaseResult> cases = table.cases();
        for (boolean upset : new boolean[] {false, true}) {
            if (cases.stream().anyMatch(c -> c.load().upset() == upset)) {
                page.raw("<optgroup label=\"" + (upset ? "Only if something goes wrong" : "Normal dump") + "\">");
                for (int i = 0; i < cases.size(); i++) {
                    CaseResult c = cases.get(i);
                    if (c.load().upset() == upset) {
                        page.line(
                                "option value=\"" + i + "\" data-about=\"" + Markup.safe(about(c)) + "\"",
                                CaseName.shown(c.name(), dossier.design().tank()));
                    }
                }
                page.raw("</optgroup>");
            }
        }
        page.raw("</select></p>").line("p id=\"about\" class=\"caption needs-script\"", "");
        page.line(
                "p id=\"upset\" class=\"caption needs-script\" hidden=\"hidden\"",
                "At this tilt it comes about only if something goes wrong.");
    }

    private String about(CaseResult c) {
        return CaseName.about(c.name(), dossier.design().tank())
                + (dossier.checked().result().timing().of(c.name()) == null ? " No time is worked out for it." : "");
    }

    private void now(Markup page) {
        Actuator actuator = dossier.design().drive().actuators().get(0).actuator();
        page.raw("<dl class=\"now needs-script\">");
        shown(page, "Going up", "raise", true);
        shown(page, "Coming down", "lower", true);
        shown(page, "Held still", "rest", true);
        shown(page, "Most loaded bearing", "bearing", false);
        page.raw("<div><dt>Stroke used</dt><dd>" + length("stroke", actuator.stroke()) + "</dd></div>");
        page.raw("<div><dt>Stroke left</dt><dd>" + length("left", Double.NaN) + "</dd></div>");
        page.raw("<div><dt>Pin to pin</dt><dd>" + length("length", Double.NaN) + "</dd></div>");
        page.raw("<div><dt>Time to get up here</dt><dd><b data-time=\"up\"></b></dd></div>");
        page.raw("<div><dt>Time down from here</dt><dd><b data-time=\"down\"></b></dd></div>");
        page.raw("</dl>");
        page.line("h3 class=\"needs-script\"", "Worst of all loads at this tilt");
        page.raw("<dl class=\"now needs-script\">");
        shown(page, "Largest push", "push", false);
        shown(page, "Largest pull", "pull", false);
        shown(page, "Largest on a bearing", "most", false);
        page.raw("</dl>");
        page.line(
                "p class=\"caption needs-script\"",
                "All loads of a normal dump, '"
                        + CaseName.shown(CaseName.HELD.key(), dossier.design().tank())
                        + "' among them; not those that come about only if something goes wrong.");
    }

    private static void shown(Markup page, String name, String field, boolean signed) {
        StringBuilder out = new StringBuilder("<div><dt>" + name + "</dt><dd>");
        for (UnitSystem units : UnitSystem.values()) {
            out.append("<span class=\"")
                    .append(word(units))
                    .append("\"><b data-force=\"")
                    .append(field);
            out.append("\" data-units=\"").append(word(units)).append(signed ? "\" data-signed=\"yes" : "");
            out.append("\" data-unit=\"").append(Scale.force(units).unit()).append("\"></b></span>");
        }
        page.raw(out.append("</dd></div>").toString());
    }

    private static String length(String field, double of) {
        StringBuilder out = new StringBuilder();
        for (UnitSystem units : UnitSystem.values()) {
            Scale length = Scale.length(units);
            out.append("<span class=\"")
                    .append(word(units))
                    .append("\"><b data-length=\"")
                    .append(field);
            out.append("\" data-units=\"")
                    .append(word(units))
                    .append("\" data-unit=\"")
                    .append(length.unit());
            out.append("\"></b>")
                    .append(Double.isNaN(of) ? "" : " of " + length.show(of))
                    .append("</span>");
        }
        return out.toString();
    }
}
