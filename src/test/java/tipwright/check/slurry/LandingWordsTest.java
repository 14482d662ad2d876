// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.key.Copy;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Outflow;
import tipwright.geometry.Vec3;
import tipwright.load.Emptying;
import tipwright.quantity.Text;

/** What is said of where the load lands and of what stays in, and where nothing can be said. */
class LandingWordsTest {
    private static final double G = 9.80665;
    private static final String TOP =
            "- {name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m]," + " normal: y}";
    private static final String GATE = "- {name: gate, rim: rectangle, width: 400 mm, height: 200 mm, centre: [500 mm,"
            + " 700 mm, 0 mm], normal: x}";
    private static final String LATE =
            "- {name: late one, rim: rectangle, width: 400 mm, height: 200 mm, centre: [500 mm,"
                    + " 1 m, 0 mm], normal: x, opens-at: %s deg}";
    private static final String PIT = "receiver: {near: [450 mm, -600 mm], far: [6 m, -600 mm]}\n";
    private static final String BOX = swap(
            Examples.BOX,
            "80 deg",
            "20 deg",
            "repose: 30 deg",
            "repose: 30 deg, release: 10 deg, wall-friction: 3 deg");
    private static final Check LANDING = new LandingCheck();

    private static Analysis analysis(String openings, String more) throws CannotComputeException {
        return Analyser.analyse(Examples.read(swap(BOX, TOP, openings) + more));
    }

    private static List<Finding> landing(String openings, String more) throws CannotComputeException {
        return LANDING.run(analysis(openings, more));
    }

    private static Finding of(List<Finding> all, String part) {
        return all.stream()
                .filter(f -> f.id().equals("landing/" + part))
                .findFirst()
                .orElseThrow(() -> new AssertionError(all.toString()));
    }

