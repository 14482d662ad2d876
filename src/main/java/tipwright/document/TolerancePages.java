// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.Mounts;
import tipwright.placement.Tolerance;
import tipwright.placement.Welder;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/** What welds that are off do. */
final class TolerancePages {
    private static final double USUAL = 0.005;
    private static final int RUNS = 2000;
    private static final long SEED = 1;

    private final Design design;
    private final UnitSystem units;

    TolerancePages(Design design, UnitSystem units) {
        this.design = design;
        this.units = units;
    }

    void to(Markup page) {
        Mounts mounts = design.mounts();
        double by = mounts == null ? USUAL : mounts.wants().weld();
        try {
            tell(page, new Welder(design).tolerance(by, RUNS, SEED));
        } catch (CannotComputeException e) {
            page.line("p", "Not worked out: " + e.getMessage() + ".");
        }
    }

    private void tell(Markup page, Tolerance t) {
        List<String> words = new ArrayList<>();
        words.add("As drawn the fullest limit is used to " + percent(t.utilisation()) + ": "
                + t.governing().words() + ".");
        words.add("With every place of a mount off by up to " + length(t.tolerance())
                + " either way, the worst corner uses " + percent(t.worstCorner()) + ": "
                + t.cornerLimit().words() + ".");
        words.add("The chance that a limit is passed is " + percent(t.chance()) + ", in " + t.runs() + " runs.");
        words.add(
                t.largest() > 0
                        ? "Every limit is kept in every corner up to " + length(t.largest())
                                + " either way: weld to that."
                        : "It fails as drawn, however well it is welded.");
        page.list(words);
        Grid grid = new Grid(
                "What moves the fullest limit, largest first",
                Grid.Column.text("figure", 40),
                Grid.Column.number("off by", 20),
                Grid.Column.number("used, lower", 20),
                Grid.Column.number("used, higher", 20));
        for (Tolerance.Swing s : t.swings()) {
            String size = s.place() ? length(s.size()) : Math.round(100 * s.size()) + " %";
            grid.row(s.name(), size, percent(s.low()), percent(s.high()));
        }
        grid.to(page);
    }

    private String length(double si) {
        double rounded = Math.rint(si * 1e4) / 1e4;
        return Quantities.show(rounded, Kind.LENGTH, units);
    }

    private static String percent(double share) {
        return Math.round(1000 * share) / 10.0 + " %";
    }
}
