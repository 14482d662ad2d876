// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tipwright.geometry.Vec2;

/** The general solver against the closed form of the straight drive. */
class StraightDriveTest {
    @Test
    void generalSolverAgreesWithTheClosedFormOverTenThousandRandomDrives() throws LinkageException {
        SplittableRandom random = new SplittableRandom(20260311);
        int compared = 0;
        for (int i = 0; i < 10_000; i++) {
            Vec2 pivot = point(random, 2);
            Vec2 frame = point(random, 2);
            Vec2 tank = point(random, 2);
            if (frame.minus(tank).norm() < 0.05 || tank.minus(pivot).norm() < 0.05) {
                continue;
            }
            double[] tilts = {0, random.nextDouble(0.01, 1.2), random.nextDouble(1.2, 2.5)};
            Linkage linkage = Linkage.of(Skeleton.straight(pivot, frame, tank));
            StraightDrive closed = new StraightDrive(pivot, frame, tank);
            Vec2 at = point(random, 3);
            Vec2 force = point(random, 50_000);
            for (Configuration p : linkage.sweep(tilts).configurations()) {
                if (p.transmission() < Math.toRadians(1)) {
                    continue;
                }
                assertThat(p.length()).isCloseTo(closed.length(p.tilt()), within(1e-9 * closed.length(p.tilt())));
                assertThat(p.arm())
                        .isCloseTo(
                                closed.arm(p.tilt()),
                                within(1e-9 * tank.minus(pivot).norm()));
                Reactions r = Objects.requireNonNull(linkage.reactions(p, List.of(new Push(1, at, force)), null));
                double push = closed.balance(p.tilt(), at.tiltedAbout(pivot, p.tilt()), force);
                Vec2 onPivot = closed.pivotForce(p.tilt(), push, force);
                double scale = 1e-9 * (Math.abs(push) + force.norm());
                assertThat(r.force()).isCloseTo(push, within(scale));
                assertThat(r.joints().get(0).minus(onPivot).norm()).isLessThan(scale);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(15_000);
    }

    @Test
    void deadCentreIsFoundWhereThePinsAndThePivotAreInLine() throws LinkageException {
        // Tank pin 0.5 m left of the pivot; frame pin at 0.9 m from the pivot, 40 degrees below the line to the right
        // of it: the
        // pin comes into line with pivot and frame pin, on the far side, after turning 40 degrees.
        double turn = Math.toRadians(40);
        Vec2 frame = new Vec2(0.9 * Math.cos(turn), -0.9 * Math.sin(turn));
        Linkage linkage = Linkage.of(Skeleton.straight(Vec2.ZERO, frame, new Vec2(-0.5, 0)));
        double[] tilts = new double[91];
        for (int i = 0; i < tilts.length; i++) {
            tilts[i] = Math.toRadians(i);
        }
        Motion motion = linkage.sweep(tilts);
        SweepStop sweepStop = Objects.requireNonNull(motion.stop());
        assertThat(sweepStop.kind()).isEqualTo(SweepStop.Kind.DEAD_CENTRE);
        assertThat(sweepStop.tilt()).isCloseTo(turn, within(1e-6));
        assertThat(motion.configurations()).hasSize(40);
    }

    private static Vec2 point(SplittableRandom random, double size) {
        return new Vec2(random.nextDouble(-size, size), random.nextDouble(-size, size));
    }
}
