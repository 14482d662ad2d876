// SPDX-License-Identifier: Apache-2.0
package tipwright.check.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.check.Dumps;
import tipwright.check.rule.Finding;
import tipwright.check.rule.TimedCheck;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Text;
import tipwright.time.DriveState;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** Current, cable, fuse and battery of made-up dumps, warm and cold. */
class ElectricsTest {
    private static final String TIMED = "pull: 12 kN, voltage: 12 V, speed: {no-load: 9 mm/s, rated: 6 mm/s},"
            + " current: {no-load: 5 A, rated: 32 A}";
    private static final String BOX = swap(Examples.BOX, "80 deg", "10 deg", "pull: 12 kN", TIMED);
    private static final String OIL = swap(
            Examples.BOX,
            "80 deg",
            "10 deg",
            "kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN",
            "kind: hydraulic, bore: 60 mm, rod: {diameter: 35 mm}, closed: 800 mm, stroke: 900 mm, relief-pressure: 160 bar");

    /** 25 A at most, and 10 Ah of 12 V in the dump that takes most. */
    private static final Timing DUMPS = Dumps.of(
            Dumps.cycle("draining", 200_000, at(0.125, 20), at(0.25, 25)), Dumps.cycle("held", 432_000, at(0.375, 15)));

    private static Moment at(double tilt, double current) {
        return Dumps.driven(Moment.Phase.RAISE, tilt, 1000, new DriveState(0.006, current, 300, 0, 0, 0, 0));
    }

    private static List<Finding> run(TimedCheck check, String yaml, Timing timing) throws CannotComputeException {
        return check.run(Analyser.analyse(Examples.read(yaml)), timing);
    }

    private static List<Finding> electrical(String supply) throws CannotComputeException {
        return run(new ElectricalCheck(), BOX + supply, DUMPS);
    }

