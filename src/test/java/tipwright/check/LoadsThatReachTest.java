// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.analysis.Wind;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.geometry.Vec3;

/**
 * Part fills, wind, ground any way round and upset loads reach the checks. Every figure is worked out a second time, straight from
 * statics on a box of 1 m and a cloud of small cells, apart from the program.
 */
class LoadsThatReachTest {
    private static final double G = 9.80665;
    private static final double EMPTY = 39.25;
    private static final int CELLS = 120;
    private static final double PX = 0.15;
    private static final double PY = 0.45;

    /** A box that is shut, its pivot low down near the dump end, nothing rubs, all else is strong. */
    private static final String SHUT = swap(
                    Examples.BOX,
                    "at: [400 mm, 400 mm]",
                    "at: [150 mm, 450 mm]",
                    "wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}",
                    "mass: {empty: 39.25 kg, centre: [0 mm, 900 mm, 0 mm]}",
                    "push: 12 kN, pull: 12 kN",
                    "push: 40 kN, pull: 40 kN, hold: 60 kN",
                    "c0: 19 kN",
                    "c0: 190 kN",
                    "tilt: {to: 80 deg}",
                    "tilt: {to: 15 deg}")
            + "friction: {pins: 0, pivot: 0}\n";

    private static final String HELD = SHUT + "cases: {skip: [draining, heaped, caked, heel, settled, slid]}\n";

    private static Finding of(List<Finding> all, String id) {
        return all.stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
    }

    /** Length of the actuator at a tilt, m: its pins at -0.6, -0.5 and, on the tank, -0.45, 0.4. */
    private static double length(double tilt) {
        double x = -0.45 - PX;
        double y = 0.4 - PY;
        double px = PX + Math.cos(tilt) * x + Math.sin(tilt) * y;
        double py = PY - Math.sin(tilt) * x + Math.cos(tilt) * y;
        return Math.hypot(px + 0.6, py + 0.5);
    }

    private static double arm(double tilt) {
        return (length(tilt + 1e-6) - length(tilt - 1e-6)) / 2e-6;
    }

    /** Moment of a load about the pivot against tipping, N m, gravity leaning by a grade (dump side lower). */
    private static double moment(double kg, double x, double y, double tilt, double grade) {
        double rx = Math.cos(tilt) * (x - PX) + Math.sin(tilt) * (y - PY);
        double ry = -Math.sin(tilt) * (x - PX) + Math.cos(tilt) * (y - PY);
        return -kg * G * (rx * Math.cos(grade) + ry * Math.sin(grade));
    }

    /** The empty tank, its weight and its centre as given. */
    private static double empty(double tilt, double grade) {
        return moment(EMPTY, 0, 0.9, tilt, grade);
    }

    private static double liquid(double share, double tilt) {
        return liquid(share, tilt, 0);
    }

    /** Liquid of a share of the box with a level surface: the lowest cells. */
    private static double liquid(double share, double tilt, double grade) {
        double[][] cells = new double[CELLS * CELLS][];
        for (int i = 0; i < cells.length; i++) {
            double x = -0.5 + (i % CELLS + 0.5) / CELLS;
            double y = 0.5 + (i / CELLS + 0.5) / CELLS;
            cells[i] = new double[] {-Math.sin(tilt + grade) * x + Math.cos(tilt + grade) * y, x, y};
        }
        Arrays.sort(cells, Comparator.comparingDouble(c -> c[0]));
        double each = 1400.0 / cells.length;
        double sum = 0;
        for (int i = 0; i < Math.round(share * cells.length); i++) {
            sum += moment(each, cells[i][1], cells[i][2], tilt, grade);
        }
        return sum;
    }

    private static double force(double share, double tilt) {
        return (liquid(share, tilt) + empty(tilt, 0)) / arm(tilt);
    }

    @Test
    void aPartFillPullsWhereFullAndEmptyDoNot() throws Exception {
        double end = Math.toRadians(15);
        double most = 0;
        double at = 0;
        for (int percent = 1; percent <= 100; percent++) {
            double pull = -force(percent / 100.0, end);
            at = pull > most ? percent / 100.0 : at;
            most = Math.max(most, pull);
        }
        assertThat(force(1, end)).isPositive();
        assertThat(empty(end, 0) / arm(end)).isPositive();
        assertThat(most).isGreaterThan(100);
        Result result = Checker.check(Examples.read(HELD));
        Finding pull = of(result.findings(), "pull");
        assertThat(pull.demand()).isCloseTo(most, within(0.03 * most));
        assertThat(pull.tilt()).isCloseTo(end, within(1e-9));
        assertThat(pull.loadCase()).startsWith("held, ").endsWith(" % full");
        double told = Double.parseDouble(pull.loadCase().replace("held, ", "").replace(" % full", "")) / 100;
        assertThat(told).isCloseTo(at, within(0.04));
    }

