// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.drawing.Drawing;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.bracket.Bracket;
import tipwright.sheet.bracket.Brackets;
import tipwright.sheet.cut.CutList;

/** The weld sheet: the whole machine with its pins numbered, every place as a tape takes it, and each bracket at its true size. */
public final class WeldSheet {
    /** So many that fail are told by name. */
    private static final int FAILS = 6;
    /** The least change of what is used that shows in its last digit. */
    private static final double SEEN = 0.0005;

    private final Design design;
    private final Design rounded;
    private final Analysis analysis;
    private final Brackets brackets;
    private final UnitSystem units;
    private @Nullable List<Finding> found;

    private WeldSheet(Design design, UnitSystem units) throws CannotComputeException {
        this.design = design;
        this.units = units;
        rounded = rounded(design, units);
        analysis = Analyser.analyse(rounded);
        brackets = Brackets.of(analysis, units);
    }

    /** The design with its pins on the nearest marks of a tape. */
    public static Design rounded(Design design, UnitSystem units) {
        return design.withPivot(
                        design.pivot().movedTo(Lengths.rounded(design.pivot().at(), units)))
                .withDrive(design.drive().moved(p -> Lengths.rounded(p, units)));
    }

    /**
     * All pages.
     *
     * @param cautions a sentence each, for the last page
     * @throws CannotComputeException when the mechanism cannot be assembled
     */
    public static List<Drawing> pages(Design design, UnitSystem units, Paper paper, List<String> cautions)
            throws CannotComputeException {
        return of(design, units).pages(paper, cautions);
    }

    static WeldSheet of(Design design, UnitSystem units) throws CannotComputeException {
        return new WeldSheet(design, units);
    }

    Brackets brackets() {
        return brackets;
    }

    List<Drawing> pages(Paper paper, List<String> cautions) throws CannotComputeException {
        Pager pager = new Pager(design.name(), paper);
        assembly(pager);
        places(pager);
        BracketPages pages = new BracketPages(pager, design.name(), units);
        for (Bracket bracket : brackets.all()) {
            pages.page(bracket);
        }
        new CutPages(pager, brackets.design(), CutList.of(analysis, brackets, units), units).all();
        pages.open(brackets.open());
        new WorkPages(pager, analysis, units, cautions).all();
        return pager.pages();
    }

    /** The first page. */
    void assembly(Pager pager) throws CannotComputeException {
        pager.page(design.name() + ": assembly");
        pager.line(
                "Places from the datum, tank stowed: x towards the dump end, y up, z to the left seen from there; to the nearest "
                        + (units == UnitSystem.METRIC ? "1 mm." : "1/16 in."));
        pager.line(verdict());
        PlacePages places = new PlacePages(pager, analysis, design, brackets, units);
        pager.drawing(AssemblyView.of(
                analysis, brackets.all(), units, pager.width(), pager.left() - places.pinsHeight() - 2));
        places.pins();
    }

    private void places(Pager pager) throws CannotComputeException {
        pager.page(design.name() + ": places");
        PlacePages places = new PlacePages(pager, analysis, design, brackets, units);
        places.datum();
        places.edges();
        places.spans();
        places.tank();
        places.across();
        places.springs();
        places.rounding();
        effect(pager);
        places.stops();
    }

    /** Whether it is to be built at all. */
    private String verdict() throws CannotComputeException {
        List<String> fails = findings().stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .map(Finding::title)
                .toList();
        if (fails.isEmpty()) {
            return "Every check that could be made passes with these places.";
        }
        int more = fails.size() - FAILS;
        return "DO NOT BUILD IT YET: with these places it fails: "
                + String.join("; ", more > 0 ? fails.subList(0, FAILS) : fails)
                + (more > 0 ? "; and " + more + " more that 'tipwright check' tells." : ".");
    }

    /** What the checks find with the rounded places. */
    private List<Finding> findings() throws CannotComputeException {
        List<Finding> known = found;
        if (known == null) {
            known = Checker.findings(rounded);
            found = known;
        }
        return known;
    }

    private void effect(Pager pager) throws CannotComputeException {
        if (rounded.equals(design)) {
            return;
        }
        List<Finding> after = findings();
        List<Finding> before = Checker.findings(design);
        Finding worst = null;
        double most = 0;
        for (int i = 0; i < before.size() && i < after.size(); i++) {
            double change = Math.abs(after.get(i).utilisation() - before.get(i).utilisation());
            if (change > most) {
                most = change;
                worst = after.get(i);
            }
        }
        if (worst != null && most >= SEEN) {
            pager.heading("Effect of rounding");
            pager.line("Most changed: " + worst.title() + ", now " + Math.round(1000 * worst.utilisation()) / 10.0
                    + " % used (" + Math.round(1000 * most) / 10.0 + " points of change).");
        }
    }
}
