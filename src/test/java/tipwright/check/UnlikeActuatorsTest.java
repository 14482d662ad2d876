// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.actuator.HoldCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** Two actuators that are not alike: what the weaker one bears, worked out by hand from p = F / A and from halves. */
class UnlikeActuatorsTest {
    private static final String ONE =
            "- {z: 0 mm, actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}";
    private static final String PINS = "frame-pin: [-600 mm, -500 mm]\n    tank-pin: [-450 mm, 400 mm]";
    /** The actuators stand beyond the pivot and pull the tank over. */
    private static final String BEYOND = "frame-pin: [1700 mm, 0 mm]\n    tank-pin: [500 mm, 900 mm]";

    private static String ram(int z, int bore, int rod, String more) {
        return "- {z: " + z + " mm, actuator: {kind: hydraulic, bore: " + bore + " mm, rod: {diameter: " + rod
                + " mm}, closed: 700 mm, stroke: 900 mm, relief-pressure: 210 bar" + more + "}}";
    }

    private static String motor(int z, int push, String more) {
        return "- {z: " + z + " mm, actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, push: " + push
                + " kN, pull: " + push + " kN" + more + "}}";
    }

    private static String two(String first, String second) {
        return swap(Examples.BOX, ONE, first + "\n      " + second);
    }

    /** A thick rod leaves 11 parts of oil where a thin one leaves 21 of a smaller bore: a pull goes 21/32 to that one. */
    @Test
    void aPullIsHeldByTheRingsOfOil() throws CannotComputeException {
        String yaml = swap(
                two(ram(-300, 60, 50, ", hold: 40 kN"), ram(300, 50, 20, ", hold: 10 kN")),
                PINS,
                BEYOND,
                "tilt: {to: 80 deg}",
                "tilt: {to: 30 deg}");
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        double most = analysis.cases().stream()
                .flatMap(c -> c.rows().stream())
                .mapToDouble(r -> -r.rest().force())
                .max()
                .orElseThrow();
        Finding held = new HoldCheck().run(analysis).get(0);
        assertThat(most).isPositive();
        assertThat(held.demand()).isCloseTo(most, within(1e-6));
        assertThat(held.capacity()).isCloseTo(10e3 * 32 / 21, within(1e-6));
        assertThat(One.of(yaml, "what-if/lost-power").capacity()).isCloseTo(10e3 * 32 / 21, within(1e-6));
    }

    /**
     * On one stiff tank both run equally fast. With 7 kN to push, one of 14 kN that makes 10 to 7 mm/s and one of 9 kN that makes 8 to 5
     * mm/s share alike only where 10 - 3 F / 14 = 8 - 3 F / 9; at 8 mm/s, which a screw that holds itself cannot pass, the first pushes
     * with 9.3 kN and drags the second along. One of half the push that loses half the speed under it is as fast with the same load.
     */
    @Test
    void whatIsFasterWithTheSameLoadBearsMoreThanItsShare() throws CannotComputeException {
        String strong = motor(-300, 14, ", speed: {no-load: 10 mm/s, rated: 7 mm/s}");
        String slow = motor(300, 9, ", speed: {no-load: 8 mm/s, rated: 5 mm/s}");
        String steep = motor(300, 7, ", speed: {no-load: 10 mm/s, rated: 7 mm/s}");
        String alike = motor(300, 7, ", speed: {no-load: 10 mm/s, rated: 8.5 mm/s}");
        String id = "stall/share-of-each";
        assertThat(One.of(two(strong, slow), id).verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(One.of(two(strong, steep), id).verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(One.all(two(strong, alike), id)).noneMatch(f -> f.id().equals(id));
        assertThat(One.all(two(strong, motor(300, 14, ", speed: {no-load: 10 mm/s, rated: 7 mm/s}")), id))
                .noneMatch(f -> f.id().equals(id));
    }

    /** The hour counts for the one with the least duty; of one whose duty is not known nothing passes. */
    @Test
    void heatOfTheOneThatMayRunLeast() throws CannotComputeException {
        String rest = "use: {dumps-per-hour: 10}\n";
        String flow = ", flow: 4 L/min, duty: ";
        String last = ram(300, 50, 20, flow + "5 %");
        Finding found = One.of(two(ram(-300, 60, 50, flow + "40 %"), last) + rest, "duty");
        assertThat(found.capacity()).isEqualTo(0.05);
        Finding other = One.of(two(last, ram(-300, 60, 50, flow + "40 %")) + rest, "duty");
        assertThat(other.capacity()).isEqualTo(0.05);
        String seldom = "use: {dumps-per-hour: 0.1}\n";
        String unknown = ram(-300, 60, 50, ", flow: 4 L/min");
        assertThat(One.of(two(unknown, last) + seldom, "duty").verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(One.of(two(unknown, last) + "use: {dumps-per-hour: 100}\n", "duty")
                        .verdict())
                .isEqualTo(Verdict.FAIL);
    }

    /** Stuck fast, each gives twice what it is rated for on its own pin: 40 kN, not half of 56, in double shear through 20 mm. */
    @Test
    void aJamStallsEachAtItsOwnForce() throws CannotComputeException {
        String pin =
                "    frame-pin-joint: {diameter: 20 mm, lug: 20 mm, cheek: 10 mm, gap: 1 mm, yield: 235 MPa}\n    actuators:";
        double moment = 40_000 * (0.010 / 4 * 2 + 0.0005);
        double sigma = 32 * moment / (Math.PI * Math.pow(0.02, 3));
        double tau = 4 * 20_000 / (3 * Math.PI / 4 * 0.02 * 0.02);
        double stress = Math.sqrt(sigma * sigma + 3 * tau * tau);
        for (String yaml :
                new String[] {two(motor(-300, 20, ""), motor(300, 8, "")), two(motor(-300, 8, ""), motor(300, 20, ""))
                }) {
            Finding found = One.of(swap(yaml, "    actuators:", pin), "what-if/jam");
            assertThat(found.demand()).isCloseTo(stress, within(1e-6 * stress));
        }
    }
}
