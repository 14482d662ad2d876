// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.geometry.Vec2;

/** Loads on supports against the conditions of balance and of springs that only press. Source: elementary statics. */
class SupportLoadsTest {
    private static final double FORCE = 9000;

    static IntStream rounds() {
        return IntStream.range(0, 400);
    }

    /** With three supports it is plain statics: the share of each is that of the triangle opposite (barycentric). */
    @ParameterizedTest
    @MethodSource("rounds")
    void threeSupports(int round) {
        Random random = new Random(round);
        List<Vec2> p = places(random, 3);
        double[] share = {random.nextDouble(), random.nextDouble(), random.nextDouble()};
        double sum = share[0] + share[1] + share[2];
        Vec2 at = Vec2.ZERO;
        for (int i = 0; i < 3; i++) {
            at = at.plus(p.get(i).times(share[i] / sum));
        }
        double[] loads = SupportLoads.of(p, FORCE, at);
        double area = Math.abs(p.get(1).minus(p.get(0)).cross(p.get(2).minus(p.get(0))));
        for (int i = 0; i < 3 && area > 0.05; i++) {
            assertThat(loads[i]).isCloseTo(FORCE * share[i] / sum, within(1e-6 * FORCE));
        }
    }

    /**
     * With more, all stand on equal springs under a stiff frame: what presses bears a + b x + c z, a, b, c the sink and lean of the
     * frame; what lifts bears nothing; together they balance the force.
     */
    @ParameterizedTest
    @MethodSource("rounds")
    void moreThanThreeSupports(int round) {
        Random random = new Random(round);
        List<Vec2> p = places(random, 4 + round % 4);
        Vec2 at = Vec2.ZERO;
        double whole = 0;
        for (Vec2 support : p) {
            double w = Math.pow(random.nextDouble(), 4);
            at = at.plus(support.times(w));
            whole += w;
        }
        at = at.times(1 / whole);
        double[] loads = SupportLoads.of(p, FORCE, at);
        double sum = 0;
        Vec2 first = Vec2.ZERO;
        List<Integer> pressing = new ArrayList<>();
        for (int i = 0; i < loads.length; i++) {
            assertThat(loads[i]).isGreaterThanOrEqualTo(-1e-6 * FORCE);
            sum += loads[i];
            first = first.plus(p.get(i).times(loads[i]));
            if (loads[i] > 1e-6 * FORCE) {
                pressing.add(i);
            }
        }
        assertThat(sum).isCloseTo(FORCE, within(1e-6 * FORCE));
        assertThat(first.times(1 / FORCE).minus(at).norm()).isLessThan(1e-6);
        assertThat(pressing).hasSizeGreaterThanOrEqualTo(3);
        // the plane through the three that press and lie farthest from one line
        int[] t = widest(p, pressing);
        for (int i : pressing) {
            assertThat(loads[i]).isCloseTo(plane(p, loads, t, p.get(i)), within(1e-4 * FORCE));
        }
        for (int i = 0; i < loads.length; i++) {
            // what bears nothing stands over the ground, or just touches it
            assertThat(plane(p, loads, t, p.get(i)) - loads[i]).isLessThan(1e-4 * FORCE);
        }
    }

    private static int[] widest(List<Vec2> p, List<Integer> from) {
        int[] best = new int[3];
        double most = -1;
        for (int i : from) {
            for (int j : from) {
                for (int k : from) {
                    double area = p.get(j).minus(p.get(i)).cross(p.get(k).minus(p.get(i)));
                    if (area > most) {
                        most = area;
                        best = new int[] {i, j, k};
                    }
                }
            }
        }
        return best;
    }

    private static double plane(List<Vec2> p, double[] loads, int[] t, Vec2 at) {
        Vec2 a = p.get(t[0]);
        Vec2 b = p.get(t[1]).minus(a);
        Vec2 c = p.get(t[2]).minus(a);
        double det = b.cross(c);
        double u = at.minus(a).cross(c) / det;
        double v = b.cross(at.minus(a)) / det;
        return loads[t[0]] + u * (loads[t[1]] - loads[t[0]]) + v * (loads[t[2]] - loads[t[0]]);
    }

    private static List<Vec2> places(Random random, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> new Vec2(2 * random.nextDouble() - 1, 2 * random.nextDouble() - 1))
                .toList();
    }

    /** A square: over one corner it bears all, the neighbours share the rest; on the edge line only two press. */
    @Test
    void squareWithTheForceNearACorner() {
        List<Vec2> square = List.of(new Vec2(0, 0), new Vec2(1, 0), new Vec2(1, 1), new Vec2(0, 1));
        assertThat(SupportLoads.of(square, FORCE, new Vec2(0.5, 0.5)))
                .containsOnly(new double[] {2250, 2250, 2250, 2250}, within(1e-9));
        // beyond the line through both neighbours the far corner lifts: 0.8, 0.1 and 0.1 of the force
        assertThat(SupportLoads.of(square, FORCE, new Vec2(0.1, 0.1)))
                .containsExactly(new double[] {7200, 900, 0, 900}, within(1e-6));
        assertThat(SupportLoads.of(square, FORCE, new Vec2(-0.1, 0.5))).containsOnly(Double.NaN);
        assertThat(SupportLoads.of(square, FORCE, new Vec2(0.5, 1.1))).containsOnly(Double.NaN);
    }

    @Test
    void supportsInOneLineHoldNothingUpright() {
        List<Vec2> line = List.of(new Vec2(0, 0), new Vec2(1, 1), new Vec2(2, 2), new Vec2(-1, -1));
        assertThat(SupportLoads.of(line, FORCE, new Vec2(0.5, 0.5))).containsOnly(Double.NaN);
    }
}
