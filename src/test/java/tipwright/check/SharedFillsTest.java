// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletionException;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.design.Design;

/** Fills that two threads look at together: each once, and what goes wrong comes out where the findings are asked for. */
class SharedFillsTest {
    private static final String PIN = "frame-pin: [-600 mm, -500 mm]";
    private static Analysis stated;

    @BeforeAll
    static void analyse() throws CannotComputeException {
        stated = Analyser.analyse(Examples.read(Examples.BOX));
    }

    /** A rule that tells how full the tank was, after something else. */
    private static Check told(Consumer<Double> first) {
        return new MadeUpCheck("told", Set.of(), analysis -> {
            double fill = analysis.design().slurry().fill();
            first.accept(fill);
            return List.of(new Findings(new MadeUpCheck("told", Set.of(), a -> List.of()), analysis.design())
                    .cannot("", "filled " + fill));
        });
    }

    private static SharedFills fills(Design rough, Consumer<Double> first) {
        return new SharedFills(stated, rough, List.of(told(first)), List.of(0.0, 0.25, 1.0));
    }

    private static List<String> notes(List<List<Finding>> found) {
        return found.stream().map(f -> f.get(0).note().metric()).toList();
    }

    @Test
    void eachFillIsLookedAtOnceWhoeverDoesIt() throws CannotComputeException {
        List<Double> seen = new ArrayList<>();
        SharedFills alone = fills(stated.design(), seen::add);
        List<String> expected = List.of("filled 0.0", "filled 0.25", "filled 1.0");
        assertThat(notes(alone.findings(alone.conditions()))).isEqualTo(expected);
        alone.help();
        assertThat(seen).containsExactly(0.0, 0.25, 1.0);
        SharedFills helped = fills(stated.design(), seen::add);
        helped.help();
        assertThat(seen).hasSize(6);
        assertThat(notes(helped.findings(helped.conditions()))).isEqualTo(expected);
        assertThat(seen).hasSize(6);
        assertThat(helped.rough()).isSameAs(stated.design());
    }

    @Test
    void whatGoesWrongComesOutWhereTheFindingsAreAskedFor() throws CannotComputeException {
        IllegalArgumentException wrong = new IllegalArgumentException("wrong");
        SharedFills faulty = fills(stated.design(), fill -> {
            throw wrong;
        });
        faulty.help();
        assertThatThrownBy(() -> faulty.findings(faulty.conditions())).isSameAs(wrong);
        StackOverflowError deep = new StackOverflowError("deep");
        SharedFills error = fills(stated.design(), fill -> {
            throw deep;
        });
        error.help();
        assertThatThrownBy(() -> error.findings(error.conditions()))
                .isInstanceOf(CompletionException.class)
                .hasCause(deep);
    }

    /** An arm of 10 mm about the pivot is less than what friction takes at a bore of 40 mm: 0.9 times 20 mm. */
    @Test
    void aFillThatCannotBeComputedIsToldAsSuch() throws CannotComputeException {
        Design locked = Examples.read(
                swap(Examples.BOX, PIN, "frame-pin: [-1300 mm, 389 mm]") + "friction: {pivot: 0.9, pins: 0}\n");
        SharedFills fills = fills(locked, fill -> {});
        fills.help();
        assertThatThrownBy(() -> fills.findings(fills.conditions()))
                .isInstanceOf(CannotComputeException.class)
                .hasMessageContaining("friction alone locks the linkage at 0.00 deg of tilt");
    }

    /** Pivot and both pins in one line: who helps goes away without a word, who asks is told. */
    @Test
    void aMachineThatCannotBeComputedIsToldToWhoAsks() {
        Design dead = Examples.read(swap(Examples.BOX, PIN, "frame-pin: [-1300 mm, 400 mm]"));
        SharedFills fills = fills(dead, fill -> {});
        fills.help();
        assertThatThrownBy(fills::conditions)
                .isInstanceOf(CannotComputeException.class)
                .hasMessageContaining("dead centre at 0.00 deg of tilt");
    }
}