    @Test
    void whatIsMissingIsNamed() throws CannotComputeException {
        List<Finding> nowhere = landing(GATE, "");
        assertThat(nowhere).hasSize(1);
        assertThat(nowhere.get(0).note()).isEqualTo(Text.words("receiver missing"));
        List<Finding> shut = landing("[]", PIT);
        assertThat(shut).hasSize(1);
        assertThat(shut.get(0).missing()).isTrue();
        assertThat(shut.get(0).note()).isEqualTo(Text.words("tank.openings missing"));
        Finding jet =
                of(landing(GATE, PIT + "cases: {skip: [held, settled, slid, caked, heaped, empty, heel]}\n"), "jet");
        assertThat(jet.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(jet.missing()).isFalse();
        assertThat(jet.note())
                .isEqualTo(Text.words("every load case in which all of it stays in is under cases: skip:"));
    }

    @Test
    void eachWayOutHasItsWords() throws CannotComputeException {
        List<Finding> all = landing(GATE, PIT);
        assertThat(all).extracting(Finding::id).containsExactly("landing/running-over", "landing/jet", "landing/cake");
        assertThat(all)
                .extracting(Finding::title)
                .containsExactly(
                        "Load: landing of the last of it over the lip",
                        "Load: landing of the jet",
                        "Load: landing of the cake that lets go");
        assertThat(LANDING.title("")).isEqualTo("Load: landing in the pit or bin");
        assertThat(LANDING.says(all.get(0)).metric()).startsWith("the last of it over the lip lands ");
        assertThat(LANDING.says(all.get(1)).metric()).startsWith("the jet lands ");
        assertThat(LANDING.says(all.get(2)).metric()).startsWith("the cake that lets go lands ");
    }

    /** What opens past the last tilt lets nothing out; what opens with nothing behind it throws no jet. */
    @Test
    void anOpeningCountsFromItsOwnTilt() throws CannotComputeException {
        List<Finding> all = landing(GATE + "\n    " + LATE.formatted("21"), PIT);
        Finding never = of(all, "late-one-running-over");
        assertThat(never.note()).isEqualTo(Text.words("the opening is not open within the tilt range"));
        assertThat(of(all, "late-one-jet").note())
                .isEqualTo(Text.words("the opening is not open within the tilt range"));
        assertThat(of(all, "gate-jet").tilt()).isZero();
        List<Finding> last = landing(GATE + "\n    " + LATE.formatted("20"), PIT);
        assertThat(of(last, "late-one-running-over").tilt()).isCloseTo(Math.toRadians(20), within(1e-9));
        assertThat(of(last, "late-one-jet").tilt()).isCloseTo(Math.toRadians(20), within(1e-9));
        String high = swap(LATE.formatted("0"), "500 mm, 1 m", "500 mm, 1.3 m");
        List<Finding> dry = landing(GATE + "\n    " + high, swap(PIT, "450 mm", "400 mm"));
        assertThat(dry).extracting(Finding::id).contains("landing/late-one-jet");
        Analysis low = Analyser.analyse(Examples.read(
                swap(BOX, TOP, GATE + "\n    " + high, "fill: 100 %", "fill: 40 %", "20 deg", "5 deg") + PIT));
        assertThat(LANDING.run(low)).extracting(Finding::id).doesNotContain("landing/late-one-jet");
    }

    private static Opening floor(double opensAt, Vec3... rim) {
        return new Opening(
                "slot",
                Opening.Rim.POLYGON,
                null,
                null,
                null,
                List.of(rim),
                null,
                null,
                opensAt,
                null,
                new Outflow(0.62, 1));
    }

    private static Opening end(double opensAt) {
        return floor(
                opensAt,
                new Vec3(0.5, 0.5, 0.25),
                new Vec3(0.5, 0.5, -0.25),
                new Vec3(0.5, 0.75, -0.25),
                new Vec3(0.5, 0.75, 0.25));
    }

    /** It lets go at 10 degrees, all of the 1 m behind the lip, through what is open then and does not face the other way. */
    @Test
    void aCakeLeavesThroughWhatIsOpenWhereItSlides() throws CannotComputeException {
        Analysis analysis = analysis(GATE, PIT);
        double release = Math.toRadians(10);
        CakeFlight flight = Objects.requireNonNull(CakeFlight.of(analysis, end(release)));
        assertThat(flight.length()).isCloseTo(1, within(1e-12));
        assertThat(flight.row().tilt()).isCloseTo(release, within(1e-9));
        assertThat(flight.before().tilt()).isBetween(release - 1e-6, release - 1e-8);
        assertThat(CakeFlight.of(analysis, end(release + 1e-6))).isNull();
        Opening back = floor(
                0,
                new Vec3(-0.5, 0.5, -0.25),
                new Vec3(-0.5, 0.5, 0.25),
                new Vec3(-0.5, 0.75, 0.25),
                new Vec3(-0.5, 0.75, -0.25));
        assertThat(back.outward().x()).isEqualTo(-1);
        assertThat(CakeFlight.of(analysis, back)).isNull();
        Opening drain = floor(
                0,
                new Vec3(-0.25, 0.5, -0.25),
                new Vec3(0.25, 0.5, -0.25),
                new Vec3(0.25, 0.5, 0.25),
                new Vec3(-0.25, 0.5, 0.25));
        assertThat(Objects.requireNonNull(CakeFlight.of(analysis, drain)).length())
                .isCloseTo(0.75, within(1e-12));
        Analysis none = analysis(GATE, PIT + "cases: {skip: [caked]}\n");
        assertThat(CakeFlight.of(none, end(0))).isNull();
    }

    /** The cake lies 400/1650/0.6 deep, over a gate of 0.2 m: its top leaves from the gate's upper edge. v^2 = 2 g L (sin a - tan b cos a). */
    @Test
    void aCakeIsNoHigherThanTheOpening() throws CannotComputeException {
        Finding cake = of(landing(GATE, PIT), "cake");
        double a = Math.toRadians(10);
        double v = Math.sqrt(2 * G * (Math.sin(a) - Math.tan(Math.toRadians(3)) * Math.cos(a)));
        double deep = 400 / 1650.0 / 0.6;
        double near = Double.POSITIVE_INFINITY;
        for (double high : new double[] {0.6, 0.6 + Math.min(0.2, deep - 0.1)}) {
            double x = 0.4 + 0.1 * Math.cos(a) + (high - 0.4) * Math.sin(a);
            double y = 0.4 - 0.1 * Math.sin(a) + (high - 0.4) * Math.cos(a);
            double down = v * Math.sin(a);
            double t = (-down + Math.sqrt(down * down + 2 * G * (y + 0.6))) / G;
            near = Math.min(near, x + v * Math.cos(a) * t);
        }
        assertThat(cake.capacity()).isCloseTo(near - 0.45, within(1e-6));
        Finding thick = of(landing(swap(GATE, "700 mm", "800 mm", "200 mm", "500 mm"), PIT), "cake");
        assertThat(thick.verdict()).isEqualTo(Verdict.PASS);
    }

    /** Its top flies farther: a gate of 0.5 m lets out the cake as deep as it lies over the lip, one of 0.2 m no more than its own height. */
    @Test
    void theTopOfACakeFliesFarther() throws CannotComputeException {
        String near = "receiver: {near: [-5 m, -600 mm], far: [1200 mm, -600 mm]}\n";
        double a = Math.toRadians(10);
        double v = Math.sqrt(2 * G * (Math.sin(a) - Math.tan(Math.toRadians(3)) * Math.cos(a)));
        double deep = 400 / 1650.0 / 0.6;
        for (double height : new double[] {0.2, 0.5}) {
            double high = 0.2 + Math.min(height, deep - 0.1);
            double x = 0.4 + 0.1 * Math.cos(a) + high * Math.sin(a);
            double y = 0.4 - 0.1 * Math.sin(a) + high * Math.cos(a);
            double down = v * Math.sin(a);
            double t = (-down + Math.sqrt(down * down + 2 * G * (y + 0.6))) / G;
            String gate = height < 0.3
                    ? GATE
                    : swap(GATE, "height: 200 mm", "height: 500 mm", "700 mm, 0 mm", "850 mm, 0 mm");
            assertThat(of(landing(gate, near), "cake").capacity())
                    .isCloseTo(1.2 - x - v * Math.cos(a) * t, within(1e-6));
        }
    }

    /** 60 % full, the open top lets out nothing before tan a = 2 x 0.4: from 39 degrees on the lip lies 0.4 m + 0.1 cos a + 1.1 sin a out. */
    @Test
    void nothingRunsOverBeforeTheSurfaceReachesTheLip() throws CannotComputeException {
        String open = swap(Examples.BOX, "fill: 100 %", "fill: 60 %", "80 deg", "45 deg")
                + "receiver: {near: [1 m, -600 mm], far: [6 m, -600 mm]}\n";
        Finding over = of(LANDING.run(Analyser.analyse(Examples.read(open))), "running-over");
        double a = Math.toRadians(39);
        assertThat(over.tilt()).isCloseTo(a, within(1e-9));
        assertThat(over.capacity()).isCloseTo(0.1 * Math.cos(a) + 1.1 * Math.sin(a) - 0.6, within(1e-9));
        Finding any =
                of(LANDING.run(Analyser.analyse(Examples.read(open + "cases: {skip: [draining]}\n"))), "running-over");
        assertThat(any.tilt()).isZero();
        assertThat(any.capacity()).isCloseTo(-0.5, within(1e-9));
    }

    private static List<Finding> stays(Emptying emptying) throws CannotComputeException {
        Analysis a = analysis(GATE, "");
        return new EmptiesCheck().run(Copy.with(a, "emptying", emptying));
    }

    /** 2 % may stay. */
    @Test
    void whatStaysInIsToldWithTheTiltThatEmptiesIt() throws CannotComputeException {
        List<Finding> all = stays(new Emptying(
                new Emptying.Residue(0.01, 0.01, Math.toRadians(15.3)), new Emptying.Residue(0.2, 0.5, null)));
        assertThat(all).extracting(Finding::id).containsExactly("empties/liquid", "empties/settled-solids");
        assertThat(all.get(0).verdict()).isEqualTo(Verdict.PASS);
        assertThat(all.get(0).utilisation()).isCloseTo(0.5, within(1e-12));
        assertThat(all.get(0).tilt()).isCloseTo(Math.toRadians(20), within(1e-9));
        assertThat(all.get(0).title()).isEqualTo("Tank: what stays in, liquid");
        assertThat(all.get(0).note().metric()).isEqualTo("empty from 15.3 deg of tilt on");
        assertThat(all.get(1).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(all.get(1).note().metric()).isEqualTo("no tilt up to 180 deg empties it that far");
        EmptiesCheck check = new EmptiesCheck();
        assertThat(check.says(all.get(1)).metric())
                .isEqualTo("left in the tank at full tilt: 50 % of the settled solids, 2 % allowed");
        assertThat(check.takes(all.get(1)).metric())
                .isEqualTo(
                        "it has to tilt further, have a steeper floor or let the load out lower down (no tilt up to 180"
                                + " deg empties it that far)");
        assertThat(check.title("")).isEqualTo("Tank: what stays in");
    }

    @Test
    void whatIsEmptyAnywayPasses() throws CannotComputeException {
        List<Finding> all = stays(new Emptying(new Emptying.Residue(0, 0, 0.0), null));
        assertThat(all).hasSize(1);
        assertThat(all.get(0).utilisation()).isZero();
        assertThat(all.get(0).capacity()).isCloseTo(0.02, within(1e-12));
        assertThat(all.get(0).verdict()).isEqualTo(Verdict.PASS);
        assertThat(all.get(0).note().metric()).isEqualTo("empty before it tilts");
        List<Finding> shut = new EmptiesCheck().run(analysis("[]", ""));
        assertThat(shut).hasSize(1);
        assertThat(shut.get(0).note()).isEqualTo(Text.words("tank.openings missing: nothing can leave"));
        assertThat(new EmptiesCheck().says(shut.get(0)).metric()).isEqualTo("tank.openings missing: nothing can leave");
    }
}