    private static Finding of(List<Finding> all, String id) {
        return all.stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(all.toString()));
    }

    private static void isMissing(Finding finding, String what) {
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(finding.missing()).isTrue();
        assertThat(finding.note()).isEqualTo(Text.words(what));
    }

    /** 2 x 5 m of 10 mm2 of copper at 40 C, 3 % longer in its strands, lose 2 L rho 1.0786 x 1.03 / A = 19.2 mV an ampere. */
    @Test
    void whatABatteryFeeds() throws CannotComputeException {
        List<Finding> all = electrical("supply: {kind: battery, voltage: 12 V, capacity: 50 Ah, fuse: 40 A,"
                + " cable: {section: 10 mm2, length: 5 m, rating: 50 A}}\n");
        assertThat(all)
                .extracting(Finding::id)
                .containsExactly(
                        "electrical/current",
                        "electrical/fuse",
                        "electrical/voltage-drop",
                        "electrical/cable",
                        "electrical/battery");
        Extreme peak = new Extreme(25, 0.25, "draining", MotionDirection.RAISING);
        Finding current = all.get(0);
        assertThat(current.demand()).isEqualTo(25);
        assertThat(current.capacity()).isEqualTo(32);
        assertThat(current.worst()).isEqualTo(peak);
        assertThat(current.title()).isEqualTo("Actuator: current");
        Finding fuse = all.get(1);
        assertThat(fuse.utilisation()).isEqualTo(25 / 40.0);
        assertThat(fuse.worst()).isEqualTo(peak);
        Finding drop = all.get(2);
        assertThat(drop.demand()).isCloseTo(25 * 0.01916, within(1e-3));
        assertThat(drop.capacity()).isCloseTo(1.2, within(1e-12));
        assertThat(drop.note().metric()).isEqualTo("0.48 V of 12.0 V are lost in the cable at 25.0 A");
        Finding cable = all.get(3);
        assertThat(cable.demand()).isEqualTo(40);
        assertThat(cable.capacity()).isEqualTo(50);
        assertThat(cable.worst()).isEqualTo(Extreme.NOWHERE);
        assertThat(cable.note()).isEqualTo(Text.words("the fuse must blow before the cable gets hot"));
        Finding battery = all.get(4);
        assertThat(battery.demand()).isCloseTo(36_000, within(1e-6));
        assertThat(battery.capacity()).isCloseTo(90_000, within(1e-6));
        assertThat(battery.note().metric())
                .isEqualTo("10.00 Ah for the dump that takes most: about 2 dumps on a charge");
    }

    @Test
    void whatIsMissingOfABatteryIsNamed() throws CannotComputeException {
        List<Finding> bare = electrical("supply: {kind: battery, voltage: 12 V}\n");
        isMissing(of(bare, "electrical/fuse"), "supply.fuse missing");
        isMissing(of(bare, "electrical/cable"), "supply.cable missing");
        isMissing(of(bare, "electrical/battery"), "supply.capacity missing");
        List<Finding> unrated =
                electrical("supply: {kind: battery, voltage: 12 V, cable: {section: 10 mm2, length: 5 m}}\n");
        isMissing(of(unrated, "electrical/cable"), "supply.cable.rating missing");
        assertThat(of(unrated, "electrical/voltage-drop").verdict()).isEqualTo(Verdict.PASS);
        isMissing(of(electrical(""), "electrical/supply"), "supply missing (battery, cable, fuse)");
        assertThat(electrical("")).hasSize(2);
    }

    /** Without a fuse the cable has to bear the largest current. */
    @Test
    void aCableWithoutAFuseBearsTheCurrent() throws CannotComputeException {
        Finding cable = of(
                electrical(
                        "supply: {kind: battery, voltage: 12 V, cable: {section: 10 mm2, length: 5 m, rating: 20 A}}\n"),
                "electrical/cable");
        assertThat(cable.demand()).isEqualTo(25);
        assertThat(cable.capacity()).isEqualTo(20);
        assertThat(cable.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(cable.tilt()).isEqualTo(0.25);
        assertThat(cable.note()).isEqualTo(Text.words("largest current; there is no fuse"));
    }

    @Test
    void withoutATimeOrACurrentNothingIsKnown() throws CannotComputeException {
        List<Finding> untimed = run(new ElectricalCheck(), BOX, Dumps.UNKNOWN);
        assertThat(untimed).hasSize(1);
        isMissing(untimed.get(0), "actuator.speed missing");
        List<Finding> bare = run(new ElectricalCheck(), swap(BOX, ", current: {no-load: 5 A, rated: 32 A}", ""), DUMPS);
        assertThat(bare).hasSize(1);
        isMissing(bare.get(0), "actuator.current missing");
    }

    @Test
    void whatIsNotElectricIsNotAsked() throws CannotComputeException {
        assertThat(run(new ElectricalCheck(), OIL, DUMPS)).isEmpty();
        assertThat(electrical("supply: {kind: hand-winch, travel-per-turn: 3 mm}\n"))
                .isEmpty();
    }

    /** 12 kN at 6 mm/s are 72 W: as much as 6 A at 12 V, by the actuator's own voltage or the battery's. */
    @ParameterizedTest
    @CsvSource({
        "'voltage: 12 V, ', 12 V, 6 A, false",
        "'voltage: 12 V, ', 12 V, 5.9 A, true",
        "'voltage: 12 V, ', 24 V, 5.9 A, true",
        "'voltage: 24 V, ', 12 V, 5.9 A, false",
        "'', 12 V, 5.9 A, true",
        "'', 24 V, 5.9 A, false",
        "'', '', 5.9 A, false"
    })
    void figuresThatCannotBe(String own, String battery, String rated, boolean told) throws CannotComputeException {
        String yaml = swap(BOX, "voltage: 12 V, ", own, "rated: 32 A", "rated: " + rated);
        String supply = battery.isEmpty() ? "" : "supply: {kind: battery, voltage: " + battery + "}\n";
        List<Finding> all = run(new ElectricalCheck(), yaml + supply, DUMPS);
        assertThat(all.get(0).id()).isEqualTo(told ? "electrical/figures" : "electrical/current");
        if (told) {
            assertThat(all.get(0).verdict()).isEqualTo(Verdict.FAIL);
            assertThat(all.get(0).demand()).isCloseTo(72, within(1e-9));
            assertThat(all.get(0).capacity()).isCloseTo(70.8, within(1e-9));
            assertThat(all.get(0).utilisation()).isCloseTo(72 / 70.8, within(1e-9));
            assertThat(all.get(1).id()).isEqualTo("electrical/current");
        }
    }

    private static List<Finding> cold(String supply, String cold) throws CannotComputeException {
        return run(new ColdCheck(), BOX + supply + cold, DUMPS);
    }

    /** At -17.8 C half of the charge; its resistance 1.4 times at 0 C and twice at -20 C. */
    @Test
    void aBatteryInTheCold() throws CannotComputeException {
        String battery = "supply: {kind: battery, voltage: 12 V, capacity: 50 Ah, resistance: 20 mohm}\n";
        List<Finding> all = cold(battery, "cold: {lowest: -17.8 degC}\n");
        assertThat(all).extracting(Finding::id).containsExactly("cold/battery", "cold/voltage");
        assertThat(all.get(0).title()).isEqualTo("On the coldest day: battery");
        assertThat(all.get(0).demand()).isCloseTo(36_000, within(1e-6));
        assertThat(all.get(0).capacity()).isCloseTo(45_000, within(1e-3));
        assertThat(all.get(0).note().metric())
                .isEqualTo("for the dump that takes most; at -17.8 degC it has 50 % of its charge");
        Finding zero = cold(battery, "cold: {lowest: 0 degC}\n").get(1);
        assertThat(zero.demand()).isCloseTo(25 * 0.020 * 1.4, within(1e-9));
        assertThat(zero.capacity()).isCloseTo(2.4, within(1e-12));
        assertThat(zero.tilt()).isEqualTo(0.25);
        // the cable stays as it is: 38.3 mohm warm
        Finding cabled = cold(
                        swap(
                                battery,
                                "resistance: 20 mohm",
                                "resistance: 20 mohm, cable: {section: 5 mm2, length: 5 m}"),
                        "cold: {lowest: 0 degC}\n")
                .get(1);
        assertThat(cabled.demand()).isCloseTo(25 * (0.020 * 1.4 + 2 * 0.01916), within(2e-3));
    }

    /** The coldest of the tables: 40 % of the charge and twice the resistance, in either unit. */
    @ParameterizedTest
    @ValueSource(strings = {"-20 degC", "-4 degF", "253.15 K"})
    void theColdestThatIsKnown(String lowest) throws CannotComputeException {
        String battery = "supply: {kind: battery, voltage: 12 V, capacity: 50 Ah, resistance: 20 mohm}\n";
        List<Finding> all = cold(battery, "cold: {lowest: " + lowest + "}\n");
        assertThat(all.get(0).capacity()).isCloseTo(0.4 * 90_000, within(1e-3));
        assertThat(all.get(1).demand()).isCloseTo(25 * 0.020 * 2, within(1e-9));
    }

    @Test
    void whatIsMissingOfTheColdIsNamed() throws CannotComputeException {
        String battery = "supply: {kind: battery, voltage: 12 V}\n";
        List<Finding> bare = cold(battery, "cold: {lowest: 0 degC}\n");
        assertThat(bare).hasSize(2);
        isMissing(of(bare, "cold/battery"), "supply.capacity missing");
        isMissing(of(bare, "cold/voltage"), "supply.resistance missing");
        isMissing(cold(battery, "").get(0), "cold missing (the coldest day that it has to work on)");
        Finding frost = cold(battery, "cold: {lowest: -21 degC}\n").get(0);
        assertThat(frost.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(frost.missing()).isFalse();
        assertThat(frost.note()).isEqualTo(Text.words("no figures for a battery below -20 C"));
        isMissing(
                run(new ColdCheck(), BOX + battery + "cold: {lowest: 0 degC}\n", Dumps.UNKNOWN)
                        .get(0),
                "actuator.speed missing");
        assertThat(cold("", "cold: {lowest: 0 degC}\n")).isEmpty();
        assertThat(cold("supply: {kind: hand-winch, travel-per-turn: 3 mm}\n", "cold: {lowest: 0 degC}\n"))
                .isEmpty();
    }

    /** A grade is the viscosity at 40 C (ISO 3448), mm2/s. */
    @Test
    void oilInTheCold() throws CannotComputeException {
        String pump = OIL + "supply: {kind: pump, flow: 8 L/min}\n";
        List<Finding> warm =
                run(new ColdCheck(), pump + "cold: {lowest: 40 degC, oil: 46, thickest: 100 mm2/s}\n", Dumps.UNKNOWN);
        assertThat(warm).extracting(Finding::id).containsExactly("cold/oil");
        assertThat(warm.get(0).demand()).isCloseTo(46e-6, within(1e-12));
        assertThat(warm.get(0).capacity()).isCloseTo(100e-6, within(1e-15));
        assertThat(warm.get(0).note().metric()).isEqualTo("VG 46 at 40 degC, viscosity index 100");
        List<Finding> untold = run(new ColdCheck(), pump + "cold: {lowest: -30 degC}\n", Dumps.UNKNOWN);
        assertThat(untold).hasSize(1);
        isMissing(untold.get(0), "cold.oil missing (grade of the oil)");
    }
}
