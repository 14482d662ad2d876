// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.FrictionRadii;
import tipwright.analysis.RandomDesigns;
import tipwright.design.Design;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rod;
import tipwright.design.drive.Straight;
import tipwright.design.joint.BallInsert;
import tipwright.design.joint.Pivot;
import tipwright.design.joint.Support;
import tipwright.design.key.Copy;
import tipwright.geometry.Vec2;
import tipwright.load.LoadTable;

/** The lanes on candidates that keep a limit by next to nothing, where single precision could turn them down. */
class NearLimitTest {
    /** A candidate that passes and one that fails are brought as near to each other, m over 2 to this. */
    private static final int HALVINGS = 24;

    private final SplittableRandom random = new SplittableRandom(31);
    private final Map<String, Integer> met = new TreeMap<>();
    private int turnedDown;

    @Test
    void whatPassesByNextToNothingIsNotTurnedDown() throws CannotComputeException {
        RandomDesigns designs = new RandomDesigns(19);
        for (int i = 0; i < 36; i++) {
            Design design = Variants.fitting(Variants.of(designs.next(), i));
            closeIn(
                    switch (i % 4) {
                        case 0 -> design;
                        case 1 -> ofAnyLength(design, 1e12, 1e9);
                        case 2 -> ofAnyLength(design, 1.5 * force(design), 1e9);
                        default -> ofAnyLength(design, 1e12, 60_000);
                    });
        }
        assertThat(met)
                .containsKeys(
                        "actuator too long when closed",
                        "stroke too short",
                        "pushing angle",
                        "dead centre or locked",
                        "push");
        assertThat(turnedDown).isGreaterThan(200);
    }

    /** With an actuator of any length, next to no angle wanted and pins of any strength; forces and rating of the bearings in N. */
    private static Design ofAnyLength(Design d, double force, double c0) {
        Straight s = (Straight) d.drive();
        ElectricActuator actuator = new ElectricActuator(
                0.01,
                20,
                force,
                force,
                force,
                null,
                null,
                null,
                null,
                new Rod(0.09, 0, null, 355e9, 205e15),
                null,
                1,
                null,
                null,
                false);
        List<PlacedActuator> all = s.actuators().stream()
                .map(p -> new PlacedActuator(p.z(), actuator))
                .toList();
        List<Support> bearings = d.pivot().bearings().stream()
                .map(b -> b.bearing() instanceof BallInsert insert
                        ? new Support(b.z(), Copy.with(insert, "c0", c0), b.base(), b.locating())
                        : b)
                .toList();
        return Copy.with(d, "limits", Copy.with(d.limits(), "transmissionFail", 1e-5))
                .withPivot(new Pivot(d.pivot().at(), bearings, null))
                .withDrive(new Straight(s.framePin(), s.tankPin(), all, null, null));
    }

    /** Largest force of one actuator as drawn, N. */
    private static double force(Design design) throws CannotComputeException {
        return judged(design, Analyser.loads(design)).force();
    }

    private void closeIn(Design design) throws CannotComputeException {
        LoadTable table = Analyser.loads(design);
        LaneBounds bounds = new LaneBounds(
                design,
                new ListedActuator("as drawn", design.drive().actuators().get(0).actuator()));
        Kernel kernel = new Kernel(TiltLoads.of(design, table), bounds.pinRadii());
        Straight drawn = (Straight) design.drive();
        if (!passes(design, table, kernel, bounds, drawn.framePin())) {
            return;
        }
        for (int way = 0; way < 3; way++) {
            double angle = random.nextDouble(2 * Math.PI);
            Vec2 by = new Vec2(Math.cos(angle), Math.sin(angle)).times(random.nextDouble(0.3, 1.5));
            double good = 0;
            double bad = 1;
            for (int k = 0; k < HALVINGS; k++) {
                double middle = k == 0 ? 1 : 0.5 * (good + bad);
                boolean passes =
                        passes(design, table, kernel, bounds, drawn.framePin().plus(by.times(middle)));
                good = passes ? middle : good;
                bad = passes ? bad : middle;
            }
            if (good < 1) {
                Design failing = design.withDrive(drawn.movedTo(drawn.framePin().plus(by.times(bad)), drawn.tankPin()));
                met.merge(judged(failing, table).governing().toString(), 1, Integer::sum);
            }
        }
    }

