// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.joint.PinJoint;
import tipwright.strength.FatigueCurve;
import tipwright.strength.PinStress;

/** Ways to fail that are easily forgotten: what the demo says of them, by hand, and where each of them tips over to a fail. */
class MoreFailuresTest {
    private static final Path DEMO = Path.of("geometry/silt-trailer.yaml");
    private static final String COARSE = "step: 1 deg";

    private static String demo(String... swaps) throws IOException {
        return swap(swap(Files.readString(DEMO), COARSE, "step: 10 deg"), swaps);
    }

    private static Finding of(String yaml, String id) throws CannotComputeException {
        return One.of(yaml, id);
    }

    /** With the factor at which it is used up to the last it does not fail, with a billionth more it does. */
    @ParameterizedTest
    @CsvSource({
        "shell/tank-pin, wall",
        "shell/bearing-2, wall",
        "tube-wall/frame-pin, wall",
        "prying/bearing-1, bolt",
        "lug-side/frame-pin, lug",
        "skid, skid",
        "road/lift, road",
        "road/bearing-1, bearing-static"
    })
    void limitIsHitExactly(String id, String factor) throws IOException, CannotComputeException {
        Finding asItIs = of(demo(), id);
        assertThat(asItIs.verdict()).isEqualTo(Verdict.PASS);
        double allowed = asItIs.factor() / asItIs.utilisation();
        Finding full = of(demo() + "factors: {" + factor + ": " + allowed * (1 - 1e-9) + "}\n", id);
        Finding over = of(demo() + "factors: {" + factor + ": " + allowed * (1 + 1e-9) + "}\n", id);
        assertThat(full.utilisation()).isCloseTo(1, within(1e-8));
        assertThat(full.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(over.verdict()).isEqualTo(Verdict.FAIL);
    }

    /** What is missing is named, and is no pass. */
    @ParameterizedTest
    @CsvSource({
        "shell, seat:, seat missing",
        "prying/bearing-1, flange:, flange missing",
        "fatigue, 'hours-a-year: 250, ', hours-a-year",
        "swing/frame-pin, 'height: 50 mm', height missing",
        "cold, 'cold: {lowest: -5 degC}', cold missing",
        "skid, 'supports:', supports missing"
    })
    void whatIsMissingIsNamed(String id, String gone, String word) throws IOException, CannotComputeException {
        String text = demo();
        String less;
        if (gone.equals("supports:")) {
            less = text.substring(0, text.indexOf("supports:")) + text.substring(text.indexOf("fastenings:"));
        } else if (gone.equals("seat:")) {
            String all = text.replaceAll("(?m)^ +seat: .*\\n", "");
            less = all.substring(0, all.indexOf("  # where the stubs"));
        } else if (gone.equals("flange:")) {
            less = text.replaceAll("(?m)^ +flange: .*\\n", "");
        } else {
            less = swap(text, gone, "");
        }
        Finding found = of(less, id);
        assertThat(found.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(found.note().metric()).contains(word);
    }

    /** By hand: the frame pin's force over the plates, and a twentieth of it 50 mm above the weld. */
    @Test
    void lugPushedFromTheSide() throws IOException, CannotComputeException {
        double force = of(demo(), "push").demand();
        double area = 2 * 0.070 * 0.010;
        double byHand = force / area + 6 * 0.05 * force * 0.050 / (area * 0.010);
        assertThat(of(demo(), "lug-side/frame-pin").demand()).isCloseTo(byHand, within(1e-6 * byHand));
    }

    /** By hand: 5 deg asked for is steeper than the ground; rise over run against a friction of 0.4. */
    @Test
    void skidding() throws IOException, CannotComputeException {
        Finding f = of(demo(), "skid");
        assertThat(f.demand()).isCloseTo(Math.tan(Math.toRadians(5)), within(1e-12));
        assertThat(f.capacity()).isEqualTo(0.4);
        assertThat(of(demo("slope: 5 deg", "slope: 15 deg"), "skid").verdict()).isEqualTo(Verdict.FAIL);
    }

    /** Half of the charge at 0 F. Source: a public page on batteries. */
    @Test
    void batteryInTheCold() throws IOException, CannotComputeException {
        Finding f = of(demo("lowest: -5 degC", "lowest: -17.8 degC"), "cold/battery");
        assertThat(f.capacity()).isCloseTo(80 * 3600 * 0.5 * 0.5, within(1e-6));
    }

    /** The grade of an oil is its viscosity at 40 C (ISO 3448). */
    @Test
    void oilInTheCold() throws CannotComputeException, IOException {
        String hopper = Files.readString(Path.of("geometry/grit-hopper.yaml")).replaceFirst("(?m)^cold:.*\n", "");
        Finding warm = of(hopper + "cold: {lowest: 40 degC, oil: 32, thickest: 50 mm2/s}\n", "cold/oil");
        assertThat(warm.demand()).isCloseTo(32e-6, within(1e-12));
        Finding frost = of(hopper + "cold: {lowest: -25 degC, oil: 68}\n", "cold/oil");
        assertThat(frost.verdict()).isEqualTo(Verdict.FAIL);
    }

    /**
     * A square thread of 30 mm mean diameter and 8 mm lead with friction 0.08 runs back by itself. Source: Shigley, Mechanical
     * Engineering Design, example 8-1 (from memory): the thread's lowering torque is negative.
     */
    @Test
    void screwRunsBack() throws IOException, CannotComputeException {
        String screw = "{kind: electric, closed: 690 mm, stroke: 620 mm, push: 12 kN, pull: 12 kN,"
                + " screw: {diameter: 30 mm, lead: LEAD, friction: 0.08, flank: 0 deg}}";
        String design = demo("actuator: mid-12-long}", "actuator: " + screw + "}");
        double limit = 0.08 * Math.PI * 30;
        assertThat(of(swap(design, "LEAD", "8 mm"), "back-drive").verdict()).isEqualTo(Verdict.FAIL);
        assertThat(of(swap(design, "LEAD", limit * (1 - 1e-9) + " mm"), "back-drive")
                        .verdict())
                .isEqualTo(Verdict.CLOSE);
        assertThat(of(swap(design, "LEAD", limit * (1 + 1e-9) + " mm"), "back-drive")
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(of(swap(design, "LEAD", "8 mm", "flank: 0 deg}}", "flank: 0 deg}, brake: yes}"), "back-drive")
                        .verdict())
                .isEqualTo(Verdict.PASS);
    }

    /** A pin 10 mm off its plate, a body 65 mm thick: it swings asin(10 / 32.5) either side. */
    @Test
    void bracketStopsTheSwing() throws IOException, CannotComputeException {
        Finding f = of(demo("height: 50 mm", "height: 10 mm"), "swing/frame-pin");
        assertThat(f.capacity()).isCloseTo(Math.asin(10 / 32.5), within(1e-12));
        assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    }

    /** Two pins with 1 mm each, over the least lever arm, at the rim. */
    @Test
    void playAtTheRim() throws IOException, CannotComputeException {
        Finding f = of(demo(), "play");
        double arm = Analyser.analyse(Examples.read(demo())).poses().stream()
                .mapToDouble(p -> Math.abs(p.arm()))
                .min()
                .orElseThrow();
        // The furthest of the drum's inside from the pivot lies near its front head.
        assertThat(f.demand() * arm / 0.002).isBetween(1.3, 1.6);
        String enough = "wear: {rattle: " + f.demand() * 1000 * (1 + 1e-9) + " mm}\n";
        String less = "wear: {rattle: " + f.demand() * 1000 * (1 - 1e-9) + " mm}\n";
        assertThat(of(demo() + enough, "play").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(of(demo() + less, "play").verdict()).isEqualTo(Verdict.FAIL);
    }

    /** The tank alone is as heavy on the road as its mass; a high centre needs a tie, and an actuator is none. */
    @Test
    void onTheRoad() throws IOException, CannotComputeException {
        String high = "{name: cradle, mass: 900 kg, centre: [100 mm, 2500 mm, 0 mm]}";
        String design = demo("{name: cradle, mass: 52 kg, centre: [100 mm, 230 mm, 0 mm]}", high);
        assertThat(of(design, "road/lift").verdict()).isEqualTo(Verdict.FAIL);
        String tied = swap(
                design,
                "road: {loaded: no}",
                "road: {loaded: no, lock: [-500 mm, 200 mm, 0 mm], rating: 30 kN, locks: 2}");
        Finding held = of(tied, "road/lift");
        assertThat(held.capacity() - of(design, "road/lift").capacity()).isCloseTo(2 * 30e3 * 1.1, within(1e-3));
        assertThat(held.verdict()).isEqualTo(Verdict.PASS);
        assertThat(of(swap(tied, ", rating: 30 kN", ""), "road/lift").verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }

    /** What wear takes off a pin is off before its strength is worked out; the load stays. */
    @Test
    void wearIsTakenOffFirst() throws IOException, CannotComputeException {
        double force = of(demo(), "push").demand();
        PinJoint worn = new PinJoint(0.023, PinJoint.Shear.DOUBLE, 0.025, 0.010, 0.001, 235e6);
        double stress = PinStress.combined(worn, force);
        String text = demo() + "wear: {pin: 2 mm, wall: 1 mm}\n";
        assertThat(of(text, "pin/frame-pin").demand()).isCloseTo(stress, within(1e-6 * stress));
        assertThat(of(text, "shell/tank-pin").demand())
                .isGreaterThan(1.1 * of(demo(), "shell/tank-pin").demand());
        assertThat(of(text, "cross-member/stress").demand())
                .isGreaterThan(1.1 * of(demo(), "cross-member/stress").demand());
        assertThat(of(demo() + "wear: {wall: 5 mm}\n", "cross-member/stress").verdict())
                .isEqualTo(Verdict.FAIL);
    }

    /** Category 36 at 2 million, its knee at 5 million and its cut-off: EN 1993-1-9 7.1; and the way there and back. */
    @Test
    void rangeThatIsBorne() {
        FatigueCurve root = new FatigueCurve(36e6, false, 1);
        assertThat(root.bearable(2e6)).isCloseTo(36e6, within(1e-3));
        assertThat(root.bearable(5e6)).isCloseTo(0.737 * 36e6, within(0.001 * 36e6));
        assertThat(root.bearable(1e8)).isCloseTo(0.549 * 0.737 * 36e6, within(0.001 * 36e6));
        assertThat(root.bearable(1e10)).isEqualTo(root.cutOff());
        for (double n : new double[] {7500, 1e5, 2e6, 4.9e6, 6e6, 5e7}) {
            assertThat(root.cycles(root.bearable(n))).isCloseTo(n, within(1e-6 * n));
        }
    }

    /** More dumps than the weld bears: cubic below 5 million, so that the limit follows by hand. */
    @Test
    void fatigueFailsAtItsLife() throws IOException, CannotComputeException {
        Finding f = of(demo(), "fatigue/weld-frame-pin");
        // over half a million dumps: below the knee at 5 million, where the rule is cubic
        double life = 2e6 * Math.pow(36e6 / 1.35 / f.demand(), 3);
        String often = "use: {dumps-per-hour: 900, hours-a-year: ";
        double needed = life / 900 / 15;
        String plain = "use: {dumps-per-hour: 2, hours-a-year: 250, years: 15}";
        assertThat(of(demo(plain, often + needed * (1 - 1e-9) + ", years: 15}"), f.id())
                        .verdict())
                .isEqualTo(Verdict.CLOSE);
        assertThat(of(demo(plain, often + needed * (1 + 1e-9) + ", years: 15}"), f.id())
                        .verdict())
                .isEqualTo(Verdict.FAIL);
    }

    /**
     * A closed box, 1 m each way, brim full: its bottom as a square plate under even pressure. Source: S. Timoshenko and S.
     * Woinowsky-Krieger, tables 8 and 35 (from memory): 6 x 0.0513 when held at the edges; the twist at the corners of one that
     * is free to turn is up to a quarter more.
     */
    @Test
    void flatBottom() throws CannotComputeException {
        Finding f = of(Examples.BOX, "flat-wall/bottom-1");
        double pressure = 1400 * 9.80665 * 1.0;
        double held = 6 * 0.0513 * pressure / (0.004 * 0.004);
        assertThat(f.demand()).isBetween(held * 0.999, 1.26 * held);
        String stiff =
                "yield: 700 MPa, stiffeners: {spacing: 250 mm, thickness: 6 mm, height: 60 mm}, rim: {height: 50 mm,"
                        + " width: 50 mm, wall: 4 mm}";
        String stiffened = swap(Examples.BOX, "yield: 700 MPa", stiff);
        assertThat(of(stiffened, "flat-wall/bottom-1").demand()).isLessThan(0.3 * f.demand());
        assertThat(of(stiffened, "flat-wall/bottom-1-stiffener").verdict()).isNotEqualTo(Verdict.NOT_CHECKED);
    }

    /** A tank filled by suction without a vent holds its door shut; with one the shell is asked. */
    @Test
    void filledBySuction() throws IOException, CannotComputeException {
        String suction = "suction: 60 kPa\n  vent: {diameter: 120 mm}";
        Finding shell = of(demo("vent: {diameter: 120 mm}", suction), "vacuum/shell");
        assertThat(shell.demand()).isEqualTo(60e3);
        assertThat(shell.verdict()).isEqualTo(Verdict.PASS);
        assertThat(of(demo("vent: {diameter: 120 mm}", "suction: 60 kPa"), "vacuum/door")
                        .verdict())
                .isEqualTo(Verdict.FAIL);
    }

    /** The shell's own value at the limit of a suction. */
    @Test
    void shellCavesInAtAThird() throws IOException, CannotComputeException {
        String thin = "wall: {thickness: 1.5 mm, density: 7850 kg/m3}";
        String[] swaps = {"wall: {thickness: 5 mm, density: 7850 kg/m3}", thin, "vent: {diameter: 120 mm}", "SUCTION"};
        double allowed = of(demo(swap2(swaps, "suction: 1 kPa\n  vent: {diameter: 120 mm}")), "vacuum/shell")
                .capacity();
        String at = "suction: %s Pa\n  vent: {diameter: 120 mm}";
        assertThat(of(demo(swap2(swaps, swap(at, "%s", "" + allowed * (1 - 1e-9)))), "vacuum/shell")
                        .verdict())
                .isEqualTo(Verdict.CLOSE);
        assertThat(of(demo(swap2(swaps, swap(at, "%s", "" + allowed * (1 + 1e-9)))), "vacuum/shell")
                        .verdict())
                .isEqualTo(Verdict.FAIL);
    }

    private static String[] swap2(String[] swaps, String last) {
        String[] all = swaps.clone();
        all[all.length - 1] = last;
        return all;
    }

    /** Silence is not safety: the list is there and each line says something. */
    @Test
    void whatNoCheckKnows() {
        assertThat(NotKnown.all())
                .hasSizeGreaterThan(10)
                .allMatch(l -> Objects.requireNonNull(l).length() > 40);
    }
}
