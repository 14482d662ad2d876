// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.check.Dumps;
import tipwright.check.rule.Finding;
import tipwright.check.rule.TimedCheck;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Text;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** Vent, channel and landing place of made-up dumps, by hand. */
class DrainingTest {
    private static final double G = 9.80665;
    private static final String TOP =
            "- {name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m]," + " normal: y}";
    private static final String GATE = "- {name: gate, rim: rectangle, width: 400 mm, height: 200 mm, centre: [500 mm,"
            + " 700 mm, 0 mm], normal: x}";
    private static final String BOX = swap(Examples.BOX, "80 deg", "30 deg");
    private static final String LOW = swap(BOX, TOP, GATE);
    private static final String PIT = "receiver: {near: [450 mm, -600 mm], far: [3 m, -600 mm]}\n";

    private static List<Finding> run(TimedCheck check, String yaml, Timing timing) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        return check.run(analysis, timing);
    }

    private static Finding only(TimedCheck check, String yaml, Timing timing) throws CannotComputeException {
        List<Finding> all = run(check, yaml, timing);
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static Finding vent(String tank, Timing timing) throws CannotComputeException {
        return only(new VentCheck(), swap(LOW, "openings:", tank + "\n  openings:"), timing);
    }

    private static Timing vacuum(double most) {
        return Dumps.draining(Dumps.running(0, 0, 1, 0.01, most / 2, 1), Dumps.running(1, 0.0875, 0.9, 0.01, most, 1));
    }

    /** 2 kPa are allowed. */
    @Test
    void theVacuumStaysGentle() throws CannotComputeException {
        Finding found = vent("vent: {diameter: 50 mm}", vacuum(1000));
        assertThat(found.demand()).isEqualTo(1000);
        assertThat(found.capacity()).isEqualTo(2000);
        assertThat(found.utilisation()).isEqualTo(0.5);
        assertThat(found.verdict()).isEqualTo(Verdict.PASS);
        assertThat(found.worst()).isEqualTo(new Extreme(1000, 0.0875, "draining", MotionDirection.RAISING));
        assertThat(found.note().metric())
                .isEqualTo("vacuum while it drains; vent of 50 mm. Vent it before it is opened");
        assertThat(new VentCheck().says(found).metric())
                .isEqualTo("while it drains, the vacuum in the tank reaches 1000 Pa, 2000 Pa allowed");
        assertThat(vent("vent: {diameter: 50 mm}", vacuum(2000)).verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(vent("vent: {diameter: 50 mm}", vacuum(2001)).verdict()).isEqualTo(Verdict.FAIL);
        // more than a gulp, yet it has a vent
        assertThat(vent("vent: {diameter: 1 mm}", vacuum(1500)).verdict()).isEqualTo(Verdict.PASS);
    }

    /** Closed up, over half of that is a tank that gulps. */
    @Test
    void aTankWithoutAVentGulps() throws CannotComputeException {
        Finding found = vent("vent: {diameter: 0 mm}", vacuum(1001));
        assertThat(found.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(found.demand()).isEqualTo(1001);
        assertThat(found.capacity()).isEqualTo(2000);
        assertThat(found.factor()).isEqualTo(1);
        assertThat(found.utilisation()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(found.note().metric())
                .isEqualTo(
                        "a closed tank without a vent whose opening is under the slurry: it pulls a vacuum and gulps or"
                                + " does not run at all; fit a vent, and never open it under vacuum");
        assertThat(vent("vent: {diameter: 0 mm}", vacuum(1000)).verdict()).isEqualTo(Verdict.PASS);
    }

    @Test
    void withoutATimeTheVentIsNotChecked() throws CannotComputeException {
        assertThat(vent("vent: {diameter: 50 mm}", Dumps.UNKNOWN).note())
                .isEqualTo(Text.words("actuator.speed missing"));
        assertThat(only(new VentCheck(), LOW, Dumps.UNKNOWN).verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }

    /** The gate reaches up to 0.3 m over the floor: under 0.35 m3 in a box of 1 m2 it is all covered, under 0.25 m3 air gets in. */
    @Test
    void withoutAWordOfAVentTheOpeningMayNotBeCovered() throws CannotComputeException {
        Finding covered =
                only(new VentCheck(), LOW, Dumps.draining(Dumps.running(0, Math.toRadians(1), 0.35, 0.01, 0, 1)));
        assertThat(covered.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(covered.missing()).isTrue();
        assertThat(covered.note().metric())
                .isEqualTo(
                        "tank.vent missing; its opening is all under the slurry at 1 deg, and the tank is taken as open to"
                                + " the air elsewhere");
        Finding free = only(new VentCheck(), LOW, Dumps.draining(Dumps.running(0, 0, 0.25, 0.01, 0, 1)));
        assertThat(free.verdict()).isEqualTo(Verdict.PASS);
        assertThat(free.demand()).isZero();
        assertThat(free.utilisation()).isZero();
        assertThat(free.note()).isEqualTo(Text.words("the opening is never covered, so air gets in there"));
        // nothing runs out then
        assertThat(only(new VentCheck(), LOW, Dumps.draining(Dumps.running(0, 0, 0.35, 0, 0, 1)))
                        .verdict())
                .isEqualTo(Verdict.PASS);
    }

    private static final Timing GUSHES = Dumps.draining(
            Dumps.running(0, 0, 1, 0.125, 0, 1),
            Dumps.running(1, 0.01, 0.75, 0.5, 0, 1),
            Dumps.running(2, 0.02, 0.25, 0.25, 0, 1),
            Dumps.running(6, 0.03, 0.25, 0, 0, 1),
            Dumps.running(7, 0.04, 0.5, 0, 0, 1),
            Dumps.running(8, 0.05, 0, 0, 0, 1));

    /** 0.125 m3/s run off: 0.25 - 0.125, then 0.5 - 0.125 more, then four seconds without; what comes in is none, then 0.5 - 0.125. */
    @Test
    void thePitHoldsWhatTheChannelDoesNotCarry() throws CannotComputeException {
        Finding pit = only(new ChannelCheck(), BOX + "channel: {capacity: 125 L/s, holds: 2 m3}\n", GUSHES);
        assertThat(pit.demand()).isCloseTo(0.5, within(1e-12));
        assertThat(pit.capacity()).isEqualTo(2);
        assertThat(pit.worst()).isEqualTo(new Extreme(0.5, 0.01, "draining", MotionDirection.RAISING));
        assertThat(pit.note().metric()).isEqualTo("500.0 L/s at most, against 125.0 L/s that it carries away");
        Finding slow = only(new ChannelCheck(), BOX + "channel: {capacity: 0 L/s, holds: 2 m3}\n", GUSHES);
        assertThat(slow.demand()).isCloseTo(1.25, within(1e-12));
        Finding channel = only(new ChannelCheck(), BOX + "channel: {capacity: 1000 L/s}\n", GUSHES);
        assertThat(channel.demand()).isEqualTo(0.5);
        assertThat(channel.capacity()).isCloseTo(1, within(1e-12));
        assertThat(channel.utilisation()).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void withoutAChannelOrATimeThereIsNothingToStore() throws CannotComputeException {
        assertThat(run(new ChannelCheck(), BOX, GUSHES)).isEmpty();
        assertThat(only(new ChannelCheck(), BOX + "channel: {capacity: 1000 L/s}\n", Dumps.UNKNOWN)
                        .note())
                .isEqualTo(Text.words("actuator.speed missing"));
    }

    private static Moment drains(double tilt, double volume, double vacuum, double level) {
        return Dumps.running(0, tilt, volume, 0.01, vacuum, level);
    }

    private static Finding stream(Moment... moments) throws CannotComputeException {
        return only(new StreamCheck(), LOW + PIT, Dumps.draining(moments));
    }

    /** A jet from 0.2 m of gate under a head h over its lip, 1.2 m over the pit: a point z up goes 2 sqrt((h - z)(1.2 + z)) far. */
    private static double reach(double head) {
        double most = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 16; i++) {
            double up = 0.2 * i / 16;
            double far = 0.5 + 2 * Math.sqrt(Math.max(0, head - up) * (1.2 + up));
            most = Math.max(most, far);
            least = Math.min(least, far);
        }
        return Math.min(least - 0.45, 3 - most);
    }

    /** A vacuum takes p / (rho g) off the head, slurry of 1400 kg/m3. */
    @Test
    void theStreamLandsByTheHeadLessTheVacuum() throws CannotComputeException {
        Finding full = stream(drains(0, 1, 0, 1.5));
        assertThat(full.capacity()).isCloseTo(reach(0.9), within(1e-9));
        assertThat(full.id()).isEqualTo("stream");
        assertThat(full.loadCase()).isEqualTo("draining");
        assertThat(full.worst().direction()).isEqualTo(MotionDirection.RAISING);
        double vacuum = 0.4 * 1400 * G;
        assertThat(stream(drains(0, 1, vacuum, 1.5)).capacity()).isCloseTo(reach(0.5), within(1e-9));
    }

    /** Moments within half a degree and a hundredth of the load are one. */
    @Test
    void momentsCloseTogetherAreOne() throws CannotComputeException {
        double first = stream(drains(0, 1, 0, 1.5)).capacity();
        double lower = reach(1);
        assertThat(lower).isLessThan(first - 0.1);
        double little = Math.toRadians(0.4);
        assertThat(stream(drains(0, 1, 0, 1.5), drains(little, 0.995, 0, 1.6)).capacity())
                .isEqualTo(first);
        assertThat(stream(drains(0, 1, 0, 1.5), drains(0, 0.98, 0, 1.6)).capacity())
                .isCloseTo(lower, within(1e-9));
        assertThat(stream(drains(0, 0.98, 0, 1.5), drains(0, 1, 0, 1.6)).capacity())
                .isCloseTo(lower, within(1e-9));
        double more = Math.toRadians(0.5);
        assertThat(stream(drains(0, 1, 0, 1.5), drains(more, 1, 0, 1.6)).tilt()).isZero();
        double far = Math.toRadians(20);
        assertThat(stream(drains(far, 2, 0, 1.5), drains(far + little, 1.985, 0, 1.6))
                        .tilt())
                .isEqualTo(far);
        assertThat(stream(drains(0, 0, 0, 1.5), drains(0, 0, 0, 1.6)).capacity())
                .isEqualTo(first);
        double turned = Math.toRadians(0.6);
        assertThat(stream(drains(0, 1, 0, 1.5), drains(turned, 1, 0, 1.6)).tilt())
                .isEqualTo(turned);
        assertThat(stream(drains(turned, 1, 0, 1.5), drains(0, 1, 0, 1.6)).tilt())
                .isZero();
        // what counts is the last that was taken, not the one before
        assertThat(stream(drains(0, 1, 0, 1.5), drains(little, 1, 0, 1.5), drains(2 * little, 1, 0, 1.6))
                        .tilt())
                .isEqualTo(2 * little);
    }

    @Test
    void onlyWhatRunsCounts() throws CannotComputeException {
        Moment dry = Dumps.running(0, 0.1, 0.5, 0, 0, 1.6);
        Moment unknown = drains(0.1, 0.5, 0, Double.NaN);
        Moment under = drains(0.1, 0.5, 0, 0.5);
        assertThat(stream(drains(0, 1, 0, 1.5), dry, unknown, under).capacity()).isCloseTo(reach(0.9), within(1e-9));
        assertThat(run(new StreamCheck(), LOW + PIT, Dumps.draining(dry, unknown, under)))
                .isEmpty();
    }

    /** Of several openings each that is open is told by its name. */
    @Test
    void severalOpeningsAreToldByName() throws CannotComputeException {
        String both = swap(
                LOW, GATE, GATE + "\n    " + swap(GATE, "gate", "late one", "normal: x", "normal: x, opens-at: 5 deg"));
        Timing stowed = Dumps.draining(drains(0, 1, 0, 1.5));
        assertThat(run(new StreamCheck(), both + PIT, stowed))
                .extracting(Finding::id)
                .containsExactly("stream/gate");
        Timing tilted = Dumps.draining(drains(Math.toRadians(5), 1, 0, 1.5));
        List<Finding> all = run(new StreamCheck(), both + PIT, tilted);
        assertThat(all).extracting(Finding::id).containsExactly("stream/gate", "stream/late-one");
        assertThat(all.get(1).title()).isEqualTo("Load: landing while it drains, late one");
        assertThat(new StreamCheck().says(all.get(1)).metric()).startsWith("what drains from 'late one' lands ");
    }

    @Test
    void withoutAPitOpeningsOrATimeThereIsNoStream() throws CannotComputeException {
        Timing stowed = Dumps.draining(drains(0, 1, 0, 1.5));
        assertThat(run(new StreamCheck(), LOW, stowed)).isEmpty();
        assertThat(run(new StreamCheck(), swap(LOW, GATE, "[]") + PIT, stowed)).isEmpty();
        Finding untimed = only(new StreamCheck(), LOW + PIT, Dumps.UNKNOWN);
        assertThat(untimed.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(untimed.note()).isEqualTo(Text.words("actuator.speed missing"));
    }
}
