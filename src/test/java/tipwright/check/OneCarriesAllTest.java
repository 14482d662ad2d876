// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.actuator.BucklingCheck;
import tipwright.check.fault.WhatIfCheck;
import tipwright.check.joint.PinCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Sweep;
import tipwright.check.rule.Verdict;
import tipwright.geometry.Vec3;
import tipwright.time.CycleTimer;

/** Of two actuators the one beside a bearing carries all: a plain bush has to bear that as well as a ball insert. */
class OneCarriesAllTest {
    private static final String ACTUATOR =
            "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}";
    private static final String BALL = "{kind: ball-insert, bore: 40 mm, c0: 19 kN}";

    private static String twice(double z1, double z2, String pressure) {
        return swap(
                Examples.BOX,
                "{z: 0 mm, actuator: " + ACTUATOR,
                "{z: " + z1 + " mm, actuator: " + ACTUATOR,
                "tilt: {to",
                "      - {z: " + z2 + " mm, actuator: " + ACTUATOR + "\ntilt: {to",
                BALL,
                "{kind: bush, bore: 40 mm, length: 50 mm" + pressure + "}");
    }

    private static List<Finding> faults(Analysis analysis) {
        return new WhatIfCheck(List.of())
                .run(analysis, CycleTimer.time(analysis)).stream()
                        .filter(f -> f.id().contains("when-one-carries-all"))
                        .toList();
    }

    /** The same machine with one actuator in that place is the reference; friction moves both by little, so it is off. */
    @Test
    void aBushBearsWhatItBearsWithTheOneActuatorAlone() throws CannotComputeException {
        String still = "friction: {pivot: 0, pins: 0}\n";
        Analysis two = Analyser.analyse(Examples.read(twice(-300, 450, ", pressure: 20 MPa") + still));
        double[] worst = new double[2];
        for (double z : new double[] {-300, 450}) {
            Analysis alone = Analyser.analyse(Examples.read(
                    swap(Examples.BOX, "{z: 0 mm, actuator: " + ACTUATOR, "{z: " + z + " mm, actuator: " + ACTUATOR)
                            + still));
            for (int k = 0; k < 2; k++) {
                int bearing = k;
                worst[k] = Math.max(
                        worst[k],
                        Sweep.balances(alone, b -> {
                                    Vec3 load = b.bearings().get(bearing);
                                    return load.xy().norm();
                                })
                                .value());
            }
        }
        List<Finding> found = faults(two);
        assertThat(found).hasSize(2);
        for (int k = 0; k < 2; k++) {
            double pressure = worst[k] / (0.040 * 0.050);
            assertThat(found.get(k).demand()).isCloseTo(pressure, within(1e-9 * pressure));
            assertThat(found.get(k).capacity()).isCloseTo(20e6, within(1e-3));
            assertThat(found.get(k).factor()).isEqualTo(1.5);
        }
    }

    @Test
    void aBushOfUnknownStrengthIsNotChecked() throws CannotComputeException {
        assertThat(faults(Analyser.analyse(Examples.read(twice(-300, 300, "")))))
                .hasSize(2)
                .allMatch(f -> f.verdict() == Verdict.NOT_CHECKED)
                .allMatch(f -> f.note().contains("bearing.pressure missing"));
    }

    /** The machine with the one actuator alone is the reference: its own buckling and pin checks. */
    @Test
    void rodAndPinsBearWhatTheyBearWithTheOneActuatorAlone() throws CannotComputeException {
        String joints = "    frame-pin-joint: {diameter: 25 mm, lug: 25 mm, cheek: 10 mm, gap: 1 mm}\n"
                + "    tank-pin-joint: {diameter: 30 mm, lug: 25 mm, cheek: 10 mm, gap: 1 mm}\n";
        String thin = "pull: 12 kN, rod: {diameter: 28 mm, length: 900 mm}}}";
        String thick = "pull: 12 kN, rod: {diameter: 35 mm, length: 900 mm}}}";
        String still = "friction: {pivot: 0, pins: 0}\n";
        String one = swap(Examples.BOX, "    actuators:", joints + "    actuators:");
        Analysis alone = Analyser.analyse(Examples.read(swap(one, "pull: 12 kN}}", thin) + still));
        Analysis two = Analyser.analyse(Examples.read(swap(
                        one,
                        ACTUATOR,
                        swap(ACTUATOR, "pull: 12 kN}}", thick),
                        "tilt: {to",
                        "      - {z: 100 mm, actuator: " + swap(ACTUATOR, "pull: 12 kN}}", thin) + "\ntilt: {to")
                + still));
        List<Finding> found = faults(two);
        assertThat(found)
                .extracting(Finding::id)
                .startsWith(
                        "what-if/rod-when-one-carries-all",
                        "what-if/frame-pin-when-one-carries-all",
                        "what-if/moving-pin-when-one-carries-all");
        List<Finding> rod = new BucklingCheck().run(alone);
        List<Finding> pins = new PinCheck().run(alone);
        assertThat(found.get(0).utilisation()).isCloseTo(rod.get(0).utilisation(), within(1e-9));
        assertThat(found.get(1).utilisation()).isCloseTo(pins.get(0).utilisation(), within(1e-9));
        assertThat(found.get(2).utilisation()).isCloseTo(pins.get(1).utilisation(), within(1e-9));
        assertThat(rod.get(0).utilisation()).isPositive();
    }
}
