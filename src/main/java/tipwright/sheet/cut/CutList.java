// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.bracket.Brackets;

/**
 * All that is cut for a machine.
 *
 * @param plates by their shape
 * @param pieces sections and round bar by their length
 * @param nesting how the pieces come out of stock lengths
 * @param open what cannot be cut by this list, a sentence each
 */
public record CutList(List<PlateCut> plates, List<CutPiece> pieces, Nesting nesting, List<Text> open) {
    /** Copies the lists. */
    public CutList {
        plates = List.copyOf(plates);
        pieces = List.copyOf(pieces);
        open = List.copyOf(open);
    }

    /** Of a machine with its brackets. */
    public static CutList of(Analysis analysis, Brackets brackets, UnitSystem units) {
        List<PlateCut> plates = new ArrayList<>();
        brackets.all().forEach(b -> plates.add(new PlateCut(b.name(), b.plate(), b.count(), b.proposed())));
        List<Text> open = new ArrayList<>();
        List<CutPiece> pieces = new ArrayList<>();
        LinkCuts links = new LinkCuts(analysis, brackets.design());
        links.plates(plates);
        new FrameCuts(analysis.design()).to(pieces, open);
        links.bars(pieces, open);
        new SteelCuts(analysis.design()).to(pieces, plates);
        RoundCuts.to(analysis, brackets.design(), pieces);
        return new CutList(plates, pieces, Nesting.of(pieces, units), open);
    }

    /** Of all plates whose thickness is known, kg. */
    public double plateMass() {
        return plates.stream()
                .mapToDouble(p -> p.plate().mass() * p.count())
                .filter(m -> !Double.isNaN(m))
                .sum();
    }

    /** Of all pieces whose section is known, kg. */
    public double pieceMass() {
        return pieces.stream()
                .mapToDouble(p -> p.mass() * p.count())
                .filter(m -> !Double.isNaN(m))
                .sum();
    }
}