    @Test
    void theFillsThatDoNotPassAreABandAndTheTankIsOnlyFilledUpToIt() throws Exception {
        double end = Math.toRadians(15);
        Design weak = Examples.read(swap(HELD, "pull: 40 kN", "pull: 60 N"));
        Result result = Checker.check(weak);
        HowFull full = Objects.requireNonNull(result.howFull());
        HowFull.Band band = full.bands().get(0);
        assertThat(full.fill()).isEqualTo(band.from());
        assertThat(full.limit()).isEqualTo("Actuator: pull");
        double factor = weak.factors().service();
        assertThat(-force(band.from() - 0.01, end)).isLessThan(60 / factor);
        assertThat(-force(band.from() + 0.015, end)).isGreaterThan(60 / factor);
        assertThat(-force(band.to() - 0.015, end)).isGreaterThan(60 / factor);
        assertThat(-force(Math.min(1, band.to() + 0.015), end)).isLessThan(60 / factor);
        assertThat(of(result.findings(), "pull").verdict()).isEqualTo(Verdict.FAIL);
    }

    /** Height of the middle of what the box shows to wind along x, over the pivot, and the area: the far face and the bottom. */
    private static double blow(double tilt, double pressure) {
        double c = Math.cos(tilt);
        double s = Math.sin(tilt);
        double back = -s * (-0.5 - PX) + c * (1 - PY);
        double bottom = -s * (0 - PX) + c * (0.5 - PY);
        return pressure * (c * back + s * bottom);
    }