    /** Whether the checks pass a place of the frame pin; the lanes must not turn it down then. */
    private boolean passes(Design design, LoadTable table, Kernel kernel, LaneBounds bounds, Vec2 framePin) {
        Straight drawn = (Straight) design.drive();
        Judgement judged = judged(design.withDrive(drawn.movedTo(framePin, drawn.tankPin())), table);
        Lanes lanes = new Lanes();
        Vec2 a = framePin.minus(design.pivot().at());
        Vec2 b = drawn.tankPin().minus(design.pivot().at());
        lanes.set(0, a.x(), a.y(), b.x(), b.y());
        kernel.run(lanes, 1);
        boolean rejected = bounds.least(lanes, 0) > 1 || !bounds.fits(lanes, 0);
        turnedDown += rejected ? 1 : 0;
        if (rejected) {
            assertThat(judged.utilisation())
                    .as("%s, frame pin at %s", design.name(), framePin)
                    .isGreaterThan(1);
        } else {
            assertThat(bounds.least(lanes, 0)).isLessThanOrEqualTo(judged.utilisation());
            assertThat(bounds.force(lanes, 0)).isLessThanOrEqualTo(judged.force());
        }
        return judged.utilisation() <= 1;
    }

    private static Judgement judged(Design design, LoadTable table) {
        try {
            return Judgement.of(CandidateEngine.CLOSED_FORM.analyse(design, table));
        } catch (CannotComputeException none) {
            return Judgement.impossible();
        }
    }

    /** Length and arm of random candidates, near dead centre and far from the pivot too, against double precision. */
    @Test
    void lengthAndArmAreNoFartherOffThanTheyAreSaidToBe() throws CannotComputeException {
        Design design = Examples.read(Examples.BOX);
        TiltLoads loads = TiltLoads.of(design, Analyser.loads(design));
        FrictionRadii radii = FrictionRadii.of(design);
        Kernel kernel = new Kernel(loads, new double[] {radii.framePin(), radii.rodPin()});
        Lanes lanes = new Lanes();
        double[] worst = new double[2];
        for (int block = 0; block < 100; block++) {
            Vec2[] frames = new Vec2[Lanes.SIZE];
            Vec2 tank = new Vec2(random.nextDouble(-3, 3), random.nextDouble(-3, 3));
            for (int j = 0; j < Lanes.SIZE; j++) {
                Vec2 anywhere = new Vec2(random.nextDouble(-3, 3), random.nextDouble(-3, 3));
                double near = Math.pow(10, random.nextDouble(-4, 0));
                // some near the tank pin, some near the line through it and the pivot
                frames[j] = j % 3 == 0
                        ? anywhere
                        : tank.times(j % 3 == 1 ? 1 : random.nextDouble(-2, 2)).plus(anywhere.times(near));
                lanes.set(j, frames[j].x(), frames[j].y(), tank.x(), tank.y());
            }
            kernel.shape(lanes, Lanes.SIZE);
            for (int j = 0; j < Lanes.SIZE; j++) {
                double[] exact = exact(loads.tilts(), frames[j], tank, lanes.sign[j]);
                double length = lanes.lengthOff(j);
                double arm = lanes.armOff(j);
                assertThat((double) lanes.shortest[j]).isCloseTo(exact[0], within(length));
                assertThat((double) lanes.longest[j]).isCloseTo(exact[1], within(length));
                assertThat((double) lanes.arm[j]).isCloseTo(exact[2], within(arm));
                worst[0] = Math.max(worst[0], Math.abs(lanes.shortest[j] - exact[0]) / length);
                worst[0] = Math.max(worst[0], Math.abs(lanes.longest[j] - exact[1]) / length);
                worst[1] = Math.max(worst[1], Math.abs(lanes.arm[j] - exact[2]) / arm);
            }
        }
        // the bounds are no idle ones
        assertThat(worst[0]).isGreaterThan(0.05);
        assertThat(worst[1]).isGreaterThan(0.05);
    }

    /** Shortest and longest length, and least arm with its sign, m. */
    private static double[] exact(double[] tilts, Vec2 frame, Vec2 tank, double sign) {
        double[] all = {Double.POSITIVE_INFINITY, 0, Double.POSITIVE_INFINITY};
        for (double tilt : tilts) {
            Vec2 b = tank.tilted(tilt);
            Vec2 line = b.minus(frame);
            all[0] = Math.min(all[0], line.norm());
            all[1] = Math.max(all[1], line.norm());
            all[2] = Math.min(all[2], sign * line.cross(b) / line.norm());
        }
        return all;
    }
}
