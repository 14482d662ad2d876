// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.clearance.Clearance.Gap;

/** What is left out because it is further off, against all pairs with nothing left out. */
class NearestTest {
    private static final int EACH = 2;
    private static final double TOLD_APART = 0.03e-3;

    @ParameterizedTest
    @ValueSource(strings = {"crank-cart", "six-link", "yard-tub", "too-small"})
    void theNearestOfAll(String name) throws CannotComputeException {
        Analysis analysis = GapSearchTest.everyFive(name);
        double wanted = analysis.design().limits().clearance();
        Map<String, List<Gap>> all = Clearance.of(analysis).stream().collect(Collectors.groupingBy(Gap::moving));
        Map<String, List<Gap>> near = Clearance.nearest(analysis, EACH).stream()
                .flatMap(some -> some.get().stream())
                .collect(Collectors.groupingBy(Gap::moving));
        assertThat(near.keySet()).isEqualTo(all.keySet());
        int left = 0;
        for (String mover : all.keySet()) {
            List<Gap> of = all.get(mover);
            List<Gap> found = near.get(mover);
            assertThat(found)
                    .filteredOn(g -> tight(g, wanted))
                    .isEqualTo(of.stream().filter(g -> tight(g, wanted)).toList());
            List<Gap> ofFree = free(of, wanted);
            List<Gap> foundFree = free(found, wanted);
            assertThat(foundFree).hasSizeGreaterThanOrEqualTo(Math.min(EACH, ofFree.size()));
            for (int i = 0; i < Math.min(EACH, ofFree.size()); i++) {
                assertThat(foundFree.get(i).gap()).isCloseTo(ofFree.get(i).gap(), within(TOLD_APART));
            }
            left += of.size() - found.size();
        }
        assertThat(left).as("pairs left out").isPositive();
    }

    private static boolean tight(Gap gap, double wanted) {
        return gap.rest() || gap.gap() < wanted;
    }

    private static List<Gap> free(List<Gap> gaps, double wanted) {
        return gaps.stream()
                .filter(g -> !tight(g, wanted))
                .sorted(Comparator.comparingDouble(Gap::gap))
                .toList();
    }
}
