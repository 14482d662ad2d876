// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.geometry.Vec2;

/** What a map with gaps allows, the whole check allows: at places anywhere in the cells, not only where the map looked. */
class PlacementMapTest {
    private static final int WANTED = 12;
    private static final int FEW = 2;
    /** Used so much in the worst corner of a cell, a limit is passed all over it. */
    private static final double FAR = 1.5;

    /** Seeded places in allowed cells, each checked in full; what fails with the pin as drawn in the very same way does not count. */
    @ParameterizedTest
    @CsvSource({"saw-skid, frame-pin, 20, 1", "crank-cart, crank-pivot, 12, 2"})
    void noPlaceThatTheMapAllowsFails(String name, String place, int across, long seed) throws CannotComputeException {
        Design design = ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
        PlacementMap map = PlacementMap.whole(design, place, across);
        Map<String, Finding> drawn = new HashMap<>();
        Checker.findings(design).forEach(f -> drawn.put(f.id(), f));
        SplittableRandom random = new SplittableRandom(seed);
        int rows = map.utilisation().length;
        int columns = map.utilisation()[0].length;
        int looked = 0;
        int not = 0;
        int told = 0;
        for (int i = 0; i < 4000 && looked < WANTED; i++) {
            double x = random.nextDouble() * columns;
            double y = random.nextDouble() * rows;
            Vec2 at = map.low().plus(new Vec2(x * map.cell(), y * map.cell()));
            boolean inside = PinRegion.inside(map.zone(), at)
                    && map.keepOuts().stream().noneMatch(k -> PinRegion.inside(k.outline(), at));
            if (!inside) {
                continue;
            }
            if (!map.fits((int) y, (int) x)) {
                not++;
                if (map.utilisation()[(int) y][(int) x] > FAR && told++ < FEW) {
                    assertThat(PlacementMap.works(design, place, at))
                            .as("well outside, at " + at)
                            .isFalse();
                }
                continue;
            }
            looked++;
            if (looked <= FEW) {
                assertThat(PlacementMap.works(design, place, at)).as("at " + at).isTrue();
            }
            Design moved = PlacedPoint.moved(
                    design,
                    List.of(new PlacedPoint(place, map.drawn(), at)),
                    design.drive().actuators().get(0).actuator());
            assertThat(Checker.findings(moved).stream()
                            .filter(f -> f.verdict() == Verdict.FAIL)
                            .filter(f -> !same(drawn.get(f.id()), f))
                            .map(Finding::id))
                    .as(name + ": " + place + " at " + at)
                    .isEmpty();
        }
        assertThat(looked).isGreaterThanOrEqualTo(5);
        assertThat(not).as("places that do not work").isPositive();
    }

    private static boolean same(@Nullable Finding drawn, Finding there) {
        return drawn != null && drawn.verdict() == Verdict.FAIL && Rechecker.same(drawn, there);
    }

    /** What fails takes its cells away, and nothing else does: a disc of which the corners are known. */
    @Test
    void cellsOnTheEdgeAreJudgedInTheirCorners() {
        boolean[][] all = new boolean[20][30];
        for (boolean[] row : all) {
            java.util.Arrays.fill(row, true);
        }
        AllowedCells cells = new AllowedCells(all);
        int[] asked = new int[1];
        cells.quick(c -> c.column() <= 24);
        cells.edge(c -> {
            synchronized (asked) {
                asked[0]++;
            }
            return Math.hypot(c.column() - 12, c.row() - 10) <= 8;
        });
        for (int r = 0; r < 20; r++) {
            for (int c = 0; c < 30; c++) {
                boolean good = true;
                for (int k = 0; k < 4; k++) {
                    good &= Math.hypot(c + k % 2 - 12, r + k / 2 - 10) <= 8;
                }
                assertThat(cells.barred()[r][c]).as(r + ", " + c).isEqualTo(!good);
            }
        }
        assertThat(asked[0]).as("each corner once at most").isLessThan(21 * 31);
    }
}
