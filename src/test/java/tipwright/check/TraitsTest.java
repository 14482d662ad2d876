// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Sense;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;

/** What checks tell of themselves is so. */
class TraitsTest {
    private static final Design BOX = Examples.read(Examples.BOX + "frame: {cross-member: {at: [-600 mm, -500 mm],"
            + " height: 100 mm, width: 100 mm, wall: 5 mm, z: [-600 mm, 600 mm], modulus: 200 GPa}}\n");

    @Test
    void idsAreUniqueAndNoneIsTheStartOfAnother() {
        Set<String> ids = new HashSet<>();
        for (Check check : Checks.all()) {
            assertThat(ids.add(check.id())).as(check.id()).isTrue();
        }
        assertThat(ids).noneMatch(id -> id.contains("/"));
    }

    @Test
    void whatBoundsMountsHasWordsForAMap() {
        for (Check check : Checks.all()) {
            assertThat(check.bound(check.id()).isEmpty())
                    .as(check.id())
                    .isNotEqualTo(check.traits().contains(Trait.BOUNDS_MOUNTS));
        }
    }

    @Test
    void whatNeedsTimeFindsNothingWithoutIt() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(BOX);
        for (Check check : Checks.with(Trait.NEEDS_TIME)) {
            assertThat(check.run(analysis)).as(check.id()).isEmpty();
        }
    }

    /** The window shows at once what no check with one of these traits will find otherwise later. */
    @Test
    void whatLooksAtTheDumpInTimeSaysSo() {
        Set<Trait> said = Set.of(Trait.NEEDS_TIME, Trait.BETTER_IN_TIME, Trait.MORE_IN_TIME);
        for (Check check : Checks.all()) {
            boolean looks = Stream.of(check.getClass().getDeclaredMethods())
                    .anyMatch(m -> m.getName().equals("run") && m.getParameterCount() == 2);
            assertThat(check.traits().stream().anyMatch(said::contains))
                    .as(check.id())
                    .isEqualTo(looks);
        }
    }

    /** A check that is left out of the search for the fullest tank must not depend on how full it is. */
    @Test
    void whatDoesNotDependOnTheFillStaysAsItIs() throws CannotComputeException {
        Analysis full = Analyser.analyse(BOX.withSlurry(BOX.slurry().withFill(0.9)));
        Analysis half = Analyser.analyse(BOX.withSlurry(BOX.slurry().withFill(0.4)));
        for (Check check :
                List.of(Checks.all().get(0), Checks.all().get(1), Checks.all().get(6))) {
            assertThat(check.traits()).as(check.id()).doesNotContain(Trait.DEPENDS_ON_FILL);
            assertThat(check.run(full)).as(check.id()).isEqualTo(check.run(half));
        }
    }

    /** Demand and capacity may stand either way round; what is needed and what is there may not. */
    @Test
    void whatPassesHasWhatItNeeds() throws CannotComputeException {
        for (Finding f : Checker.findings(BOX)) {
            if (f.verdict() == Verdict.PASS && f.byRatio()) {
                assertThat(f.needs()).as(f.id()).isLessThanOrEqualTo(f.has());
            }
            if (f.sense() == Sense.AT_LEAST && f.utilisation() <= 1) {
                assertThat(f.needs() / f.has()).as(f.id()).isCloseTo(f.utilisation(), within(1e-12));
                assertThat(f.needs()).as(f.id()).isEqualTo(f.capacity());
            }
        }
    }
}
