// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/**
 * How pieces come out of stock lengths: the longest first, each into the first bar that has room for it.
 *
 * <p>Source: first-fit decreasing, a textbook method for bin packing; it never takes more than 11/9 of the fewest bars and one
 * more (Johnson 1973, from memory).
 *
 * @param stock length of a bar as sold, m
 * @param bars by section, in the order of the pieces
 * @param longer pieces that no bar is long enough for
 */
public record Nesting(double stock, List<Group> bars, List<CutPiece> longer) {
    /** Of the saw, m; common practice, no source. */
    static final double KERF_METRIC = 0.003;

    static final double KERF_US = 0.0254 / 8;

    /** As most yards sell sections, m; common practice, no source. */
    private static final double STOCK_METRIC = 6;

    private static final double STOCK_US = 20 * 12 * 0.0254;

    /** Copies the lists. */
    public Nesting {
        bars = List.copyOf(bars);
        longer = List.copyOf(longer);
    }

    /**
     * The bars of one section.
     *
     * @param section what is bought
     * @param bars the lengths out of each bar, m, the longest first
     */
    public record Group(Text section, List<List<Double>> bars) {
        /** Copies the lists. */
        public Group {
            bars = List.copyOf(bars);
        }

        /** What comes out as pieces, m. */
        public double used() {
            return bars.stream().flatMap(List::stream).mapToDouble(d -> d).sum();
        }
    }

    /** What is left of a bar, m. */
    public double left(List<Double> bar, UnitSystem units) {
        return stock - taken(bar, kerf(units));
    }

    /** Share of what is bought of a section that does not come out as pieces. */
    public double waste(Group group) {
        return 1 - group.used() / (stock * group.bars().size());
    }

    static double kerf(UnitSystem units) {
        return units == UnitSystem.METRIC ? KERF_METRIC : KERF_US;
    }

    private static double taken(List<Double> bar, double kerf) {
        return bar.stream().mapToDouble(d -> d + kerf).sum();
    }

    /** Of pieces whose length is known. */
    static Nesting of(List<CutPiece> pieces, UnitSystem units) {
        double stock = units == UnitSystem.METRIC ? STOCK_METRIC : STOCK_US;
        double kerf = kerf(units);
        Map<Text, List<Double>> lengths = new LinkedHashMap<>();
        List<CutPiece> longer = new ArrayList<>();
        for (CutPiece piece : pieces) {
            if (piece.known() && piece.length() + kerf > stock) {
                longer.add(piece);
            } else if (piece.known()) {
                List<Double> of = lengths.computeIfAbsent(piece.section(), s -> new ArrayList<>());
                for (int i = 0; i < piece.count(); i++) {
                    of.add(piece.length());
                }
            }
        }
        List<Group> groups = new ArrayList<>();
        lengths.forEach((section, of) -> groups.add(new Group(section, firstFit(of, stock, kerf))));
        return new Nesting(stock, groups, longer);
    }

    private static List<List<Double>> firstFit(List<Double> lengths, double stock, double kerf) {
        List<List<Double>> bars = new ArrayList<>();
        for (double length : lengths.stream().sorted(Comparator.reverseOrder()).toList()) {
            List<Double> fits = bars.stream()
                    .filter(bar -> taken(bar, kerf) + length + kerf <= stock)
                    .findFirst()
                    .orElse(null);
            if (fits == null) {
                fits = new ArrayList<>();
                bars.add(fits);
            }
            fits.add(length);
        }
        return bars.stream().map(List::copyOf).toList();
    }
}
