// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.tank.Door;
import tipwright.design.tank.Opening;
import tipwright.geometry.Plane;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;
import tipwright.quantity.Text;

/** Which doors are looked at, what is missing of them, and the load on any outline by a sum over small pieces. */
class DoorTest {
    private static final double G = 9.80665;
    private static final double WATER = 9810;
    private static final String TOP =
            "- {name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m]," + " normal: y}";
    private static final String RATED = ", latch-rating: 50 kN, hinge-rating: 60 kN";
    private static final String END =
            "- {name: end, rim: rectangle, width: 500 mm, height: 500 mm, centre: [0.5 m, 1 m, 0 m],"
                    + " normal: x, opens-at: 30 deg, door: {hinge: [0.5 m, 1.3 m, 0 m], latch: [0.5 m, 0.5 m, 0 m]%s}}";
    private static final String BOX = swap(Examples.BOX, "80 deg", "10 deg");

    private static List<Finding> run(String openings, String more) throws CannotComputeException {
        return new DoorCheck().run(Analyser.analyse(Examples.read(swap(BOX, TOP, openings) + more)));
    }

    private static List<Finding> run(String openings) throws CannotComputeException {
        return run(openings, "");
    }

    private static void isMissing(Finding finding, String what) {
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(finding.missing()).isTrue();
        assertThat(finding.note()).isEqualTo(Text.words(what));
    }

    /** An open mouth that looks up needs no door; what looks aside, opens later or is no opening at all is asked for. */
    @Test
    void onlyAnOpenMouthNeedsNoDoor() throws CannotComputeException {
        assertThat(run(TOP)).isEmpty();
        String none = "tank.openings.door missing: no door is described";
        List<Finding> aside = run(swap(END, ", opens-at: 30 deg", "").replaceFirst(", door: .*", "}"));
        assertThat(aside).hasSize(1);
        isMissing(aside.get(0), none);
        isMissing(run(swap(TOP, "normal: y", "normal: y, opens-at: 5 deg")).get(0), none);
        isMissing(run("[]").get(0), none);
        isMissing(
                run(TOP + "\n    " + END.replaceFirst(", opens-at: 30 deg, door: .*", "}"))
                        .get(0),
                none);
    }

    @Test
    void whatIsMissingOfADoorIsNamed() throws CannotComputeException {
        List<Finding> unrated = run(TOP + "\n    " + END.formatted(""));
        assertThat(unrated).extracting(Finding::id).containsExactly("door/end-latch", "door/end-hinge");
        isMissing(unrated.get(0), "door.latch-rating missing");
        isMissing(unrated.get(1), "door.hinge-rating missing");
        List<Finding> rated = run(TOP + "\n    " + END.formatted(RATED));
        assertThat(rated.get(0).capacity()).isEqualTo(50_000);
        assertThat(rated.get(1).capacity()).isEqualTo(60_000);
        assertThat(rated.get(0).title()).isEqualTo("End latch: load");
        String weightless = "; without the door's own weight: door.mass missing";
        assertThat(rated.get(0).note()).isEqualTo(Text.words("load on each latch, door shut" + weightless));
        assertThat(rated.get(1).note()).isEqualTo(Text.words("load on the hinge line, door shut" + weightless));
        Finding weighed =
                run(TOP + "\n    " + END.formatted(RATED + ", mass: 20 kg")).get(0);
        assertThat(weighed.note()).isEqualTo(Text.words("load on each latch, door shut"));
        List<Finding> skipped = run(
                TOP + "\n    " + END.formatted(RATED),
                "cases: {skip: [held, settled, slid, caked, heaped, empty, heel]}\n");
        assertThat(skipped).hasSize(1);
        assertThat(skipped.get(0).missing()).isFalse();
        assertThat(skipped.get(0).note())
                .isEqualTo(Text.words("every load case with the outlet shut is under cases: skip:"));
    }

