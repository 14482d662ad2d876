// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.WindArea;
import tipwright.check.rule.Finding;
import tipwright.check.standing.Footprint;
import tipwright.check.standing.WholeUnit;
import tipwright.design.tank.CaseName;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec3;
import tipwright.load.LoadState;

/** Tipping over and hanging, by hand on a box. */
class TipOverTest {
    /** The empty box alone weighs 157 kg; a frame of 400 kg stands on four feet. */
    private static final String EMPTY = Examples.BOX
            + "cases: {skip: [held, draining, heaped, caked, heel, settled, slid]}\n"
            + "frame: {mass: 400 kg, centre: [0 mm, -200 mm, 50 mm], lifting-eye: [0 mm, 2 m, 0 mm]}\n"
            + "ground: {y: -700 mm}\n"
            + "supports: {outline: [[-800 mm, -500 mm], [700 mm, -500 mm], [700 mm, 500 mm], [-800 mm, 500 mm]],"
            + " slope: 5 deg, rating: 5 kN}\n";

    private static final double BOX = 5 * 0.004 * 7850;
    private static final double G = 9.80665;

    private static Finding of(Result result, String id) {
        return result.findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Centroid of the open box, 0.4 m behind and 0.5 m over the pivot, at 80 degrees. */
    private static double boxX(double tilt) {
        return 0.4 - 0.4 * Math.cos(tilt) + 0.5 * Math.sin(tilt);
    }

    private static double boxY(double tilt) {
        return 0.4 + 0.4 * Math.sin(tilt) + 0.5 * Math.cos(tilt);
    }

    @Test
    void onAGradeTheWorstEdgeIsTheDumpSide() throws CannotComputeException {
        Result result = Checker.check(Examples.read(EMPTY + "site: {grade: 6 deg}\n"));
        Finding f = of(result, "tip-over/as-it-stands");
        double a = Math.toRadians(6);
        double worst = 0;
        double restoring = 0;
        double overturning = 0;
        for (int i = 0; i <= 80; i++) {
            double tilt = Math.toRadians(i);
            double keep = Math.cos(a) * G * (400 * 0.7 + BOX * (0.7 - boxX(tilt)));
            double turn = Math.sin(a) * G * (400 * 0.5 + BOX * (boxY(tilt) + 0.7));
            if (boxX(tilt) > 0.7) {
                keep = Math.cos(a) * G * 400 * 0.7;
                turn += Math.cos(a) * G * BOX * (boxX(tilt) - 0.7);
            }
            if (turn / keep > worst) {
                worst = turn / keep;
                restoring = keep;
                overturning = turn;
            }
        }
        // The box's own centroid: five faces of equal area, the top missing.
        assertThat(f.capacity()).isCloseTo(restoring, within(1e-6 * restoring));
        assertThat(f.demand()).isCloseTo(overturning, within(1e-6 * restoring));
        assertThat(f.utilisation()).isCloseTo(1.5 * worst, within(1e-6));
    }

    @Test
    void slopeAnyWayRoundAndSupportLoads() throws CannotComputeException {
        Result result = Checker.check(Examples.read(EMPTY));
        double best = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i <= 80; i++) {
            double tilt = Math.toRadians(i);
            double high = 400 * 0.5 + BOX * (boxY(tilt) + 0.7);
            double dump = 400 * 0.7 + BOX * Math.max(0, 0.7 - boxX(tilt));
            double beyond = BOX * Math.max(0, boxX(tilt) - 0.7);
            double side = 400 * 0.45 + BOX * 0.5;
            best = Math.min(best, Math.atan((dump - 1.5 * beyond) / (1.5 * high)));
            best = Math.min(best, Math.atan(side / (1.5 * high)));
            double kg = 400 + BOX;
            double x = BOX * boxX(tilt) / kg + 0.05;
            double z = 400 * 0.05 / kg;
            most = Math.max(most, kg * G * (0.25 + x / (4 * 0.75) * 1 + z / (4 * 0.5)));
        }
        assertThat(of(result, "tip-over/any-way-round").capacity()).isCloseTo(best, within(1e-7));
        // Four springs: R = N (1/4 + x / (4 a) + z / (4 b)) about the middle, a and b half the sides.
        assertThat(of(result, "tip-over/supports").demand()).isCloseTo(most, within(1e-6 * most));
    }

    @Test
    void hangsWithTheCentreOfMassUnderTheEye() throws CannotComputeException {
        Result result = Checker.check(Examples.read(EMPTY));
        double kg = 400 + BOX;
        double y = (400 * -0.2 + BOX * 0.9) / kg;
        double z = 400 * 0.05 / kg;
        assertThat(of(result, "hang/empty").demand()).isCloseTo(Math.atan(z / (2 - y)), within(1e-9));
        // The brim-full box leans with its surface level, so it hangs further over than as a rigid block.
        double all = kg + 1400;
        double block = Math.atan(400 * 0.05 / all / (2 - (400 * -0.2 + BOX * 0.9 + 1400) / all));
        assertThat(of(result, "hang/full").demand()).isCloseTo(block, within(1e-6));
    }

