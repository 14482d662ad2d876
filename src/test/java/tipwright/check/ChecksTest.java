// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.check.slurry.DoorLoad;
import tipwright.design.Design;
import tipwright.geometry.Plane;
import tipwright.geometry.Vec3;

/** The checks on small designs, against hand calculation. */
class ChecksTest {
    private static Result check(String yaml) throws CannotComputeException {
        return Checker.check(Examples.read(yaml));
    }

    private static Finding of(Result result, String id) {
        return result.findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void pushAtTheStartIsWeightTimesItsLeverOverTheArm() throws CannotComputeException {
        String quiet = Examples.BOX + "friction: {pivot: 0, pins: 0}\n";
        Finding push = of(check(quiet), "push");
        // Held: 1000 L at 1400 kg/m3 at x = 0 and the wall at x = 0; pivot at x = 0.4, arm by hand from the pins.
        double weight = (1400 + 5 * 0.004 * 7850) * 9.80665;
        double dx = 0.15;
        double dy = 0.9;
        double arm = 0.85 * dy / Math.hypot(dx, dy);
        assertThat(push.demand()).isCloseTo(weight * 0.4 / arm, within(1e-6 * weight));
        assertThat(push.tilt()).isEqualTo(0);
        assertThat(push.loadCase()).isEqualTo("held");
        assertThat(push.utilisation()).isCloseTo(push.demand() / 12_000, within(1e-12));
    }

    @Test
    void serviceFactorRaisesTheUtilisationAndTwoActuatorsHalveIt() throws CannotComputeException {
        double one = of(check(Examples.BOX), "push").utilisation();
        double factored =
                of(check(Examples.BOX + "factors: {service: 1.5}\n"), "push").utilisation();
        assertThat(factored).isCloseTo(1.5 * one, within(1e-9));
        String second =
                "- {z: 100 mm, actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}\n";
        String twice = swap(Examples.BOX, "tilt: {to", "      " + second + "tilt: {to");
        assertThat(of(check(twice), "push").utilisation()).isCloseTo(one / 2, within(1e-6));
    }

    @Test
    void bearingNearTheActuatorsSideTakesMore() throws CannotComputeException {
        Result side = check(swap(Examples.BOX, "{z: 0 mm, actuator", "{z: 300 mm, actuator"));
        double first = of(side, "bearing-static/bearing-1").demand();
        double second = of(side, "bearing-static/bearing-2").demand();
        assertThat(first).isNotCloseTo(second, within(100.0));
        Result middle = check(Examples.BOX);
        assertThat(of(middle, "bearing-static/bearing-1").demand())
                .isCloseTo(of(middle, "bearing-static/bearing-2").demand(), within(1e-6));
    }

    @Test
    void missingDataAreSaidAndNeverPass() throws CannotComputeException {
        Result result = check(Examples.BOX);
        for (String id : List.of("hold", "buckling", "shaft", "pin/frame-pin", "duty", "bearing-housing/bearing-1")) {
            Finding f = of(result, id);
            assertThat(f.verdict()).as(id).isEqualTo(Verdict.NOT_CHECKED);
            assertThat(f.note().metric()).contains("missing");
            assertThat(f.missing()).isTrue();
        }
    }

    /** An opening in the side needs a door; one that looks up when the tank is stowed needs none. */
    @Test
    void aDoorIsAskedForWhereTheOpeningLooksSideways() throws CannotComputeException {
        assertThat(check(Examples.BOX).findings()).noneMatch(f -> f.id().startsWith("door"));
        String up = "centre: [0 m, 1.5 m, 0 m], normal: y";
        Finding door = of(check(swap(Examples.BOX, up, "centre: [500 mm, 1 m, 0 m], normal: x")), "door");
        assertThat(door.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(door.note().metric()).contains("no door is described");
    }

    @Test
    void strokeFailsWhenTheActuatorIsTooLongOrTooShort() throws CannotComputeException {
        double start = Math.hypot(0.15, 0.9);
        Finding in = of(check(swap(Examples.BOX, "closed: 800 mm", "closed: 950 mm")), "stroke/drawn-in");
        assertThat(in.demand()).isCloseTo(start - 0.95, within(1e-9));
        assertThat(in.verdict()).isEqualTo(Verdict.FAIL);
        Finding out = of(check(swap(Examples.BOX, "stroke: 900 mm", "stroke: 300 mm")), "stroke/drawn-out");
        assertThat(out.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(of(check(Examples.BOX), "stroke/drawn-in").verdict()).isEqualTo(Verdict.PASS);
    }

    @Test
    void overCentreIsFoundWhereTheCentroidPassesOverThePivot() throws CannotComputeException {
        String empty = Examples.BOX + "cases: {skip: [held, draining, heaped, caked, heel, settled, slid]}\n";
        Finding f = of(check(empty), "over-centre");
        // Empty box: centroid 0.4 m left of and 0.5 m over the pivot.
        String tilt = String.format(java.util.Locale.ROOT, "empty at %.1f deg", Math.toDegrees(Math.atan2(0.4, 0.5)));
        assertThat(f.note().metric()).contains(tilt);
        assertThat(f.verdict()).isEqualTo(Verdict.CLOSE);
        String oil = "{kind: hydraulic, bore: 50 mm, rod: {diameter: 30 mm}, closed: 800 mm, stroke: 900 mm,"
                + " relief-pressure: 160 bar, acting: single}";
        Finding single = of(
                check(swap(empty, "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}", oil)),
                "over-centre");
        assertThat(single.verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void deadCentreStopsTheTableAndFailsTheReach() throws CannotComputeException {
        Design design = Examples.read(swap(
                        Examples.BOX,
                        "frame-pin: [-600 mm, -500 mm]",
                        "frame-pin: [1 m, 100 mm]",
                        "tank-pin: [-450 mm, 400 mm]",
                        "tank-pin: [-100 mm, 400 mm]")
                + "friction: {pivot: 0, pins: 0}\n");
        Result result = Checker.check(design);
        double at = Math.atan2(0.3, 0.6);
        Finding f = of(result, "reach");
        assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(f.capacity()).isCloseTo(at, within(1e-6));
        assertThat(f.note().metric()).contains("dead centre at 26.57 deg");
        assertThat(result.verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void frictionLocksBeforeTheDeadCentre() throws CannotComputeException {
        Result result = check(swap(
                Examples.BOX,
                "frame-pin: [-600 mm, -500 mm]",
                "frame-pin: [1 m, 100 mm]",
                "tank-pin: [-450 mm, 400 mm]",
                "tank-pin: [-100 mm, 400 mm]"));
        assertThat(of(result, "reach").note().metric())
                .startsWith("friction alone locks the linkage at 26.00 deg of tilt")
                .contains("dead centre at 26.57 deg");
    }

    /** Source: hydrostatics of a vertical rectangle, centre of pressure two thirds down (any text on fluid mechanics). */
    @Test
    void doorLoadOfAVerticalRectangle() {
        double w = 0.8;
        double h = 0.6;
        List<Vec3> plate = List.of(new Vec3(0, 0, 0), new Vec3(0, h, 0), new Vec3(0, h, w), new Vec3(0, 0, w));
        double weight = 1200 * 9.81;
        DoorLoad full = DoorLoad.of(plate, new Plane(new Vec3(0, 1, 0), h), weight);
        assertThat(full.force()).isCloseTo(weight * w * h * h / 2, within(1e-9));
        assertThat(full.centre().y()).isCloseTo(h / 3, within(1e-12));
        DoorLoad drowned = DoorLoad.of(plate, new Plane(new Vec3(0, 1, 0), h + 1), weight);
        // Depth of the centre of pressure: yc + h^2 / (12 yc).
        double middle = 1 + h / 2;
        assertThat(drowned.force()).isCloseTo(weight * w * h * middle, within(1e-9));
        assertThat(h + 1 - drowned.centre().y()).isCloseTo(middle + h * h / (12 * middle), within(1e-12));
        assertThat(DoorLoad.of(plate, new Plane(new Vec3(0, 1, 0), -1), weight).force())
                .isEqualTo(0);
    }

    @Test
    void howFullPassesAtTheAnswerAndFailsJustAboveIt() throws CannotComputeException {
        String weak = swap(
                Examples.BOX,
                "push: 12 kN, pull: 12 kN",
                "push: 5 kN, pull: 40 kN, hold: 40 kN",
                "c0: 19 kN",
                "c0: 60 kN");
        Result result = check(weak);
        HowFull answer = Objects.requireNonNull(result.howFull());
        assertThat(answer.fill()).isBetween(0.2, 0.95);
        assertThat(answer.level()).isCloseTo(answer.fill(), within(1e-6));
        assertThat(answer.limit()).isEqualTo("Actuator: push");
        assertThat(loadFails(weak, answer.fill())).isFalse();
        assertThat(loadFails(weak, answer.fill() + 0.004)).isTrue();
    }

    private static boolean loadFails(String yaml, double fill) throws CannotComputeException {
        Result r = check(swap(yaml, "fill: 100 %", "fill: " + 100 * fill + " %"));
        return of(r, "push").verdict() == Verdict.FAIL
                || of(r, "bearing-static/bearing-1").verdict() == Verdict.FAIL;
    }

    @Test
    void everyCheckTellsItsRuleFormulaAndSource() {
        for (Check c : Checks.all()) {
            assertThat(c.rule()).as(c.id()).isNotBlank();
            assertThat(c.formula()).as(c.id()).isNotBlank();
            assertThat(c.source()).as(c.id()).isNotBlank();
            assertThat(c.title()).as(c.id()).isNotBlank();
        }
        assertThat(Checks.all().stream().map(Check::id)).doesNotHaveDuplicates();
    }
}
