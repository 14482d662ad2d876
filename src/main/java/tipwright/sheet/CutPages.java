// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.cut.BoughtList;
import tipwright.sheet.cut.BoughtPart;
import tipwright.sheet.cut.CutList;
import tipwright.sheet.cut.CutPiece;
import tipwright.sheet.cut.FeedList;
import tipwright.sheet.cut.Nesting;
import tipwright.sheet.cut.PlateCut;

/** What to cut, out of which stock, and what to buy. */
final class CutPages {
    private final Pager pager;
    private final Design design;
    private final CutList list;
    private final UnitSystem units;

    CutPages(Pager pager, Design design, CutList list, UnitSystem units) {
        this.pager = pager;
        this.design = design;
        this.list = list;
        this.units = units;
    }

    void all() {
        pager.page(design.name() + ": to cut and to buy");
        plates();
        pieces();
        nesting();
        list.open().forEach(t -> pager.line(t.show(units)));
        bought();
    }

    private String size(double m) {
        return Text.size(m).show(units);
    }

    private String mass(double kg) {
        return Double.isNaN(kg) ? "-" : Quantities.rough(kg, Kind.MASS, units);
    }

    private void plates() {
        if (list.plates().isEmpty()) {
            return;
        }
        pager.heading("Plates");
        List<String[]> rows = new ArrayList<>();
        TreeMap<Double, Double> area = new TreeMap<>();
        for (PlateCut cut : list.plates()) {
            Vec2 box = cut.plate().high().minus(cut.plate().low());
            double thick = cut.plate().thickness();
            rows.add(new String[] {
                cut.name() + (cut.proposed() ? " (proposal)" : ""),
                Double.isNaN(thick) ? "not given" : size(thick),
                Marks.bare(box.x(), units) + " x " + Marks.show(box.y(), units),
                Integer.toString(cut.plate().holes().size()),
                Integer.toString(cut.count()),
                mass(cut.plate().mass())
            });
            if (!Double.isNaN(thick)) {
                area.merge(thick, box.x() * box.y() * cut.count(), Double::sum);
            }
        }
        pager.table("lrrrrr", new String[] {"", "thick", "out of", "holes", "cut", "each"}, rows);
        List<String> sheets = new ArrayList<>();
        area.forEach((t, a) -> sheets.add(size(t) + " thick: " + Quantities.rough(a, Kind.AREA, units)));
        if (!sheets.isEmpty()) {
            pager.line("Boxes around them in all, " + String.join("; ", sheets) + ". All plates together "
                    + mass(list.plateMass())
                    + ". 'tipwright sheet --cut FILE.dxf' writes their outlines for the cutter.");
        }
    }

    private void pieces() {
        if (list.pieces().isEmpty()) {
            return;
        }
        pager.heading("Sections and round bar");
        List<String[]> rows = new ArrayList<>();
        for (CutPiece p : list.pieces()) {
            rows.add(new String[] {
                p.name(),
                p.section().show(units),
                Double.isNaN(p.length()) ? "to suit" : Marks.show(p.length(), units),
                mitres(p),
                Integer.toString(p.count()),
                mass(p.mass()),
                p.note().show(units)
            });
        }
        pager.table("llrlrrl", new String[] {"", "", "length", "ends off square", "cut", "each", ""}, rows);
        pager.line("Lengths are over the longest edge. Those whose wall is known weigh " + mass(list.pieceMass())
                + " together; '-': the design does not tell. Pins are long enough for what they grip and, beyond it, 1.5 times their diameter"
                + " for washers and split pins.");
    }

    private static String mitres(CutPiece p) {
        boolean square = p.mitres().stream().allMatch(m -> m < Math.toRadians(0.05));
        return square
                ? "square"
                : Text.degrees(p.mitres().get(0), 1).metric() + ", "
                        + Text.degrees(p.mitres().get(1), 1).metric();
    }

    private void nesting() {
        Nesting nesting = list.nesting();
        if (nesting.bars().isEmpty() && nesting.longer().isEmpty()) {
            return;
        }
        pager.heading("Out of stock lengths of " + Marks.show(nesting.stock(), units));
        List<String[]> rows = new ArrayList<>();
        for (Nesting.Group group : nesting.bars()) {
            int n = 0;
            for (List<Double> bar : group.bars()) {
                n++;
                rows.add(new String[] {
                    n == 1 ? group.section().show(units) : "",
                    Integer.toString(n),
                    String.join(
                            ", ", bar.stream().map(d -> Marks.bare(d, units)).toList()),
                    Marks.show(nesting.left(bar, units), units),
                    n == 1 ? Math.round(100 * nesting.waste(group)) + " %" : ""
                });
            }
        }
        pager.table("lrlrr", new String[] {"", "bar", "lengths out of it", "left over", "not used"}, rows);
        for (CutPiece p : nesting.longer()) {
            pager.line("The " + p.name() + " is longer than the stock: order " + Marks.show(p.length(), units) + ".");
        }
        pager.line("By first-fit decreasing: the longest first, each into the first bar that has room; "
                + (units == UnitSystem.METRIC ? "3 mm" : "1/8 in")
                + " for each saw cut. Your yard's lengths may differ.");
    }

    private void bought() {
        pager.heading("To buy");
        table(BoughtList.of(design));
        pager.heading("What feeds it");
        table(FeedList.of(design));
    }

    private void table(List<BoughtPart> parts) {
        List<String[]> rows = new ArrayList<>();
        for (BoughtPart p : parts) {
            rows.add(new String[] {
                Integer.toString(p.count()), p.name(), p.figures().show(units)
            });
        }
        pager.table("rll", new String[] {"", "", ""}, rows);
    }
}