    /** A half-full box hangs over as its surface stays level: tan = z / h, z of water b^2 tan/(12 h): by repetition. */
    @Test
    void looseLoadHangsFurther() throws CannotComputeException {
        Result result = Checker.check(Examples.read(swap(EMPTY, "fill: 100 %", "fill: 50 %")));
        double angle = 0;
        for (int i = 0; i < 100; i++) {
            double t = Math.tan(angle);
            double water = 700;
            double shiftZ = t / (12 * 0.5);
            double waterY = 0.75 + t * t / (24 * 0.5);
            double kg = 400 + BOX + water;
            double z = (400 * 0.05 + water * shiftZ) / kg;
            double y = (400 * -0.2 + BOX * 0.9 + water * waterY) / kg;
            angle = Math.atan(z / (2 - y));
        }
        assertThat(of(result, "hang/full").demand()).isCloseTo(angle, within(1e-7));
    }

    /** Source: area of a box seen square and at 45 degrees (elementary). */
    @Test
    void windAreaOfABox() {
        Mesh box = Examples.read(Examples.BOX).tank().interior().solid().mesh(0.01);
        WindArea wind = new WindArea(box);
        double[] square = wind.shown(new Vec3(1, 0, 0), new Vec3(0, 1, 0));
        assertThat(square[0]).isCloseTo(1, within(1e-9));
        assertThat(square[1]).isCloseTo(1, within(1e-9));
        double s = Math.sqrt(0.5);
        assertThat(wind.shown(new Vec3(s, 0, s), new Vec3(0, 1, 0))[0]).isCloseTo(2 * s, within(1e-9));
    }

    /** What the wind comes to at worst: share of what holds it up, and the area besides the box's that it blows on then, m2. */
    private record Blown(double worst, double area) {}

    /**
     * By hand, over all tilts: along z the box shows 1 m2 at any tilt, along x its two faces; the middle is that of the box itself.
     *
     * @param side area of the rest from the side, m2
     * @param end from the end, m2
     * @param high its middle above the ground, m
     */
    private static Blown blown(double side, double end, double high) {
        Blown most = new Blown(0, 0);
        for (int i = 0; i <= 80; i++) {
            double tilt = Math.toRadians(i);
            double y = 0.4 + 0.4 * Math.sin(tilt) + 0.6 * Math.cos(tilt) + 0.7;
            double x = boxX(tilt);
            double shown = Math.cos(tilt) + Math.sin(tilt);
            double over = (500 * (shown * y + end * high) + G * BOX * Math.max(0, x - 0.7))
                    / (G * (400 * 0.7 + BOX * Math.max(0, 0.7 - x)));
            double across = 500 * (y + side * high) / (G * (400 * 0.45 + BOX * 0.5));
            if (Math.max(over, across) > most.worst()) {
                most = new Blown(Math.max(over, across), across > over ? side : end);
            }
        }
        return most;
    }

    @Test
    void windOverTheSideCounts() throws CannotComputeException {
        String box = EMPTY + "site: {wind-pressure: 500 Pa}\n";
        Finding f = of(Checker.check(Examples.read(box)), "tip-over/as-it-stands");
        assertThat(f.utilisation()).isCloseTo(1.5 * blown(0, 0, 0).worst(), within(1e-6));
        assertThat(f.loadCase()).isEqualTo("empty");
    }

    /** Two rails and a beam between them, by hand: all of each counts, also of the rail behind the other. */
    @Test
    void windBlowsOnTheFrameToo() throws CannotComputeException {
        String rail = "outline: [[-600 mm, -300 mm], [600 mm, -300 mm], [600 mm, -200 mm], [-600 mm, -200 mm]]";
        String beam = "outline: [[400 mm, -300 mm], [500 mm, -300 mm], [500 mm, -200 mm], [400 mm, -200 mm]]";
        String yaml = swap(
                        EMPTY,
                        "frame: {",
                        "frame: {members: [{name: left, " + rail + ", z: [300 mm, 350 mm]}, {name: right, " + rail
                                + ", z: [-350 mm, -300 mm]}, {name: beam, " + beam + "}], ")
                + "site: {wind-pressure: 500 Pa}\n";
        Finding f = of(Checker.check(Examples.read(yaml)), "tip-over/as-it-stands");
        double acrossZ = 2 * 1.2 * 0.1 + 0.1 * 0.1;
        double acrossX = 2 * 0.05 * 0.1 + 0.7 * 0.1;
        Blown blown = blown(acrossZ, acrossX, 0.45);
        assertThat(f.utilisation()).isCloseTo(1.5 * blown.worst(), within(1e-6));
        assertThat(f.note().metric()).contains(String.format(Locale.ROOT, " and %.2f m2 of the frame", blown.area()));
    }

