// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import tipwright.report.Cautions;
import tipwright.report.Job;

/** First page on paper: verdict, five numbers, side views, what to change, the caution. */
final class FirstPage {
    private final Dossier dossier;
    private final PageSetting paper;

    FirstPage(Dossier dossier, PageSetting paper) {
        this.dossier = dossier;
        this.paper = paper;
    }

    void to(Markup page) {
        Summary summary = new Summary(dossier, paper.units());
        MachineView view = new MachineView(dossier.analysis(), paper.units());
        page.line("h1", dossier.design().name());
        summary.verdict(page);
        page.line("p", new Job(dossier.design(), paper.units()).sentence());
        summary.numbers(page);
        view.figure().to(page, paper);
        page.line("p class=\"caption\"", view.legend());
        summary.change(page);
        summary.mistakes(page);
        summary.cannotTell(page);
        page.inside("div class=\"caution\"", Markup.safe(Cautions.SHORT + " More cautions at the end."));
        String about = dossier.design().about();
        if (about != null) {
            page.line("p class=\"caption\"", about);
        }
    }
}