    /**
     * Brimful at tilt a, the middle of the door is d = cos a (0.5 + tan a) under the box's highest corner: F = rho g d A, in the middle but for the rise of pressure
     * down the door, rho g cos a I. About the hinge 0.3 m over the middle; the latches hold 0.8 m below it, two of them half each.
     */
    @Test
    void latchesShareTheMomentAboutTheHinge() throws CannotComputeException {
        double latch = 0;
        double hinge = 0;
        for (int i = 0; i <= 10; i++) {
            double a = Math.toRadians(i);
            double force = 1400 * G * Math.cos(a) * (0.5 + Math.tan(a)) * 0.25;
            double about = force * 0.3 + 1400 * G * Math.cos(a) * Math.pow(0.5, 4) / 12;
            latch = Math.max(latch, about / 0.8);
            hinge = Math.max(hinge, force - about / 0.8);
        }
        String only = "cases: {skip: [draining, settled, slid, caked, heaped, empty, heel]}\n";
        List<Finding> one = run(TOP + "\n    " + END.formatted(RATED), only);
        assertThat(one.get(0).demand()).isCloseTo(latch, within(1e-6 * latch));
        assertThat(one.get(1).demand()).isCloseTo(hinge, within(1e-6 * hinge));
        assertThat(one.get(0).loadCase()).isEqualTo("held");
        assertThat(one.get(0).tilt()).isCloseTo(Math.toRadians(10), within(1e-9));
        List<Finding> two = run(TOP + "\n    " + END.formatted(RATED + ", latches: 2"), only);
        assertThat(two.get(0).demand()).isCloseTo(latch / 2, within(1e-6 * latch));
        assertThat(two.get(1).demand()).isCloseTo(hinge, within(1e-6 * hinge));
        List<Finding> heavy = run(TOP + "\n    " + END.formatted(RATED + ", latches: 2, mass: 10 kg"), only);
        double tilt = Math.toRadians(10);
        double outward = 10 * G * Math.sin(tilt);
        assertThat(heavy.get(0).demand()).isCloseTo((latch + outward * 0.3 / 0.8) / 2, within(1e-6 * latch));
        assertThat(heavy.get(1).demand())
                .isCloseTo(Math.hypot(hinge + outward * 0.5 / 0.8, 10 * G * Math.cos(tilt)), within(1e-6 * hinge));
    }

    /** Settled, 1000 kg/m3 over solids packed to 60 % of 2650 in water, 1990 kg/m3, straight above each point. */
    @Test
    void settledSolidsPressAsALiquidOfTheirWeight() throws CannotComputeException {
        String only = "cases: {skip: [draining, held, slid, caked, heaped, empty, heel]}\n";
        Analysis analysis = Analyser.analyse(
                Examples.read(swap(BOX, TOP, TOP + "\n    " + swap(END, "%s", RATED), "10 deg", "5 deg") + only));
        Opening end = analysis.design().tank().openings().get(1);
        double most = 0;
        int beds = 0;
        for (Row row : analysis.cases().get(0).rows()) {
            Fill fill = Objects.requireNonNull(row.load().fill());
            Plane bed = fill.bed();
            if (bed != null) {
                beds++;
                DoorLoad load = DoorLoad.layered(end.rimPoints(), fill.surface(), bed, 1000 * G, 1990 * G);
                most = Math.max(
                        most, DoorCheck.latchForce(Objects.requireNonNull(end.door()), new Vec3(1, 0, 0), load));
            }
        }
        assertThat(beds).isPositive();
        Finding latch = new DoorCheck().run(analysis).get(0);
        assertThat(latch.loadCase()).isEqualTo("settled");
        assertThat(latch.demand()).isCloseTo(most, within(1e-6 * most));
    }