    private static final String WIND = EMPTY + "site: {wind-pressure: 500 Pa}\n";
    private static final String WHEELS =
            "frame: {wheels: {axle: [0 mm, -400 mm], diameter: 600 mm, width: 200 mm, track: 1 m}, ";

    /** Wind moment about the ground over demand as it was found, with what the wheels add, by hand. */
    private static Finding inTheWind(String frame) throws CannotComputeException {
        return of(Checker.check(Examples.read(swap(WIND, "frame: {", frame))), "tip-over/as-it-stands");
    }

    /** Two cylinders on their sides: pi r2 each from the side, 2 r b each from the end. Source: elementary geometry. */
    @Test
    void windBlowsOnTheWheelsToo() throws CannotComputeException {
        Finding bare = inTheWind("frame: {");
        Finding wheels = inTheWind(WHEELS);
        double side = 2 * Math.PI * 0.3 * 0.3;
        double end = 2 * 0.6 * 0.2;
        Blown blown = blown(side, end, 0.3);
        assertThat(wheels.utilisation())
                .isCloseTo(1.5 * blown.worst(), within(1e-6))
                .isGreaterThan(bare.utilisation());
        assertThat(wheels.note().metric())
                .endsWith(String.format(
                        Locale.ROOT,
                        " and %.2f m2 of the wheels, none of the frame (frame.members missing)",
                        blown.area()));
    }

    @Test
    void frameWithoutMembersOrWidthsCatchesNoWindAndSaysSo() throws CannotComputeException {
        String wind = EMPTY + "site: {wind-pressure: 500 Pa}\n";
        assertThat(of(Checker.check(Examples.read(wind)), "tip-over/as-it-stands")
                        .note()
                        .metric())
                .endsWith("none of the frame (frame.members missing)");
        String flat = swap(
                wind, "frame: {", "frame: {members: [{name: a, outline: [[0 m, 0 m], [1 m, 0 m], [0 m, -100 mm]]}], ");
        assertThat(of(Checker.check(Examples.read(flat)), "tip-over/as-it-stands")
                        .note()
                        .metric())
                .endsWith("none of the frame (frame.members: z missing)");
        assertThat(of(Checker.check(Examples.read(EMPTY)), "tip-over/as-it-stands")
                        .note()
                        .metric())
                .doesNotContain("wind");
    }

    /** Settled solids that never come loose keep the mass and the place in the tank that they have stowed. */
    @Test
    void stuckCakeIsACaseOfItsOwn() throws CannotComputeException {
        Analysis analysis =
                Analyser.analyse(Examples.read(swap(Examples.BOX, "repose: 30 deg", "repose: 30 deg, release: 20 deg")
                        + "frame: {mass: 400 kg, centre: [0 mm, -200 mm, 50 mm]}\n"));
        LoadState settled = analysis.cases().stream()
                .filter(c -> c.name().equals("caked"))
                .findFirst()
                .orElseThrow()
                .rows()
                .get(0)
                .load();
        List<Double> tilts = new ArrayList<>();
        new WholeUnit(analysis).each(null, (loadCase, pose, masses) -> {
            if (loadCase.equals(CaseName.STUCK)) {
                tilts.add(pose.tilt());
                Footprint.Mass tank = masses.own().get(masses.own().size() - 1);
                assertThat(tank.kg()).isCloseTo(settled.mass(), within(1e-9 * settled.mass()));
                assertThat(tank.at().minus(pose.place(settled.centroid())).norm())
                        .isLessThan(1e-9);
            }
        });
        assertThat(tilts).hasSize(analysis.poses().size());
    }

    @Test
    void sayInWordsThatItTipsOrHangsLevel() throws CannotComputeException {
        String narrow = swap(
                EMPTY,
                "700 mm, -500 mm], [700 mm",
                "100 mm, -500 mm], [100 mm",
                "mass: 400 kg",
                "mass: 10 kg",
                ", rating: 5 kN",
                "");
        Result tips = Checker.check(Examples.read(narrow));
        assertThat(of(tips, "tip-over/supports").note().metric()).isEqualTo("supports.rating missing; it overturns");
        Result level = Checker.check(Examples.read(swap(EMPTY, "0 mm, -200 mm, 50 mm", "0 mm, -200 mm, 0 mm")));
        assertThat(of(level, "hang/empty").note().metric()).isEqualTo("it hangs level");
        // 400 of 557 kg sit 50 mm beside the eye, all 1.89 m under it: atan(35.9 / 1890); along x it hangs straight
        assertThat(of(Checker.check(Examples.read(EMPTY)), "hang/empty").note().metric())
                .isEqualTo("its left side hangs 1.1 deg low");
    }
}
