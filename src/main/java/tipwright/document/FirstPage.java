// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.check.Part;
import tipwright.check.Result;
import tipwright.report.Cautions;
import tipwright.report.FiveNumbers;
import tipwright.report.Job;
import tipwright.report.Style;
import tipwright.report.VerdictText;

/** First page on paper: verdict, five numbers, side views, what to change, the caution; what has no room there comes behind it. */
final class FirstPage {
    private static final String CAUTION = Cautions.SHORT + " More cautions at the end.";
    /** Height of the side views where much else is to be said, mm. */
    private static final double SMALLER = 50;

    private static final double LARGE = 10.5;
    private static final double WORD = 14;
    private static final double TITLE = 18;
    /** Share of the page's width that the numbers have. */
    private static final double NUMBERS = 0.75;
    /** Of lines and margins around a box, points. */
    private static final double BOX = 22;

    private static final double CAUTION_BOX = 20;
    /** Of a table's caption and margins, points. */
    private static final double TABLE = 28;
    /** For the sentence that tells where the rest is, points. */
    private static final double MORE = 18;

    private final Dossier dossier;
    private final PageSetting paper;
    private final Summary summary;
    private final List<String> items;
    private final List<String> mistakes;
    private final List<String> missing;
    private final @Nullable String about;
    private int shownItems;
    private int shownMistakes;
    private boolean shownMissing;
    private boolean shownAbout;

    FirstPage(Dossier dossier, PageSetting paper) {
        this.dossier = dossier;
        this.paper = paper;
        summary = new Summary(dossier, paper.units());
        items = summary.changes(true);
        mistakes = summary.allMistakes();
        missing = summary.missing();
        about = dossier.design().about();
    }

    void to(Markup page) {
        MachineView view = new MachineView(dossier.analysis(), paper.units());
        Figure figure = view.figure();
        String job = new Job(dossier.design(), paper.units()).sentence();
        share(figure, job, view.legend(), 0);
        if (more()) {
            figure = view.figure(SMALLER);
            share(figure, job, view.legend(), 0);
        }
        if (more()) {
            share(figure, job, view.legend(), MORE);
        }
        page.line("h1", dossier.design().name());
        summary.verdict(page);
        page.line("p", job);
        summary.numbers(page);
        figure.to(page, paper);
        page.line("p class=\"caption\"", view.legend());
        page.line("h2 class=\"small\"", summary.changeHeading());
        some(page, items, shownItems);
        if (shownMistakes > 0) {
            page.line("h2 class=\"small\"", Summary.MISTAKES);
            some(page, mistakes, shownMistakes);
        }
        if (shownMissing && !missing.isEmpty()) {
            summary.cannotTell(page);
        }
        page.inside("div class=\"caution\"", Markup.safe(CAUTION));
        if (about != null && shownAbout) {
            page.line("p class=\"caption\"", about);
        }
    }

    private void some(Markup page, List<String> all, int shown) {
        page.list(all.subList(0, shown));
        if (shown < all.size()) {
            page.inside(
                    "p",
                    "<a class=\"see\" href=\"#part-1\">and " + (all.size() - shown) + " more: '" + BEHIND + "', page "
                            + "</a>");
        }
    }

    /** Name of the part in which the rest stands. */
    static final String BEHIND = "All that is to be changed or looked at";

    /** Whether something had no room. */
    boolean more() {
        return shownItems < items.size() || shownMistakes < mistakes.size() || !shownMissing;
    }

    /** All of what had no room, from its beginning. */
    void rest(Markup page) {
        if (shownItems < items.size()) {
            page.line("h2 class=\"small\"", summary.changeHeading()).list(summary.changes(false));
        }
        if (shownMistakes < mistakes.size()) {
            page.line("h2 class=\"small\"", Summary.MISTAKES).list(mistakes);
        }
        if (!shownMissing) {
            summary.cannotTell(page);
        }
    }

    /** What the design's file says of itself, where the first page had no room for it. */
    void about(Markup page) {
        if (about != null && !shownAbout) {
            page.line("p", about);
        }
    }

    /**
     * Tells what of it all has room: at least one item of what to change.
     *
     * @param kept points for telling where the rest is
     */
    private void share(Figure figure, String job, String legend, double kept) {
        shownItems = 0;
        shownMistakes = 0;
        shownMissing = missing.isEmpty();
        shownAbout = false;
        Result result = dossier.checked().result();
        VerdictText text = new VerdictText(result, paper.units());
        PageRoom room = new PageRoom(paper.size(), Fonts.forPlots());
        room.paragraph(dossier.design().name(), TITLE);
        room.boxed(List.of("+ " + VerdictText.word(result)), WORD, BOX);
        room.boxed(
                result.parts().both().stream()
                        .map((Part p) -> "+ " + text.sentence(p))
                        .toList(),
                PageRoom.BODY,
                0);
        summary.sureness().forEach(line -> room.paragraph(line, PageRoom.BODY));
        room.paragraph(job, PageRoom.BODY);
        room.row("", PageRoom.BODY, 1).take(TABLE);
        FiveNumbers.all(result, new Style(false, paper.units())).forEach(line -> room.row(line.says(), LARGE, NUMBERS));
        room.figure(figure.height(paper)).paragraph(legend, PageRoom.CAPTION);
        room.boxed(List.of(CAUTION), PageRoom.BODY, CAUTION_BOX).take(kept).listed();
        while (shownItems < items.size() && (room.fits(items.get(shownItems)) || shownItems == 0)) {
            shownItems++;
        }
        if (shownItems < items.size()) {
            return;
        }
        if (!mistakes.isEmpty()) {
            room.listed();
            while (shownMistakes < mistakes.size() && room.fits(mistakes.get(shownMistakes))) {
                shownMistakes++;
            }
        }
        shownMissing = shownMissing || room.listed().fits(String.join("; ", missing));
        shownAbout = about != null && room.has(about, PageRoom.CAPTION);
    }
}
