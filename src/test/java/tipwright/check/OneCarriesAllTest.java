// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.check.actuator.BucklingCheck;
import tipwright.check.bearing.ShaftCheck;
import tipwright.check.fault.WhatIfCheck;
import tipwright.check.joint.CrossMemberCheck;
import tipwright.check.joint.LugCheck;
import tipwright.check.joint.PinCheck;
import tipwright.check.joint.WeldCheck;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
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
        return Checks.all().stream()
                .filter(c -> c instanceof WhatIfCheck)
                .flatMap(c -> c.run(analysis, CycleTimer.time(analysis)).stream())
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
                        Extreme.largest(alone.cases(), (row, b) -> {
                                    Vec3 load = b.bearings().get(bearing);
                                    return load.xy().norm();
                                })
                                .value());
            }
        }
        List<Finding> found = faults(two).stream()
                .filter(f -> f.verdict() != Verdict.NOT_CHECKED)
                .toList();
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
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.verdict()).isEqualTo(Verdict.NOT_CHECKED);
                    assertThat(f.note().metric()).contains("bushing, bearing 1 (right); bushing, bearing 2 (left)");
                });
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
        Map<String, Finding> found = new HashMap<>();
        faults(two).forEach(f -> found.put(f.id().replace("-when-one-carries-all", ""), f));
        assertThat(found).containsKeys("what-if/rod", "what-if/frame-pin", "what-if/moving-pin");
        List<Finding> rod = new BucklingCheck().run(alone);
        List<Finding> pins = new PinCheck().run(alone);
        assertThat(found.get("what-if/rod").utilisation()).isCloseTo(rod.get(0).utilisation(), within(1e-9));
        assertThat(found.get("what-if/frame-pin").utilisation())
                .isCloseTo(pins.get(0).utilisation(), within(1e-9));
        assertThat(found.get("what-if/moving-pin").utilisation())
                .isCloseTo(pins.get(1).utilisation(), within(1e-9));
        assertThat(rod.get(0).utilisation()).isPositive();
    }

    /** Every part on the way of the force; the machine with the one actuator alone is the reference. */
    @Test
    void shaftHousingLugCrossMemberWeldsAndBoltsBearItToo() throws CannotComputeException {
        String parts =
                """
                frame: {cross-member: {at: [-600 mm, -500 mm], height: 100 mm, width: 100 mm, wall: 5 mm, modulus: 200 GPa,
                  z: [-700 mm, 700 mm]}}
                fastenings:
                  - joint: frame-pin
                    weld: {at: [-600 mm, -480 mm, 300 mm], leg: 6 mm, lines: {length: 100 mm, apart: 50 mm}}
                    lug: {hole: 26 mm, thickness: 10 mm, width: 80 mm, end: 45 mm}
                friction: {pivot: 0, pins: 0}
                """;
        String shaft = "pivot:\n  shaft: {diameter: 40 mm, overhang: 60 mm}\n";
        String base = swap(Examples.BOX, "pivot:\n", shaft) + parts;
        Analysis alone = Analyser.analyse(
                Examples.read(swap(base, "{z: 0 mm, actuator: " + ACTUATOR, "{z: 300 mm, actuator: " + ACTUATOR)));
        Analysis two = Analyser.analyse(Examples.read(swap(
                base,
                "{z: 0 mm, actuator: " + ACTUATOR,
                "{z: 300 mm, actuator: " + ACTUATOR,
                "tilt: {to",
                "      - {z: -300 mm, actuator: " + ACTUATOR + "\ntilt: {to")));
        Map<String, Finding> found = new HashMap<>();
        faults(two).forEach(f -> found.put(f.id(), f));
        for (Check check : List.of(new ShaftCheck(), new WeldCheck(), new LugCheck(), new CrossMemberCheck())) {
            for (Finding f : check.run(alone)) {
                Finding fault = found.get("what-if/" + check.part(f).replace(' ', '-') + "-when-one-carries-all");
                assertThat(fault).as(f.id()).isNotNull();
                // the other actuator is at the same distance on the other side, so that one bearing may have its turn
                assertThat(fault.utilisation()).as(f.id()).isGreaterThanOrEqualTo(f.utilisation() * (1 - 1e-9));
            }
        }
        assertThat(found.get("what-if/cross-member-stress-when-one-carries-all").utilisation())
                .isCloseTo(new CrossMemberCheck().run(alone).get(0).utilisation(), within(1e-9));
        assertThat(found.get("what-if/weld-frame-pin-when-one-carries-all").utilisation())
                .isCloseTo(new WeldCheck().run(alone).get(0).utilisation(), within(1e-9));
    }

    /** Each moves 20 kN, but stopped holds no more than so many: alone on it, the tank comes down. What it needs is the most at rest. */
    @Test
    void theOneAloneMustHoldTheTankToo() throws CannotComputeException {
        String yaml = swap(twice(-300, 300, ""), "push: 12 kN, pull: 12 kN", "push: 20 kN, pull: 20 kN");
        double most = Extreme.largest(
                        Analyser.analyse(Examples.read(yaml)).cases(),
                        (row, b) -> Math.abs(row.rest().force()))
                .value();
        assertThat(most).isBetween(10e3, 19e3);
        for (double share : new double[] {0.99, 1.01}) {
            double hold = share * most;
            Finding found =
                    One.of(swap(yaml, "push: 20 kN", "push: 20 kN, hold: " + hold + " N"), "what-if/one-carries-all");
            assertThat(found.verdict() == Verdict.FAIL).isEqualTo(share < 1);
            if (share < 1) {
                assertThat(found.demand()).isCloseTo(most, within(1e-6 * most));
                assertThat(found.capacity()).isCloseTo(hold, within(1e-6 * most));
                assertThat(found.note().metric()).contains("cannot hold the tank");
            }
        }
    }
}
