// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** Checks that need the dump in time, on a box with hand-worked figures. */
class TimedChecksTest {
    private static final String SPEED =
            "pull: 12 kN, voltage: 12 V, duty: 25 %, speed: {no-load: 9 mm/s, rated: 6 mm/s}, current: {no-load: 5 A, rated: 32 A}";

    private static Result check(String actuator, String more) throws CannotComputeException {
        String tank = more.contains("one-slide") ? "repose: 30 deg, release: 35 deg" : "repose: 30 deg";
        return Checker.check(Examples.read(swap(Examples.BOX, "pull: 12 kN", actuator, "repose: 30 deg", tank) + more));
    }

    private static Finding find(Result result, String id) {
        return result.findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id + " is not in "
                        + result.findings().stream().map(Finding::id).toList()));
    }

    @Test
    void withoutSpeedNothingIsTimed() throws CannotComputeException {
        Result result = check("pull: 12 kN", "");
        assertThat(result.timing().cycles()).isEmpty();
        assertThat(find(result, "stall").verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(find(result, "stall").note().metric()).isEqualTo("actuator.speed missing");
    }

    @Test
    void withoutFlowTheHydraulicsAreNotChecked() throws CannotComputeException {
        String oil = "kind: hydraulic, bore: 60 mm, rod: {diameter: 35 mm}, closed: 800 mm, stroke: 900 mm,"
                + " relief-pressure: 160 bar";
        Result result = Checker.check(Examples.read(
                swap(Examples.BOX, "kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN", oil)));
        assertThat(find(result, "hydraulic").verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(find(result, "hydraulic").note().metric()).contains("flow missing");
    }

    /** i = 5 A + 27 A F / 12 kN at the largest push; drop 2 L rho (1 + 0.00393 x 20) 1.03 i / A. */
    @Test
    void currentDropAndFuseFollowFromTheForce() throws CannotComputeException {
        Result result = check(
                SPEED,
                "supply: {kind: battery, voltage: 12 V, capacity: 50 Ah, fuse: 30 A,"
                        + " cable: {section: 10 mm2, length: 5 m, rating: 25 A}}\n");
        Finding current = find(result, "electrical/current");
        double push = result.timing().cycles().stream()
                .flatMap(c -> c.moments().stream())
                .mapToDouble(m -> m.draw().power() > 0 ? m.force() : 0)
                .max()
                .orElseThrow();
        double amps = 5 + 27 * push / 12_000;
        assertThat(current.demand()).isCloseTo(amps, within(1e-9 * amps));
        assertThat(current.capacity()).isEqualTo(32);
        double drop = 2 * 5 * 1.7241e-8 * (1 + 0.00393 * 20) * 1.03 / 10e-6 * amps;
        assertThat(find(result, "electrical/voltage-drop").demand()).isCloseTo(drop, within(1e-9));
        assertThat(find(result, "electrical/voltage-drop").capacity()).isCloseTo(1.2, within(1e-12));
        assertThat(find(result, "electrical/fuse").utilisation()).isCloseTo(amps / 30, within(1e-9));
        // a fuse larger than the cable bears does not protect it
        assertThat(find(result, "electrical/cable").verdict()).isEqualTo(Verdict.FAIL);
        assertThat(find(result, "electrical/battery").capacity()).isCloseTo(0.5 * 50 * 3600, within(1e-6));
    }

    @Test
    void figuresThatContradictEachOtherAreTold() throws CannotComputeException {
        Result result = check(swap(SPEED, "rated: 32 A", "rated: 5.5 A"), "");
        // 12 kN x 6 mm/s = 72 W at the rod from 66 W
        assertThat(find(result, "electrical/figures").verdict()).isEqualTo(Verdict.FAIL);
        assertThat(find(result, "electrical/figures").demand()).isCloseTo(72, within(1e-9));
        assertThat(find(result, "electrical/figures").capacity()).isCloseTo(66, within(1e-9));
    }

    @Test
    void weakSupplyStallsWithTheHeldLoad() throws CannotComputeException {
        Result result = check(SPEED, "supply: {kind: battery, voltage: 2 V}\n");
        Finding held = find(result, "stall/held-load");
        assertThat(held.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(held.note().metric())
                .startsWith("the actuator stalls at ")
                .endsWith(" deg with the load 'full, load still in it'");
        assertThat(result.verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void timeWantedAgainstTimeGot() throws CannotComputeException {
        Result slow = check(SPEED, "dump: {cycle-time: 60 s}\n");
        Finding late = find(slow, "cycle-time");
        assertThat(late.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(late.demand()).isGreaterThan(60);
        Result waits = check(SPEED, "dump: {cycle-time: 60 s, hold: 30 s}\n");
        assertThat(find(waits, "cycle-time").demand()).isCloseTo(late.demand() + 30, within(1e-3));
    }

    /** The pit takes what the channel does not carry away; with no channel at all, the whole load. */
    @Test
    void pitTakesWhatTheChannelDoesNot() throws CannotComputeException {
        Result pit = check(SPEED, "channel: {capacity: 0 L/s, holds: 2000 L}\n");
        // all that has left by the end of the dump
        double left = pit.timing().cycles().get(0).moments().stream()
                .mapToDouble(m -> m.volume())
                .min()
                .orElseThrow();
        assertThat(find(pit, "channel").demand()).isCloseTo(1 - left, within(1e-4));
        Result channel = check(SPEED, "channel: {capacity: 1 L/s}\n");
        assertThat(find(channel, "channel").verdict()).isEqualTo(Verdict.FAIL);
    }

    /** Twice the weight of the cake at rest needs more than the cake itself, and is told apart from the load cases. */
    @Test
    void cakeInOneSlideIsACaseOfItsOwn() throws CannotComputeException {
        String actuator = swap(SPEED, "pull: 12 kN", "pull: 12 kN, hold: 18 kN");
        Result once = check(actuator, "dump: {cake: one-slide, shock: 1}\n");
        Result twice = check(actuator, "dump: {cake: one-slide}\n");
        Finding a = find(once, "slide/actuator");
        Finding b = find(twice, "slide/actuator");
        assertThat(b.demand()).isGreaterThan(a.demand());
        // the force is linear in the weight: F(2) - F(1) = F(3) - F(2)
        Finding c = find(check(actuator, "dump: {cake: one-slide, shock: 3}\n"), "slide/actuator");
        assertThat(c.demand() - b.demand()).isCloseTo(b.demand() - a.demand(), within(1e-6 * c.demand()));
        assertThat(b.loadCase()).isEqualTo("one slide");
        assertThat(Math.toDegrees(b.tilt())).isCloseTo(35, within(1e-9));
        assertThat(find(twice, "slide/bearings").demand()).isPositive();
        assertThat(check(actuator, "").findings()).noneMatch(f -> f.id().startsWith("slide"));
    }

    /**
     * By hand, without friction: twice the cake and the box, either as it lay flat or heaped 5 degrees to the dump side at 35 degrees
     * of tilt and 30 of repose; moment about the pivot over the actuator's arm. Source: centroid of a trapezium.
     */
    @Test
    void forceOfACakeInOneSlide() throws CannotComputeException {
        String quiet = "friction: {pivot: 0, pins: 0}\ndump: {cake: one-slide}\n";
        Result result = check("pull: 12 kN, hold: 15 kN", quiet);
        // packed to 60 % of 2650 kg/m3 in water; 1400 kg/m3 of slurry holds (1400 - 1000) / 1650 of solids by volume
        double depth = 400.0 / 1650 / 0.6;
        double cake = 2 * depth * (0.6 * 2650 + 0.4 * 1000);
        double box = 5 * 0.004 * 7850;
        double tan = Math.tan(Math.toRadians(5));
        double tilt = Math.toRadians(35);
        double most = 0;
        for (double lean : new double[] {0, tan}) {
            double x = lean / (12 * depth);
            double y = 0.5 + depth / 2 + lean * lean / (24 * depth);
            double firstX = cake * (x - 0.4) + box * -0.4;
            double firstY = cake * (y - 0.4) + box * 0.5;
            double lever = firstX * Math.cos(tilt) + firstY * Math.sin(tilt);
            double pinX = 0.4 - 0.85 * Math.cos(tilt);
            double pinY = 0.4 + 0.85 * Math.sin(tilt);
            double length = Math.hypot(pinX + 0.6, pinY + 0.5);
            double arm = ((pinX + 0.6) * (pinY - 0.4) - (pinY + 0.5) * (pinX - 0.4)) / length;
            most = Math.max(most, Math.abs(9.80665 * lever / arm));
        }
        Finding actuator = find(result, "slide/actuator");
        assertThat(actuator.demand()).isCloseTo(most, within(1e-6 * most));
        assertThat(actuator.capacity()).isEqualTo(15_000);
        assertThat(find(result, "slide/bearings").capacity()).isEqualTo(19_000);
        Result bare =
                Checker.check(Examples.read(swap(Examples.BOX, "repose: 30 deg", "repose: 30 deg, release: 35 deg")
                                .replaceFirst(", c0: 19 kN", "")
                        + quiet));
        assertThat(find(bare, "slide/actuator").note().metric()).isEqualTo("actuator.hold missing");
        assertThat(find(bare, "slide/bearings").verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }
}