    @Test
    void windBlowsAnEmptyTankOverCentre() throws Exception {
        String empty = SHUT + "cases: {skip: [held, draining, heaped, caked, heel, settled, slid]}\n";
        assertThat(of(Checker.asFilled(Examples.read(empty)).findings(), "pull").demand())
                .isZero();
        List<Finding> found = Checker.asFilled(Examples.read(empty + "site: {wind-pressure: 2 kPa}\n"))
                .findings();
        double most = 0;
        for (int i = 0; i <= 15; i++) {
            double tilt = Math.toRadians(i);
            most = Math.max(most, (blow(tilt, 2000) - empty(tilt, 0)) / arm(tilt));
        }
        assertThat(most).isGreaterThan(100);
        Finding pull = of(found, "pull");
        assertThat(pull.demand()).isCloseTo(most, within(1e-6 * most));
        assertThat(pull.loadCase()).isEqualTo("empty, wind to +x");
        Finding over = of(found, "over-centre");
        assertThat(over.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(over.demand()).isCloseTo(most, within(1e-6 * most));
    }

    @Test
    void windFromTheSideIsBorneByTheBearings() throws Exception {
        Analysis calm = Analyser.analyse(Examples.read(HELD + "site: {wind-pressure: 500 Pa}\n"));
        Wind side = Wind.of(calm.design()).get(2);
        Analysis blown = Analyser.blown(calm, side);
        for (int i = 0; i < calm.poses().size(); i += 7) {
            Row before = calm.cases().get(0).rows().get(i);
            Row after = blown.cases().get(0).rows().get(i);
            Vec3 one = after.rest()
                    .bearings()
                    .get(0)
                    .minus(before.rest().bearings().get(0));
            Vec3 two = after.rest()
                    .bearings()
                    .get(1)
                    .minus(before.rest().bearings().get(1));
            double height = 0.55 * Math.cos(before.tilt()) + PX * Math.sin(before.tilt());
            double along = 0.55 * Math.sin(before.tilt()) - PX * Math.cos(before.tilt());
            assertThat(one.z() + two.z()).isCloseTo(500, within(1e-6));
            assertThat(two.y()).isCloseTo(-500 * height, within(1e-6));
            assertThat(one.y()).isCloseTo(500 * height, within(1e-6));
            assertThat(two.x()).isCloseTo(-500 * along, within(1e-6));
            assertThat(after.rest().force()).isCloseTo(before.rest().force(), within(1e-6));
        }
    }

    @Test
    void groundAnyWayRoundReachesThePush() throws Exception {
        double slope = Math.toRadians(5);
        double most = 0;
        for (int i = 0; i <= 3; i++) {
            double tilt = Math.toRadians(5 * i);
            for (int percent = 80; percent <= 100; percent++) {
                double all = liquid(percent / 100.0, tilt, -slope) + empty(tilt, -slope);
                most = Math.max(most, all / arm(tilt));
            }
        }
        String brim = swap(HELD, "slurry: {fill: 100 %", "slurry: {fill: 99.99 %");
        Finding push = of(
                Checker.asFilled(Examples.read(brim + "site: {any-way: 5 deg}\n"))
                        .findings(),
                "push");
        assertThat(push.demand()).isCloseTo(most, within(2e-3 * most));
        assertThat(push.loadCase()).startsWith("held, ground down to the far side");
    }

    @Test
    void rainUpToTheRimAndAFrozenLoadReachThePush() throws Exception {
        Design part = Examples.read(swap(HELD, "fill: 100 %", "fill: 70 %"));
        List<Finding> found = Checker.asFilled(part).findings();
        double brim = moment(1400 * 0.7 + 1000 * 0.3, 0, 1, 0, 0) + empty(0, 0);
        Finding rain = of(found, "what-if/full-of-rainwater");
        assertThat(rain.note().metric()).contains("Actuator: push");
        assertThat(rain.demand()).isCloseTo(brim / arm(0), within(1e-6 * Math.abs(brim)));
        assertThat(rain.loadCase()).isEqualTo("brim");
        double most = 0;
        for (int i = 0; i <= 15; i++) {
            double tilt = Math.toRadians(i);
            double block = moment(1400 * 0.7, 0, 0.85, tilt, 0) + empty(tilt, 0);
            most = Math.max(most, block / arm(tilt));
        }
        assertThat(of(found, "what-if/frozen-solid").demand()).isCloseTo(most, within(2e-3 * most));
    }

    /** Half full, a level surface on a slope s shifts the liquid by b2 tan s / 12 h to the low side and b2 tan2 s / 24 h up. */
    @Test
    void onASlopeTheSurfaceIsLevelAnew() throws Exception {
        String half = swap(HELD, "fill: 100 %", "fill: 50 %", "tilt: {to: 15 deg}", "tilt: {to: 0.1 deg}")
                + "frame: {mass: 400 kg, centre: [0 mm, -200 mm, 0 mm]}\n"
                + "ground: {y: -700 mm}\n"
                + "supports: {outline: [[-2 m, -500 mm], [2 m, -500 mm], [2 m, 500 mm], [-2 m, 500 mm]],"
                + " slope: 3 deg}\n";
        double low = 0;
        double high = 0.5;
        while (high - low > 1e-9) {
            double s = (low + high) / 2;
            double shift = Math.tan(s) / (12 * 0.5);
            double rise = Math.tan(s) * Math.tan(s) / (24 * 0.5);
            double keep = Math.cos(s) * (400 * 0.5 + EMPTY * 0.5 + 700 * (0.5 - shift));
            double turn = Math.sin(s) * (400 * 0.5 + EMPTY * (0.9 + 0.7) + 700 * (0.75 + rise + 0.7));
            if (1.5 * turn < keep) {
                low = s;
            } else {
                high = s;
            }
        }
        Finding way = of(Checker.asFilled(Examples.read(half)).findings(), "tip-over/any-way-round");
        // the worst of all fills is told, so the one as stated is asked for by itself
        Finding stated = of(Checks.run(Analyser.analyse(Examples.read(half))), "tip-over/any-way-round");
        assertThat(stated.capacity()).isCloseTo(low, within(Math.toRadians(0.05)));
        assertThat(way.capacity()).isLessThanOrEqualTo(stated.capacity() + 1e-9);
    }

    /** Ground down to the far side adds height times its sine to the lever of a block of 600 kg; the current follows the force. */
    @Test
    void theMotorDrawsMoreOnGroundAnyWayRound() throws Exception {
        String yaml = swap(
                        SHUT,
                        "hold: 60 kN",
                        "hold: 60 kN, speed: {no-load: 20 mm/s, rated: 15 mm/s}, voltage: 24 V, current: {no-load: 4 A, rated: 60 A}",
                        "fill: 100 %, density: 1400 kg/m3",
                        "fill: 1 %, density: 1000 kg/m3")
                + "supply: {kind: battery, voltage: 24 V, fuse: 80 A}\n"
                + "cases: {add: [{name: block, mass: 600 kg, centre: [-100 mm, 1.2 m, 0 mm]}]}\n"
                + "site: {any-way: 6 deg}\n";
        double slope = Math.toRadians(6);
        double most = 0;
        for (double tilt = 0; tilt <= Math.toRadians(15); tilt += 1e-3) {
            double r = (length(tilt + 1e-6) - length(tilt - 1e-6)) / 2e-6;
            double moment = 0;
            for (double[] m : new double[][] {{EMPTY, 0, 0.9}, {600, -0.1, 1.2}}) {
                double x = Math.cos(tilt) * (m[1] - PX) + Math.sin(tilt) * (m[2] - PY);
                double y = -Math.sin(tilt) * (m[1] - PX) + Math.cos(tilt) * (m[2] - PY);
                moment += m[0] * G * (y * Math.sin(slope) - x * Math.cos(slope));
            }
            most = Math.max(most, moment / r);
        }
        List<Finding> all = Checker.findings(Examples.read(yaml));
        Finding current = of(all, "electrical/current");
        assertThat(current.demand()).isCloseTo(4 + 56 * most / 40e3, within(1e-3));
        assertThat(current.loadCase()).isEqualTo("block, ground down to the far side");
        assertThat(of(all, "electrical/fuse").demand()).isCloseTo(current.demand(), within(1e-9));
    }
}
