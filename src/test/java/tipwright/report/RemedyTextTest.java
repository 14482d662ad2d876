// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.quantity.UnitSystem;

/** What is told to mend a check does mend it. */
class RemedyTextTest {
    private static Finding find(Design design, String id) throws CannotComputeException {
        return Checker.findings(design).stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static String mend(Design design, String id) throws CannotComputeException {
        return RemedyText.of(find(design, id), design.limits(), UnitSystem.METRIC);
    }

    private static Design box(String actuator) {
        return Examples.read(swap(Examples.BOX, "closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN", actuator));
    }

    @Test
    void theForceThatIsToldIsWellWithinTheLimit() throws CannotComputeException {
        Design weak = box("closed: 800 mm, stroke: 900 mm, push: 2 kN, pull: 12 kN");
        String told = mend(weak, "push");
        assertThat(told).startsWith("Fix: a stronger actuator (").contains(" in place of 2 kN");
        String force = told.substring(told.indexOf('(') + 1, told.indexOf(" kN"));
        Design mended =
                box("closed: 800 mm, stroke: 900 mm, push: " + 1.001 * Double.parseDouble(force) + " kN, pull: 12 kN");
        assertThat(find(mended, "push").verdict()).isEqualTo(Verdict.PASS);
        assertThat(mend(mended, "push")).isEmpty();
    }

    @Test
    void theStrokeThatIsToldIsEnough() throws CannotComputeException {
        Design shortOne = box("closed: 800 mm, stroke: 60 mm, push: 12 kN, pull: 12 kN");
        String told = mend(shortOne, "stroke/drawn-out");
        assertThat(told).startsWith("Fix: an actuator with ").contains(" mm more stroke");
        double more = Double.parseDouble(told.substring("Fix: an actuator with ".length(), told.indexOf(" mm more")));
        Design mended = box("closed: 800 mm, stroke: " + (60 + more + 0.2) + " mm, push: 12 kN, pull: 12 kN");
        assertThat(find(mended, "stroke/drawn-out").verdict()).isNotEqualTo(Verdict.FAIL);
    }

    @Test
    void everyCheckThatFailsOrIsCloseInTheShippedDesignsHasItsAdvice() throws CannotComputeException {
        for (String name : List.of("too-small", "twin-rams", "lime-barrel", "rail-pusher", "grit-hopper")) {
            Design design = ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
            for (Finding f : Checker.findings(design)) {
                boolean bad = f.verdict() == Verdict.FAIL || f.verdict() == Verdict.CLOSE;
                String told = RemedyText.of(f, design.limits(), UnitSystem.METRIC);
                assertThat(told.isEmpty()).as(name + " " + f.id()).isEqualTo(!bad);
                if (f.utilisation() < 0.5) {
                    assertThat(told)
                            .as("nothing that is strong enough is called too weak")
                            .doesNotContain(" in place of ");
                }
            }
        }
    }

    /** A cake that comes down at once is a load, not a part that slides. */
    @Test
    void aCakeThatSlidesAtOnceIsHeldOrLoosened() throws CannotComputeException {
        Design design = Examples.read(
                swap(Examples.BOX, "c0: 19 kN", "c0: 2 kN", "repose: 30 deg", "repose: 30 deg, release: 35 deg")
                        + "dump: {cake: one-slide}\n");
        List<Finding> slides = Checker.findings(design).stream()
                .filter(f -> f.id().startsWith("slide") && f.verdict() == Verdict.FAIL)
                .toList();
        assertThat(slides).isNotEmpty().allSatisfy(f -> assertThat(RemedyText.of(f, design.limits(), UnitSystem.METRIC))
                .contains("bigger bearings", "wash the cake loose"));
    }
}
