// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;

/** What the power pack's own relief valve, its motor and its valves mean for the cylinders. */
class PumpReliefTest {
    private static final String ELECTRIC = "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}";
    private static final String AREA_60 = "{kind: hydraulic, bore: 60 mm, rod: {diameter: 35 mm}, closed: 800 mm,"
            + " stroke: 1200 mm, relief-pressure: 180 bar, efficiency: 100 %%, acting: %s}";

    private static String oil(String acting, String supply) {
        return swap(Examples.BOX, ELECTRIC, AREA_60.formatted(acting), "80 deg", "25 deg", "c0: 19", "c0: 90")
                + "supply: {kind: pump, " + supply + "}\n";
    }

    private static List<Finding> findings(String yaml, String check) throws CannotComputeException {
        return Checker.findings(Examples.read(yaml)).stream()
                .filter(f -> f.id().equals(check) || f.id().startsWith(check + "/"))
                .toList();
    }

    /** Push p A and pull p (A - a) at the lower of the two settings. Source: F = p A. */
    @Test
    void theLowerReliefSettingIsWhatTheCylinderCanDo() throws CannotComputeException {
        String weak = oil("double", "flow: 6 L/min, relief: 20 bar");
        double bore = Math.PI * 0.060 * 0.060 / 4;
        double ring = bore - Math.PI * 0.035 * 0.035 / 4;
        assertThat(findings(weak, "push").get(0).capacity()).isCloseTo(20e5 * bore, within(1e-6));
        assertThat(findings(weak, "pull").get(0).capacity()).isCloseTo(20e5 * ring, within(1e-6));
        String strong = oil("double", "flow: 6 L/min, relief: 250 bar");
        assertThat(findings(strong, "push").get(0).capacity()).isCloseTo(180e5 * bore, within(1e-6));
    }

    /** What stalls the drive bounds the fill too. */
    @Test
    void aWeakPumpDoesNotLiftAFullTank() throws CannotComputeException {
        Design weak = Examples.read(oil("double", "flow: 6 L/min, relief: 20 bar") + "what-if: {lock-valve: yes}\n");
        Result result = Checker.check(weak);
        assertThat(result.findings()).anyMatch(f -> f.id().startsWith("stall") && f.verdict() == Verdict.FAIL);
        assertThat(Objects.requireNonNull(result.howFull()).fill()).isLessThan(0.8);
        // rain on top of less slurry stalls the pump before the slurry alone does
        assertThat(result.howFull().limit()).isEqualTo("Full of rainwater: Actuator: push");
    }

    @Test
    void aSingleActingCylinderComesBackThroughItsThrottle() throws CannotComputeException {
        String single = oil("single", "flow: 6 L/min, orifice: {diameter: 3 mm}");
        assertThat(findings(single, "hydraulic/lowering")).isEmpty();
        String twice = oil("double", "flow: 6 L/min, orifice: {diameter: 3 mm}");
        assertThat(findings(twice, "hydraulic/lowering")).hasSize(1);
    }

    /** A telescopic cylinder's pump has a motor, a valve and a relief setting like any other. */
    @Test
    void aTelescopicCylindersPumpIsCheckedToo() throws IOException, CannotComputeException {
        String tub = swap(
                Files.readString(Path.of("geometry", "stage-tub.yaml")),
                "motor-power: 2.2 kW, valve-flow: 30 L/min",
                "motor-power: 1 W, valve-flow: 0.1 L/min");
        List<Finding> found = findings(tub, "hydraulic");
        assertThat(found.stream().map(Finding::id))
                .containsExactly("hydraulic/pressure", "hydraulic/motor", "hydraulic/valve");
        assertThat(found.get(0).verdict()).isEqualTo(Verdict.PASS);
        assertThat(found.get(1).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(found.get(2).verdict()).isEqualTo(Verdict.FAIL);
    }
}
