// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.clearance.Clearance;
import tipwright.check.clearance.ClearanceTest;
import tipwright.geometry.Vec2;

/** Gaps of a tank of any outline against brute force on dense outlines. */
class ClearanceBruteForceTest {
    private static final Vec2 PIVOT = new Vec2(0.4, 0.4);

    /** Points along every side, 2 mm apart, at every 0.05 degree, against the other's sides. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void agreesWithBruteForce(long seed) throws CannotComputeException {
        Random random = new Random(seed);
        List<Vec2> tank = star(random, new Vec2(0, 1), 0.25, 0.7);
        List<Vec2> member = star(random, new Vec2(0.5 + random.nextDouble(), 1 + random.nextDouble()), 0.05, 0.3);
        String yaml = swap(
                        Examples.BOX,
                        "tank:\n",
                        "tank:\n  outline: " + ClearanceTest.outline(tank) + "\n",
                        "to: 80 deg",
                        "to: 80 deg, step: 8 deg")
                + "limits: {pin-zone: 0 mm}\n"
                + "frame: {members: [{name: it, outline: " + ClearanceTest.outline(member) + "}]}\n";
        Clearance.Gap found = ClearanceTest.gap(ClearanceTest.gaps(yaml), "tank", "it");
        double best = Double.POSITIVE_INFINITY;
        double contact = Double.NaN;
        for (int i = 0; i <= 1600; i++) {
            double tilt = Math.toRadians(0.05 * i);
            List<Vec2> turned =
                    tank.stream().map(p -> p.tiltedAbout(PIVOT, tilt)).toList();
            double gap = distance(turned, member);
            if (gap == 0 && Double.isNaN(contact)) {
                contact = tilt;
            }
            best = Math.min(best, gap);
        }
        assertThat(1000 * found.gap()).isCloseTo(1000 * best, within(best > 0 ? 0.5 : 1e-9));
        if (best == 0) {
            assertThat(Math.toDegrees(found.tilt())).isCloseTo(Math.toDegrees(contact), within(0.06));
        }
    }

    /** A shape with five to eight corners round a middle, not convex as a rule. */
    private static List<Vec2> star(Random random, Vec2 middle, double least, double most) {
        int n = 5 + random.nextInt(4);
        List<Vec2> all = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double r = least + (most - least) * random.nextDouble();
            Vec2 arm = new Vec2(0, Math.rint(1000 * r) / 1000).tilted(2 * Math.PI * i / n);
            all.add(new Vec2(
                    middle.x() + Math.rint(1000 * arm.x()) / 1000, middle.y() + Math.rint(1000 * arm.y()) / 1000));
        }
        return all;
    }

    private static double distance(List<Vec2> a, List<Vec2> b) {
        double best = Double.POSITIVE_INFINITY;
        for (Vec2 p : dense(a)) {
            for (int j = 0; j < b.size(); j++) {
                best = Math.min(best, ClearanceTest.toSide(p, b.get(j), b.get((j + 1) % b.size())));
            }
            if (inside(p, b)) {
                return 0;
            }
        }
        for (Vec2 p : b) {
            for (int j = 0; j < a.size(); j++) {
                best = Math.min(best, ClearanceTest.toSide(p, a.get(j), a.get((j + 1) % a.size())));
            }
            if (inside(p, a)) {
                return 0;
            }
        }
        return best;
    }

    private static List<Vec2> dense(List<Vec2> corners) {
        List<Vec2> all = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Vec2 from = corners.get(i);
            Vec2 step = corners.get((i + 1) % corners.size()).minus(from);
            int n = (int) Math.ceil(step.norm() / 0.002);
            for (int k = 0; k < n; k++) {
                all.add(from.plus(step.times((double) k / n)));
            }
        }
        return all;
    }

    private static boolean inside(Vec2 p, List<Vec2> area) {
        boolean in = false;
        for (int i = 0; i < area.size(); i++) {
            Vec2 a = area.get(i);
            Vec2 b = area.get((i + 1) % area.size());
            if (a.y() > p.y() != b.y() > p.y() && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                in = !in;
            }
        }
        return in;
    }
}
