// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tipwright.geometry.Vec2;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** Pieces out of stock lengths, and sections out of outlines. */
class NestingTest {
    private static CutPiece piece(String section, double length, int count) {
        return CutPiece.square("part", Text.words(section), length, count, 1, Text.NONE);
    }

    /** By hand, 3 mm for each cut: 3.5 and 2.4 share a bar (5.906), 3.1 and 2.8 the next (5.906), 0.09 goes into the first (5.999). */
    @Test
    void longestFirstIntoTheFirstBarWithRoom() {
        Nesting nesting = Nesting.of(
                List.of(
                        piece("a", 2.4, 1),
                        piece("a", 3.5, 1),
                        piece("a", 0.09, 1),
                        piece("a", 2.8, 1),
                        piece("a", 3.1, 1),
                        piece("b", 7, 1)),
                UnitSystem.METRIC);
        assertThat(nesting.bars()).hasSize(1);
        Nesting.Group group = nesting.bars().get(0);
        assertThat(group.bars()).containsExactly(List.of(3.5, 2.4, 0.09), List.of(3.1, 2.8));
        assertThat(nesting.left(group.bars().get(0), UnitSystem.METRIC)).isCloseTo(0.001, within(1e-9));
        assertThat(nesting.waste(group)).isCloseTo(1 - 11.89 / 12, within(1e-9));
        assertThat(nesting.longer()).hasSize(1);
    }

    /** Nothing is lost, no bar is overfull, and no more bars than 11/9 of the least that the lengths need and one (Johnson 1973, from memory). */
    @Test
    void everyPieceComesOutOfABar() {
        SplittableRandom random = new SplittableRandom(5);
        for (int run = 0; run < 200; run++) {
            List<CutPiece> pieces = new ArrayList<>();
            double sum = 0;
            for (int i = 0; i < 12; i++) {
                CutPiece p = piece("s", random.nextDouble(0.05, 5.9), random.nextInt(1, 4));
                pieces.add(p);
                sum += (p.length() + Nesting.KERF_METRIC) * p.count();
            }
            Nesting nesting = Nesting.of(pieces, UnitSystem.METRIC);
            Nesting.Group group = nesting.bars().get(0);
            List<Double> all =
                    group.bars().stream().flatMap(List::stream).sorted().toList();
            List<Double> meant = pieces.stream()
                    .flatMap(p -> Collections.nCopies(p.count(), p.length()).stream())
                    .sorted()
                    .toList();
            assertThat(all).isEqualTo(meant);
            assertThat(group.bars()).allMatch(b -> nesting.left(b, UnitSystem.METRIC) >= -1e-9);
            long halves = meant.stream().filter(d -> d > 3).count();
            double least = Math.max(Math.ceil(sum / 6), halves);
            assertThat(group.bars().size()).isBetween((int) least, (int) Math.ceil(2 * sum / 6) + 1);
        }
    }

    /** 1 m long over the top, 100 deep, one end cut at 45 deg (100 mm shorter below), the other square. */
    @Test
    void mitresOfAnOutline() {
        SectionShape shape =
                SectionShape.of(List.of(new Vec2(0.1, 0), new Vec2(1, 0), new Vec2(1, 0.1), new Vec2(0, 0.1)));
        assertThat(shape).isNotNull();
        assertThat(shape.length()).isCloseTo(1, within(1e-12));
        assertThat(shape.depth()).isCloseTo(0.1, within(1e-12));
        assertThat(Math.toDegrees(shape.mitres().get(0))).isCloseTo(45, within(1e-9));
        assertThat(shape.mitres().get(1)).isCloseTo(0, within(1e-12));
        assertThat(SectionShape.of(List.of(new Vec2(0, 0), new Vec2(1, 0), new Vec2(0.5, 1))))
                .isNull();
        assertThat(SectionShape.of(List.of(new Vec2(0, 0), new Vec2(1, 0), new Vec2(0.9, 0.5), new Vec2(0, 0.3))))
                .isNull();
    }
}
