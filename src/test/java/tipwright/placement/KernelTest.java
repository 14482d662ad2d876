// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.FrictionRadii;
import tipwright.analysis.Pose;
import tipwright.analysis.RandomDesigns;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.drive.Drive;
import tipwright.design.drive.Straight;
import tipwright.geometry.Vec2;
import tipwright.load.LoadTable;

/** The search's closed form against the general solver with friction. */
class KernelTest {
    private static final String GRITTY = swap(
            Examples.BOX,
            "fill: 100 %, density: 1400 kg/m3",
            "fill: 90 %, density: 1500 kg/m3",
            "tank:\n",
            "site: {grade: 3 deg, cross-slope: 2 deg}\ntank:\n",
            "z: 0 mm, actuator",
            "z: 120 mm, actuator");
    private static final String BUSHED =
            swap(GRITTY, "{kind: ball-insert, bore: 40 mm, c0: 19 kN}", "{kind: bush, bore: 60 mm, length: 60 mm}");

    @Test
    void agreesWithTheGeneralSolverOnRollingBearings() throws CannotComputeException {
        compare(GRITTY, 1e-5, 60);
    }

    @Test
    void agreesWithTheGeneralSolverOnPlainBushes() throws CannotComputeException {
        compare(BUSHED, 1e-6, 60);
    }

    private static void compare(String yaml, double close, int wanted) throws CannotComputeException {
        Design design = Examples.read(yaml);
        TiltLoads loads = TiltLoads.of(design, Analyser.loads(design));
        FrictionRadii radii = FrictionRadii.of(design);
        Kernel kernel = new Kernel(loads, new double[] {radii.framePin(), radii.rodPin()});
        SplittableRandom random = new SplittableRandom(8);
        Lanes lanes = new Lanes();
        int compared = 0;
        while (compared < wanted) {
            Vec2 frame = new Vec2(random.nextDouble(-1.2, 1.5), random.nextDouble(-1.5, 0.5));
            Vec2 tank = new Vec2(random.nextDouble(-0.6, 0.8), random.nextDouble(0.2, 1.2));
            Vec2 a = frame.minus(design.pivot().at());
            Vec2 b = tank.minus(design.pivot().at());
            lanes.set(0, a.x(), a.y(), b.x(), b.y());
            kernel.run(lanes, 1);
            if (lanes.arm[0] < 0.08 || lanes.free[0] <= 0) {
                continue;
            }
            Analysis analysis = Analyser.analyse(design.withDrive(((Straight) design.drive()).movedTo(frame, tank)));
            assertThat(analysis.stop()).isNull();
            compare(analysis, lanes, close);
            compared++;
        }
    }

    /** Whatever the lanes turn down, the checks turn down too: they never cost an answer. */
    @Test
    void theLanesNeverTurnDownWhatTheChecksPass() throws CannotComputeException {
        RandomDesigns random = new RandomDesigns(77);
        SplittableRandom places = new SplittableRandom(5);
        int passing = 0;
        int turnedDown = 0;
        for (int i = 0; i < 200; i++) {
            Design design = Variants.fitting(Variants.of(random.next(), i));
            LoadTable table = Analyser.loads(design);
            LaneBounds bounds = new LaneBounds(
                    design,
                    new ListedActuator(
                            "as drawn", design.drive().actuators().get(0).actuator()));
            Kernel kernel = new Kernel(TiltLoads.of(design, table), bounds.pinRadii());
            Straight drawn = (Straight) design.drive();
            Lanes lanes = new Lanes();
            for (int k = 0; k < 5; k++) {
                Vec2 by = new Vec2(places.nextDouble(-0.01, 0.01), places.nextDouble(-0.01, 0.01)).times(k);
                Vec2 framePin = drawn.framePin().plus(by);
                Drive moved = drawn.movedTo(framePin, drawn.tankPin())
                        .with(drawn.actuators().get(0).actuator());
                Vec2 a = framePin.minus(design.pivot().at());
                Vec2 b = drawn.tankPin().minus(design.pivot().at());
                lanes.set(0, a.x(), a.y(), b.x(), b.y());
                kernel.run(lanes, 1);
                boolean rejected = bounds.least(lanes, 0) > 1 || !bounds.fits(lanes, 0);
                Judgement judged = judged(design.withDrive(moved), table);
                passing += judged.utilisation() <= 1 ? 1 : 0;
                turnedDown += rejected ? 1 : 0;
                if (rejected) {
                    assertThat(judged.utilisation())
                            .as("design %s, place %s", i, k)
                            .isGreaterThan(1);
                } else {
                    assertThat(bounds.least(lanes, 0)).isLessThanOrEqualTo(judged.utilisation());
                    assertThat(bounds.force(lanes, 0)).isLessThanOrEqualTo(judged.force());
                }
            }
        }
        assertThat(passing).isGreaterThan(50);
        assertThat(turnedDown).isGreaterThan(50);
    }

    private static Judgement judged(Design design, LoadTable table) {
        try {
            return Judgement.of(CandidateEngine.CLOSED_FORM.analyse(design, table));
        } catch (CannotComputeException none) {
            return Judgement.impossible();
        }
    }

    private static void compare(Analysis analysis, Lanes lanes, double close) {
        double[] worst = new double[6];
        double shortest = 9;
        double longest = 0;
        for (Pose pose : analysis.poses()) {
            shortest = Math.min(shortest, pose.length());
            longest = Math.max(longest, pose.length());
        }
        for (CaseResult result : analysis.cases()) {
            for (Row row : result.rows()) {
                worst[0] = Math.max(worst[0], row.rest().force());
                worst[1] = Math.max(worst[1], -row.rest().force());
                for (Balance b : new Balance[] {row.rest(), row.raise(), row.lower()}) {
                    worst[2] = Math.max(worst[2], b.force());
                    worst[3] = Math.max(worst[3], -b.force());
                    worst[4] = Math.max(worst[4], b.bearings().get(0).xy().norm());
                    worst[5] = Math.max(worst[5], b.bearings().get(1).xy().norm());
                }
            }
        }
        boolean grows = lanes.sign[0] > 0;
        assertThat((double) lanes.shortest[0]).isCloseTo(shortest, within(lanes.lengthOff(0)));
        assertThat((double) lanes.longest[0]).isCloseTo(longest, within(lanes.lengthOff(0)));
        same(grows ? lanes.restMost[0] : -lanes.restLeast[0], worst[0], close);
        same(grows ? -lanes.restLeast[0] : lanes.restMost[0], worst[1], close);
        same(grows ? lanes.most[0] : -lanes.least[0], worst[2], close);
        same(grows ? -lanes.least[0] : lanes.most[0], worst[3], close);
        same(Math.sqrt(lanes.bearing1[0]), worst[4], close);
        same(Math.sqrt(lanes.bearing2[0]), worst[5], close);
    }

    private static void same(double quick, double full, double close) {
        assertThat(Math.max(0, quick)).isCloseTo(full, within(close * (full + 1000)));
    }
}