    /** A force F at its middle: half of it at a latch as far beyond the middle as the hinge; about a slanted hinge line likewise. */
    @Test
    void theLatchFollowsFromTheMoment() {
        Vec3 x = new Vec3(1, 0, 0);
        DoorLoad load = new DoorLoad(600, new Vec3(0.5, 1.25, 0.25).times(600));
        Door upright = new Door(new Vec3(0.5, 1.5, 0), new Vec3(0, 0, 2), new Vec3(0.5, 0.5, 0), 1, null, null, null);
        assertThat(DoorCheck.latchForce(upright, x, load)).isCloseTo(150, within(1e-9));
        Door low = new Door(new Vec3(0.5, 0.75, 0), new Vec3(0, 0, -1), new Vec3(0.5, 2.75, 0), 1, null, null, null);
        assertThat(DoorCheck.latchForce(low, x, load)).isCloseTo(150, within(1e-9));
        Door aside = new Door(new Vec3(0.5, 0, -0.25), new Vec3(0, 1, 0), new Vec3(0.5, 0, 0.55), 1, null, null, null);
        assertThat(DoorCheck.latchForce(aside, x, load)).isCloseTo(375, within(1e-9));
    }

    /** A parallelogram that leans every way, against the sum over small pieces of it. */
    @ParameterizedTest
    @CsvSource({"3, 0", "1, 0", "0.6, 0", "1.2, 0.3", "0.2, 0.2"})
    void anyOutlineBearsTheSumOfItsPieces(double level, double aside) {
        Vec3 from = new Vec3(0.25, 0.125, -0.5);
        Vec3 along = new Vec3(0.5, 0.25, 1);
        Vec3 across = new Vec3(-0.25, 1, 0.125);
        List<Vec3> outline = List.of(from, from.plus(along), from.plus(along).plus(across), from.plus(across));
        Plane surface = new Plane(new Vec3(aside, 1, aside / 2).unit(), level);
        int cells = 800;
        double area = along.cross(across).norm() / cells / cells;
        double force = 0;
        Vec3 moment = Vec3.ZERO;
        for (int i = 0; i < cells; i++) {
            for (int k = 0; k < cells; k++) {
                Vec3 p = from.plus(along.times((i + 0.5) / cells)).plus(across.times((k + 0.5) / cells));
                double here = WATER * Math.max(0, level - surface.normal().dot(p)) * area;
                force += here;
                moment = moment.plus(p.times(here));
            }
        }
        DoorLoad load = DoorLoad.of(outline, surface, WATER);
        assertThat(load.force()).isCloseTo(force, within(2e-5 * WATER));
        assertThat(load.moment().minus(moment).norm()).isLessThan(2e-5 * WATER);
        if (force > 0) {
            assertThat(load.centre().minus(moment.times(1 / force)).norm()).isLessThan(1e-3);
        }
    }

    /** Solids that stand nearly upright bear nothing above them: all counts as packed, over 80 degrees. */
    @Test
    void aSteepBedCountsAsPackedAllOver() {
        List<Vec3> door = List.of(new Vec3(0, 0, 0), new Vec3(0, 0, 1), new Vec3(0, 1, 1), new Vec3(0, 1, 0));
        Plane surface = new Plane(new Vec3(0, 1, 0), 1.5);
        double upright = 0.16;
        Plane steep = new Plane(new Vec3(0, upright, Math.sqrt(1 - upright * upright)), 0.5);
        DoorLoad load = DoorLoad.layered(door, surface, steep, WATER, 19_000);
        assertThat(load.force()).isCloseTo(19_000, within(1e-6));
        assertThat(load).isEqualTo(DoorLoad.of(door, surface, 19_000));
        Plane flat = new Plane(new Vec3(0, 1, 0), 0.5);
        assertThat(DoorLoad.layered(door, surface, flat, WATER, 19_000).force())
                .isCloseTo(WATER + (19_000 - WATER) * 0.125, within(1e-6));
        // the limit itself is not too steep: under a bed through its lower corner's edge nothing is packed
        Plane limit = new Plane(new Vec3(0, 0.17, Math.sqrt(1 - 0.17 * 0.17)), -1);
        assertThat(DoorLoad.layered(door, surface, limit, WATER, 19_000).force())
                .isCloseTo(WATER, within(1e-6));
    }
}
