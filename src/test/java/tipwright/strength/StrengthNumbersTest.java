// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.actuator.Rod;
import tipwright.design.actuator.Tube;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.PinJoint;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Pins, columns, tubes, bolts and bushes worked out by hand with the formulas that their classes name; from memory. */
class StrengthNumbersTest {
    private static final String QUIET = swap(Examples.BOX, "to: 80 deg", "to: 5 deg")
            + "friction: {pivot: 0, pins: 0}\n"
            + "cases: {skip: [draining, heaped, caked, empty, heel]}\n";

    private static Finding of(Result result, String id) {
        return result.findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static PinJoint joint(PinJoint.Shear shear) {
        return new PinJoint(0.03, shear, 0.025, 0.012, 0.002, 235e6);
    }

    /** 10 kN: in double shear M = 10 kN (3 + 1 + 3.125) mm, V = 5 kN; in single M = 10 kN (18.5 + 2) mm / 2, V = 10 kN. */
    @ParameterizedTest
    @CsvSource({"DOUBLE, 71.25, 5000", "SINGLE, 102.5, 10000"})
    void pinOfAJoint(PinJoint.Shear shear, double moment, double force) {
        assertThat(PinStress.moment(joint(shear), 10_000)).isCloseTo(moment, within(1e-9));
        assertThat(PinStress.shearForce(joint(shear), 10_000)).isEqualTo(force);
        double sigma = moment * 0.015 / (Math.PI * Math.pow(0.015, 4) / 4);
        double tau = 4.0 / 3 * force / (Math.PI * 0.015 * 0.015);
        assertThat(PinStress.bending(0.03, moment)).isCloseTo(sigma, within(1e-6 * sigma));
        assertThat(PinStress.shear(0.03, force)).isCloseTo(tau, within(1e-6 * tau));
        double both = Math.hypot(sigma, Math.sqrt(3) * tau);
        assertThat(PinStress.combined(joint(shear), 10_000)).isCloseTo(both, within(1e-6 * both));
    }

    /** Round bar of 30 mm: k = 7.5 mm; change from Johnson to Euler at L/k = sqrt(2 pi^2 E / Sy) = 106.77 for 355 MPa. */
    @Test
    void columnsShortAndLong() {
        double area = Math.PI * 0.0009 / 4;
        double inertia = Math.PI * Math.pow(0.03, 4) / 64;
        double half = Column.uniform(106.7664 * 0.0075, area, inertia, 205e9, 355e6);
        assertThat(half / area).isCloseTo(355e6 / 2, within(355e6 * 1e-4));
        // L/k = 60: 1 - 60^2 / (2 * 106.7664^2)
        assertThat(Column.uniform(0.45, area, inertia, 205e9, 355e6) / area)
                .isCloseTo(355e6 * (1 - 3600 / (2 * 106.7664 * 106.7664)), within(355e6 * 1e-5));
        assertThat(Column.uniform(0.0075, area, inertia, 205e9, 355e6) / area).isCloseTo(355e6, within(355e6 * 1e-4));
        // L/k = 200: Euler, pi^2 E / 200^2
        assertThat(Column.uniform(1.5, area, inertia, 205e9, 355e6) / area)
                .isCloseTo(Math.PI * Math.PI * 205e9 / 40_000, within(100.0));
    }

    /** A tube as stiff as its rod is one column; a much stiffer one leaves the rod with tan(kL1) = -k L2, and the reverse. */
    @Test
    void rodInItsTube() {
        Rod rod = new Rod(0.03, 0, null, 355e6, 205e9);
        double stiff = 205e9 * rod.inertia();
        double alone = Column.actuator(rod, null, 1.5);
        assertThat(alone).isCloseTo(Math.PI * Math.PI * stiff / 2.25, within(1.0));
        assertThat(Column.actuator(rod, new Tube(0.03, 0, 0.7), 1.5)).isCloseTo(alone, within(1e-6 * alone));
        assertThat(Column.actuator(rod, new Tube(0.3, 0.1, 1.6), 1.5)).isEqualTo(alone);
        assertThat(Column.actuator(rod, new Tube(0.3, 0.1, 1.5), 1.5)).isEqualTo(alone);
        double rigid = Column.actuator(rod, new Tube(0.3, 0.1, 0.5), 1.5);
        double wave = Math.sqrt(rigid / stiff);
        assertThat(Math.tan(wave)).isCloseTo(-0.5 * wave, within(2e-3));
        assertThat(wave).isBetween(Math.PI / 2, Math.PI);
        // Short and thick: yields before it buckles.
        double squash = rod.area() * 355e6;
        assertThat(Column.actuator(rod, new Tube(0.1, 0.05, 0.05), 0.06)).isCloseTo(squash, within(0.001 * squash));
    }

    @Test
    void rectangularTubeEitherWay() {
        RectangularTube tube = new RectangularTube(0.1, 0.06, 0.005);
        double high = (0.06 * 1e-3 - 0.05 * Math.pow(0.09, 3)) / 12;
        double wide = (0.1 * Math.pow(0.06, 3) - 0.09 * Math.pow(0.05, 3)) / 12;
        assertThat(tube.inertia()).isCloseTo(high, within(1e-15));
        assertThat(tube.inertiaAcross()).isCloseTo(wide, within(1e-15));
        assertThat(tube.modulus()).isCloseTo(high / 0.05, within(1e-13));
        assertThat(tube.modulusAcross()).isCloseTo(wide / 0.03, within(1e-13));
        assertThat(tube.shear(10_000)).isCloseTo(10e6, within(1e-3));
        assertThat(tube.shearAcross(12_000)).isCloseTo(20e6, within(1e-3));
        assertThat(tube.torsion(500)).isCloseTo(500 / (2 * 0.095 * 0.055 * 0.005), within(1e-3));
    }

    private static BoltGroup four() {
        double u = 0.05;
        double v = 0.1;
        return new BoltGroup(new Bolts(
                Vec3.ZERO,
                new Vec3(0, 1, 0),
                List.of(new Vec2(-u, -v), new Vec2(u, -v), new Vec2(-u, v), new Vec2(u, v)),
                0.016,
                157e-6,
                800e6));
    }

    /** Four M16 of class 8.8: FvRd = 0.6 * 800 * 157 / 1.25 = 60.29 kN, FtRd = 0.9 * 800 * 157 / 1.25 = 90.43 kN each. */
    @Test
    void fourBolts() {
        double shear = 60_288;
        double pull = 90_432;
        assertThat(four().share(new Vec3(40_000, 0, 0), Vec3.ZERO)).isCloseTo(10_000 / shear, within(1e-9));
        assertThat(four().share(new Vec3(0, 40_000, 0), Vec3.ZERO)).isCloseTo(10_000 / pull, within(1e-9));
        assertThat(four().share(new Vec3(0, -40_000, 0), Vec3.ZERO)).isCloseTo(0, within(1e-12));
        assertThat(four().share(new Vec3(0, 40_000, 20_000), Vec3.ZERO))
                .isCloseTo(Math.max(5_000 / shear + 10_000 / pull / 1.4, 10_000 / pull), within(1e-9));
        // 20 kN sideways 100 mm above the plane: two bolts on the pulled side bear 2 kN m / (2 * 0.1 m) each.
        assertThat(four().share(new Vec3(20_000, 0, 0), new Vec3(0, 0.1, 0)))
                .isCloseTo(5_000 / shear + 10_000 / pull / 1.4, within(1e-9));
    }

    /** Source: ISO 898-1, nominal stress areas of coarse threads, from memory; mm2. */
    @ParameterizedTest
    @CsvSource({
        "4, 8.78",
        "5, 14.2",
        "6, 20.1",
        "8, 36.6",
        "10, 58.0",
        "12, 84.3",
        "14, 115",
        "16, 157",
        "18, 192",
        "20, 245",
        "22, 303",
        "24, 353",
        "27, 459",
        "30, 561",
        "33, 694",
        "36, 817",
    })
    void stressAreas(double diameter, double area) {
        assertThat(BoltGroup.stressArea(diameter / 1000) * 1e6).isCloseTo(area, within(0.006 * area));
    }

    /** The actuator's force in a pin of its own, by the formula above; of two actuators each bears half. */
    @Test
    void pinsOfTheActuator() throws CannotComputeException {
        String pins = "    frame-pin-joint: {diameter: 30 mm, lug: 25 mm, cheek: 12 mm, gap: 2 mm}\n"
                + "    tank-pin-joint: {diameter: 25 mm, shear: single, lug: 25 mm, cheek: 12 mm}\n";
        Result one = Checker.check(Examples.read(swap(QUIET, "    actuators:\n", pins + "    actuators:\n")));
        double push = of(one, "push").demand();
        double frame = PinStress.combined(joint(PinJoint.Shear.DOUBLE), push);
        assertThat(of(one, "pin/frame-pin").demand()).isCloseTo(frame, within(1e-6 * frame));
        double tank = PinStress.combined(0.025, push * 0.0185 / 2, push);
        assertThat(of(one, "pin/tank-pin").demand()).isCloseTo(tank, within(1e-6 * tank));
        String second =
                "- {z: 100 mm, actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}\n";
        Result two = Checker.check(Examples.read(swap(
                QUIET, "    actuators:\n", pins + "    actuators:\n", "tilt: {to", "      " + second + "tilt: {to")));
        assertThat(of(two, "pin/frame-pin").demand()).isCloseTo(frame / 2, within(1e-6 * frame));
        assertThat(of(two, "pin/tank-pin").demand()).isCloseTo(tank / 2, within(1e-6 * tank));
    }

    @Test
    void bushesBearTheirLoadOverTheProjectedArea() throws CannotComputeException {
        String ball = "{kind: ball-insert, bore: 40 mm, c0: 19 kN}";
        double load = of(Checker.check(Examples.read(QUIET)), "bearing-static/bearing-1")
                .demand();
        Result result = Checker.check(Examples.read(QUIET.replaceFirst(
                        java.util.regex.Pattern.quote(ball),
                        "{kind: bush, bore: 40 mm, length: 50 mm, pressure: 20 MPa}")
                .replace(ball, "{kind: bush, bore: 40 mm, length: 50 mm}")));
        Finding first = of(result, "bush/bearing-1");
        assertThat(first.demand()).isCloseTo(load / 0.002, within(1e-6 * load / 0.002));
        assertThat(first.capacity()).isEqualTo(20e6);
        Finding second = of(result, "bush/bearing-2");
        assertThat(second.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(second.note().metric()).contains("bearing.pressure missing");
    }

    /** By hand: the push at rest is sheared and pulled into two pairs of bolts right at the pin. */
    @Test
    void boltsUnderTheFramePin() throws CannotComputeException {
        String bolts = "fastenings:\n  - joint: frame-pin\n    bolts: {at: [-600 mm, -500 mm, 0 mm], diameter: 16 mm,"
                + " stress-area: 157 mm2, positions: [[-50 mm, -100 mm], [50 mm, -100 mm], [-50 mm, 100 mm],"
                + " [50 mm, 100 mm]]}\n";
        Result result = Checker.check(Examples.read(QUIET + bolts));
        Finding f = of(result, "bolt/frame-pin");
        // It pushes down and back on the mount: no pull, a quarter of the shear for each bolt.
        double shear = result.analysis().cases().get(0).rows().stream()
                .mapToDouble(r -> r.rest().force() * Math.abs(Math.cos(r.pose().swing())) / 4)
                .max()
                .orElseThrow();
        assertThat(f.demand()).isCloseTo(shear / 60_288, within(1e-9));
        assertThat(Objects.requireNonNull(f.note().metric()))
                .contains("share of its design strength")
                .contains("0.0 kN pull");
        String line = swap(
                bolts.replaceAll("positions: .*", "positions: [[0 mm, -100 mm], [0 mm, 100 mm]]}"),
                "at: [-600 mm, -500 mm",
                "at: [-600 mm, -600 mm");
        assertThat(of(Checker.check(Examples.read(QUIET + line)), "bolt/frame-pin")
                        .note()
                        .metric())
                .contains("bolts in one line");
    }
}
