// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.joint.JointLoad;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.joint.Fastening;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.strength.PinStress;
import tipwright.strength.RectangularTube;

/** Welds, bolts, lugs, shaft and cross member under the real joint forces. */
class MountStrengthTest {
    private static final String QUIET = Examples.BOX + "site: {cross-slope: 4 deg}\n";

    private static Finding of(Result result, String id) {
        return result.findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static JointLoad load(Analysis analysis, String joint, String on) {
        return Objects.requireNonNull(
                JointLoad.of(analysis, new Fastening(joint, on, null, null, null, null, null, null), 0));
    }

    /** All the forces of the joints on the tank, taken in the tank's axes, hold its weight. Source: statics. */
    @Test
    void jointLoadsHoldTheTank() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(QUIET));
        List<JointLoad> joints = List.of(
                load(analysis, "tank-pin", "tank"),
                load(analysis, "bearing-1", "tank"),
                load(analysis, "bearing-2", "tank"));
        Vec3 up = analysis.design().site().up();
        for (CaseResult result : analysis.cases()) {
            for (Row row : result.rows()) {
                double weight = row.load().mass() * 9.80665;
                double turn = row.tilt();
                Vec3 pull = up.times(-weight).tilted(-turn);
                Vec3 force = pull;
                Vec3 moment = row.load().centroid().cross(pull);
                for (JointLoad joint : joints) {
                    JointLoad.Held held = joint.at(row.pose(), row.rest());
                    force = force.plus(held.force());
                    moment = moment.plus(held.at().cross(held.force()));
                }
                assertThat(force.norm()).isLessThan(1e-6 * weight);
                assertThat(moment.norm()).isLessThan(1e-6 * weight);
            }
        }
    }

    @Test
    void frameSideIsTheOppositeOfTheTankSide() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(QUIET));
        Row row = analysis.cases().get(0).rows().get(40);
        Balance b = row.rest();
        Vec3 frame = load(analysis, "frame-pin", "frame").at(row.pose(), b).force();
        Vec3 tank = load(analysis, "tank-pin", "tank").at(row.pose(), b).force();
        assertThat(frame.plus(tank.tilted(row.tilt())).norm()).isLessThan(1e-6 * frame.norm());
        Vec3 onFrame = load(analysis, "bearing-1", "frame").at(row.pose(), b).force();
        assertThat(onFrame.minus(b.bearings().get(0)).norm()).isLessThan(1e-9);
    }

    /** Geometry: a hole of 25 mm reaches 12.5 mm down from the pin, and the weld climbs up by its leg of 6 mm: 18.5 mm. */
    @Test
    void aLugsHoleEndsBeforeItsWeld() throws CannotComputeException {
        Vec2 pin = Examples.read(Examples.BOX).drive().places(Vec2.ZERO).get("frame-pin");
        for (double off : new double[] {18, 19}) {
            double y = 1000 * Objects.requireNonNull(pin).y() - off;
            Result result = Checker.check(Examples.read(Examples.BOX
                    + "fastenings:\n"
                    + "  - joint: frame-pin\n"
                    + "    weld: {at: [" + 1000 * pin.x() + " mm, " + y
                    + " mm, 0 mm], leg: 6 mm, rectangle: {u: 60 mm, v: 50 mm}}\n"
                    + "    lug: {width: 60 mm, thickness: 10 mm, hole: 25 mm, end: 35 mm, plates: 2}\n"));
            List<Finding> found = result.findings().stream()
                    .filter(f -> f.id().equals("lug-foot/frame-pin"))
                    .toList();
            assertThat(found).singleElement().satisfies(f -> {
                assertThat(f.verdict()).isEqualTo(off < 18.5 ? Verdict.FAIL : Verdict.PASS);
                assertThat(f.demand()).isCloseTo(off / 1000, within(1e-9));
                assertThat(f.capacity()).isCloseTo(0.0185, within(1e-12));
            });
        }
    }

    /** By hand: frictionless push of a full box at the start, straight lug with its weld 50 mm below the pin. */
    @Test
    void weldAndLugByHand() throws CannotComputeException {
        String yaml = swap(Examples.BOX, "to: 80 deg", "to: 5 deg")
                + "friction: {pivot: 0, pins: 0}\n"
                + "cases: {skip: [draining, heaped, caked, empty, heel]}\n"
                + "fastenings:\n"
                + "  - joint: frame-pin\n"
                + "    weld: {at: [-600 mm, -550 mm, 0 mm], leg: 6 mm, rectangle: {u: 80 mm, v: 40 mm}}\n"
                + "    lug: {width: 60 mm, thickness: 10 mm, hole: 25 mm, end: 35 mm, plates: 2}\n";
        Result result = Checker.check(Examples.read(yaml));
        double push = of(result, "push").demand();
        Finding bearing = of(result, "lug/frame-pin-bearing");
        assertThat(bearing.demand()).isCloseTo(push / (2 * 0.025 * 0.01), within(1.0));
        double length = Math.hypot(0.15, 0.9);
        double down = push * 0.9 / length;
        double back = push * 0.15 / length;
        double second = 0.04 * 0.08 * 0.08 / 2 + Math.pow(0.08, 3) / 6;
        double square = down / 0.24 + back * 0.05 * 0.04 / second;
        double hand = Math.hypot(square, back / 0.24) / (0.707 * 0.006);
        Finding weld = of(result, "weld/frame-pin");
        assertThat(weld.tilt()).isEqualTo(0);
        assertThat(weld.demand()).isCloseTo(hand, within(1e-6 * hand));
        assertThat(weld.capacity()).isCloseTo(0.30 * 70 * 6.894757293168361e6, within(1.0));
    }

    /** By hand: a tube under the pin's middle with the load in its middle; the pin sits 60 mm above the tube's middle. */
    @Test
    void crossMemberByHand() throws CannotComputeException {
        String yaml = swap(Examples.BOX, "to: 80 deg", "to: 5 deg")
                + "friction: {pivot: 0, pins: 0}\n"
                + "cases: {skip: [draining, heaped, caked, empty, heel]}\n"
                + "frame: {cross-member: {at: [-600 mm, -560 mm], height: 100 mm, width: 50 mm, wall: 4 mm,"
                + " z: [-400 mm, 400 mm]}}\n";
        Result result = Checker.check(Examples.read(yaml));
        double push = of(result, "push").demand();
        double length = Math.hypot(0.15, 0.9);
        double down = push * 0.9 / length;
        double back = push * 0.15 / length;
        RectangularTube tube = new RectangularTube(0.1, 0.05, 0.004);
        double sigma = down * 0.8 / 4 / tube.modulus() + back * 0.8 / 4 / tube.modulusAcross();
        double tau = back * 0.06 / 2 / (2 * 0.096 * 0.046 * 0.004)
                + Math.max(down / 2 / (2 * 0.1 * 0.004), back / 2 / (2 * 0.05 * 0.004));
        assertThat(of(result, "cross-member/stress").demand())
                .isCloseTo(Math.sqrt(sigma * sigma + 3 * tau * tau), within(100.0));
        double sag = Math.hypot(
                down * Math.pow(0.8, 3) / (48 * 205e9 * tube.inertia()),
                back * Math.pow(0.8, 3) / (48 * 205e9 * tube.inertiaAcross()));
        assertThat(of(result, "cross-member/bending").demand()).isCloseTo(sag, within(1e-9));
    }

    /** By hand: gripped 100 mm inside each bearing, the moment is the bearing's load over those 100 mm. */
    @Test
    void shaftThroughBothBearings() throws CannotComputeException {
        String shaft = "pivot:\n  shaft: {diameter: 40 mm, overhang: 0 mm, carried-at: [-400 mm, 400 mm]}\n";
        Result result = Checker.check(Examples.read(swap(Examples.BOX, "pivot:\n", shaft)));
        Finding f = of(result, "shaft/through-both-bearings");
        double load = of(result, "bearing-static/bearing-1").demand();
        assertThat(f.demand()).isCloseTo(PinStress.combined(0.04, load * 0.1, load), within(1e-6 * f.demand()));
    }

    @Test
    void jointThatIsNotOnThatBodyIsSaid() throws CannotComputeException {
        String yaml = Examples.BOX + "fastenings:\n  - {joint: frame-pin, on: tank, lug: {width: 60 mm,"
                + " thickness: 10 mm, hole: 25 mm, end: 35 mm}}\n";
        Finding f = of(Checker.check(Examples.read(yaml)), "lug/frame-pin");
        assertThat(f.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(f.note().metric()).contains("the joint 'frame-pin' is not on 'tank'");
    }

    /** Of two actuators a mount bears half the force, where the one stands that is nearer to it. */
    @Test
    void mountsOfTwoActuators() throws CannotComputeException {
        String actuator = "actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}\n";
        Analysis analysis = Analyser.analyse(Examples.read(swap(
                QUIET,
                "{z: 0 mm, actuator",
                "{z: -300 mm, actuator",
                "tilt: {to",
                "      - {z: 350 mm, " + actuator + "tilt: {to")));
        Row row = analysis.cases().get(0).rows().get(3);
        for (String pin : List.of("frame-pin", "tank-pin")) {
            for (double near : new double[] {-0.4, -0.3, 0.02, 0.03, 0.35, 1}) {
                Fastening mount = new Fastening(pin, null, null, null, null, null, null, null);
                JointLoad.Held held = Objects.requireNonNull(JointLoad.of(analysis, mount, near))
                        .at(row.pose(), row.rest());
                assertThat(held.at().z()).isEqualTo(near < 0.025 ? -0.3 : 0.35);
                assertThat(held.force().norm()).isCloseTo(Math.abs(row.rest().force()) / 2, within(1e-6));
            }
        }
    }
}
