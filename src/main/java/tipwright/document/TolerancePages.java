// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.around.Mounts;
import tipwright.doubt.SampledShare;
import tipwright.placement.OtherChecks;
import tipwright.placement.Tolerance;
import tipwright.placement.Welder;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.report.ToleranceText;

/** What welds that are off do. */
final class TolerancePages {
    /** Ways with the pins off in which the slower checks are made too; 'tolerance' makes them in more. */
    private static final int WORST = 8;

    private static final double USUAL = 0.005;
    private static final long SEED = 1;
    private static final double MOST = 9.99;
    /** Of an inch, m. */
    private static final double THOUSANDTH = 0.0254e-3;

    private final Design design;
    private final UnitSystem units;
    private final CompletableFuture<Worked> worked;

    /** Begins to work the tolerance out beside whatever else goes on. */
    TolerancePages(Design design, UnitSystem units) {
        this.design = design;
        this.units = units;
        this.worked = CompletableFuture.supplyAsync(() -> work(design));
    }

    /** What came of it, or why nothing did. */
    private record Worked(@Nullable Tolerance tolerance, @Nullable OtherChecks others, String why) {}

    private static Worked work(Design design) {
        Mounts mounts = design.mounts();
        double by = mounts == null ? USUAL : mounts.wants().weld();
        try {
            Welder welder = new Welder(design);
            Tolerance tolerance = welder.tolerance(by, welder.usualRuns(), SEED);
            return new Worked(tolerance, welder.others(WORST), "");
        } catch (CannotComputeException e) {
            return new Worked(null, null, String.valueOf(e.getMessage()));
        }
    }

    void to(Markup page) {
        Worked done = worked.join();
        if (done.tolerance() == null || done.others() == null) {
            page.line("p", "Not worked out: " + done.why() + ".");
        } else {
            tell(page, done.tolerance(), done.others());
        }
    }

    private void tell(Markup page, Tolerance t, OtherChecks others) {
        List<String> words = new ArrayList<>();
        words.add("As in the file, the check closest to failing is used to " + percent(t.utilisation()) + ": "
                + t.governing().words() + ".");
        words.add("With all pins off by up to " + length(t.tolerance())
                + " the worst way, " + percent(t.worstCorner()) + " is used: "
                + t.cornerLimit().words() + ".");
        words.add("The chance that a check fails is " + percent(t.chance()) + ", in " + t.runs() + " tries ("
                + SampledShare.of(t.chance(), t.runs()).words() + ").");
        words.add(
                t.largest() > 0
                        ? "Keep every pin within " + length(t.largest())
                                + " of its place and every one of these checks still passes."
                        : "It fails even when every pin is exactly in place.");
        if (!design.drive().direct()) {
            words.add(ToleranceText.LINKS);
        }
        ToleranceText.others(others).forEach(o -> words.add(Text.capital(o) + "."));
        words.add("Looked at: " + ToleranceText.lookedAt(others) + ".");
        page.list(words);
        FixedTable grid = new FixedTable(
                "Which dimension matters most, largest first",
                FixedTable.Column.text("figure", 40),
                FixedTable.Column.number("off by", 20),
                FixedTable.Column.number("used, lower", 20),
                FixedTable.Column.number("used, higher", 20));
        for (Tolerance.Swing s : t.swings()) {
            String size = s.place() ? length(s.size()) : Math.round(100 * s.size()) + " %";
            grid.row(s.name(), size, percent(s.low()), percent(s.high()));
        }
        grid.to(page);
    }

    private String length(double si) {
        double step = units == UnitSystem.METRIC ? 1e-4 : THOUSANDTH;
        double rounded = Math.rint(si / step) * step;
        return Quantities.show(rounded, Kind.LENGTH, units);
    }

    private static String percent(double share) {
        return share > MOST ? ">999 %" : Math.round(1000 * share) / 10.0 + " %";
    }
}
