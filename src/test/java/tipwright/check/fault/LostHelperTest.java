// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;

/** A spring that breaks leaves the machine as one that never had it. */
class LostHelperTest {
    private static final String GAS = "  - {kind: gas-spring, name: strut, from: {body: frame, at: [-700 mm, -300 mm]},"
            + " to: {body: tank, at: [-500 mm, 500 mm]}, extended: 2000 mm, stroke: 1600 mm, force: FORCE,"
            + " compressed-force: FORCE}\n";

    private static List<Finding> findings(String more) throws CannotComputeException {
        return Checker.findings(Examples.read(Examples.BOX + more));
    }

    private static Finding of(List<Finding> all, String id) {
        return all.stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
    }

    /** Springs of constant force, so the cold one is a spring of that much less. */
    private static String gas(String force) {
        return "assists:\n" + GAS.replace("FORCE", force);
    }

    @Test
    void theWorstOfTheOthersIsTold() throws CannotComputeException {
        List<Finding> without = findings("");
        List<Finding> with = findings(gas("3 kN"));
        Finding lost = of(with, "what-if/strut-breaks");
        double most = worst(without, with);
        assertThat(of(with, "push").utilisation())
                .isLessThan(of(without, "push").utilisation());
        assertThat(lost.utilisation()).isCloseTo(most, within(1e-9));
    }

    @Test
    void coldAndWornPressesLess() throws CannotComputeException {
        List<Finding> warm = findings(gas("3 kN") + "site: {temperature: -20 degC}\nwhat-if: {gas-lost: 10 %}\n");
        Finding cold = of(warm, "what-if/gas-springs-cold-and-worn");
        double left = 3000 * 253.15 / 293.15 * 0.9;
        double most = worst(findings(gas(left + " N")), warm);
        assertThat(cold.utilisation()).isCloseTo(most, within(1e-6));
    }

    /** The coldest day that it has to work on may be given by itself. Gay-Lussac's law. */
    @Test
    void coldDayMakesGasSpringsWeak() throws CannotComputeException {
        List<Finding> mild = findings(gas("3 kN") + "cold: {lowest: -15 degC}\nwhat-if: {gas-lost: 0 %}\n");
        double most = worst(findings(gas(3000 * 258.15 / 293.15 + " N")), mild);
        assertThat(of(mild, "what-if/gas-springs-cold-and-worn").utilisation()).isCloseTo(most, within(1e-6));
    }

    /** A new spring on the hottest day: more push by the absolute temperature, which turns the actuator's push into more pull. */
    @Test
    void hotAndNewPressesMore() throws CannotComputeException {
        List<Finding> mild = findings(gas("3 kN") + "site: {hottest: 60 degC}\nwhat-if: {gas-lost: 10 %}\n");
        Finding hot = of(mild, "what-if/gas-springs-hot-and-new");
        double most = worst(findings(gas(3000 * 333.15 / 293.15 + " N")), mild);
        assertThat(hot.utilisation()).isCloseTo(most, within(1e-6));
        assertThat(hot.note().metric()).contains("worst then: Actuator: pull");
        List<Finding> warmer = findings(gas("3 kN") + "site: {hottest: 80 degC}\n");
        assertThat(of(warmer, "what-if/gas-springs-hot-and-new").utilisation()).isGreaterThan(hot.utilisation());
    }

    /** The largest utilisation among what is worse in one than in the other. */
    private static double worst(List<Finding> there, List<Finding> here) {
        return there.stream()
                .filter(f -> !f.id().startsWith("what-if") && Double.isFinite(f.utilisation()))
                .filter(f -> f.utilisation() > of(here, f.id()).utilisation())
                .mapToDouble(Finding::utilisation)
                .max()
                .orElseThrow();
    }
}
