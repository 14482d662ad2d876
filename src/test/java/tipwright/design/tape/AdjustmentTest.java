// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** The adjustment of tape readings against published examples, and against points that are known. */
class AdjustmentTest {
    private static final double[][] SIX = {
        {27.297, -4.953, 1.47},
        {20.693, -4.849, 1.93},
        {22.590, 0.524, 1.2},
        {17.113, -3.003, 2.17},
        {22.554, 4.727, 1.77},
        {22.447, -7.880, 1.6}
    };

    private static Adjusted solve(double[][] known, double[] guess, boolean upright, double... distances)
            throws WeakNetException {
        double[][] start = new double[known.length + 1][];
        boolean[][] free = new boolean[known.length + 1][3];
        List<Observation> all = new ArrayList<>();
        for (int i = 0; i < known.length; i++) {
            start[i] = known[i].clone();
            all.add(new Observation.Distance(i, known.length, distances[i], 1));
        }
        start[known.length] = guess;
        free[known.length] = new boolean[] {true, true, upright};
        return Adjustment.solve(start, free, all);
    }

    /**
     * Source: A. Norrdine, An algebraic solution to the multilateration problem, example B (points, distances); the least-squares
     * answer, its misfits and deviations were worked out anew by another program.
     */
    @Test
    void sixDistancesInSpace() throws WeakNetException {
        Adjusted found = solve(SIX, new double[] {26, -2, 1}, true, 3.652, 7.036, 4.586, 9.840, 7.402, 7.883);
        Vec3 at = found.place(6);
        assertThat(at.x()).isCloseTo(26.78401, within(1e-5));
        assertThat(at.y()).isCloseTo(-1.32870, within(1e-5));
        assertThat(at.z()).isCloseTo(1.45256, within(1e-5));
        double[] misfits = {0.0085, 0.0153, 0.0059, 0.0011, -0.0084, -0.0248};
        for (int i = 0; i < misfits.length; i++) {
            assertThat(found.misfit(i)).isCloseTo(misfits[i], within(1e-4));
        }
        double[] deviations = {0.012, 0.012, 0.184};
        for (int axis = 0; axis < 3; axis++) {
            assertThat(found.spread() * found.doubt(6, axis)).isCloseTo(deviations[axis], within(6e-4));
        }
    }

    /** Source: the same, with the distances as they were before correction; worked out anew by another program. */
    @Test
    void sixDistancesBeforeCorrection() throws WeakNetException {
        Vec3 at = solve(SIX, new double[] {26, -2, 1}, true, 3.652, 7.036, 4.586, 9.960, 7.542, 7.883)
                .place(6);
        assertThat(at.minus(new Vec3(26.78268, -1.39917, 0.75644)).norm()).isLessThan(2e-5);
    }

    /** Source: Norrdine, example A: three distances, two answers; worked out anew by another program. */
    @Test
    void threeDistancesInSpaceHaveTwoAnswers() throws WeakNetException {
        double[][] known = {{27.297, -4.953, 1.47}, {25.475, -6.124, 2.36}, {22.590, 0.524, 1.2}};
        Vec3 one = solve(known, new double[] {24, -2.6, 1}, true, 3.851, 3.875, 3.514)
                .place(3);
        Vec3 other = solve(known, new double[] {24.5, -2.4, 2}, true, 3.851, 3.875, 3.514)
                .place(3);
        assertThat(one.minus(new Vec3(24.31229, -2.52045, 1.53649)).norm()).isLessThan(1e-5);
        assertThat(other.minus(new Vec3(24.35062, -2.48109, 1.66673)).norm()).isLessThan(1e-5);
    }

    /** Source: C. D. Ghilani, Adjustment Computations, example 14.1 (from memory), ft. */
    @Test
    void threeStationsOfATextbook() throws WeakNetException {
        double[][] known = {{865.40, 4527.15, 0}, {2432.55, 2047.25, 0}, {2865.22, 27.15, 0}};
        Adjusted found = solve(known, new double[] {6900, 3700, 0}, false, 6049.00, 4736.83, 5446.49);
        assertThat(found.place(3).x()).isCloseTo(6861.3168, within(1e-3));
        assertThat(found.place(3).y()).isCloseTo(3727.8186, within(1e-3));
        double[] misfits = {-0.037, 0.077, -0.047};
        for (int i = 0; i < misfits.length; i++) {
            assertThat(found.misfit(i)).isCloseTo(misfits[i], within(6e-4));
        }
    }

    /** Four pegs and a tape, mm; worked out by another program. */
    @Test
    void fourPegs() throws WeakNetException {
        double[][] known = {{0, 0, 0}, {1500, 0, 0}, {1500, 900, 0}, {0, 900, 0}};
        Adjusted found = solve(known, new double[] {500, 400, 0}, false, 645, 1050, 1111, 734);
        assertThat(found.place(4).x()).isCloseTo(519.780, within(1e-3));
        assertThat(found.place(4).y()).isCloseTo(380.348, within(1e-3));
        double[] misfits = {-0.922, 1.426, -1.555, 0.989};
        for (int i = 0; i < misfits.length; i++) {
            assertThat(found.misfit(i)).isCloseTo(misfits[i], within(1e-3));
        }
        assertThat(found.spread()).isCloseTo(1.772, within(1e-3));
        assertThat(found.spread() * found.doubt(4, 0)).isCloseTo(1.06, within(5e-3));
        assertThat(found.spread() * found.doubt(4, 1)).isCloseTo(1.62, within(5e-3));
    }

    /** Source: classes I, II and III of tapes as sellers' tables print them, mm. */
    @Test
    void classesOfTapes() {
        double[] lengths = {3, 5, 8, 10};
        double[][] printed = {{0.4, 0.6, 0.9, 1.1}, {0.9, 1.3, 1.9, 2.3}, {1.8, 2.6, 3.8, 4.6}};
        for (Tape.Accuracy accuracy : Tape.Accuracy.values()) {
            for (int i = 0; i < lengths.length; i++) {
                assertThat(1000 * accuracy.largestError(lengths[i]))
                        .isCloseTo(printed[accuracy.ordinal()][i], within(1e-9));
            }
        }
    }

    /** 10,000 nets of three to eight points, each from the two before it or from more, with readings without error. */
    @Test
    void pointsThatAreKnownComeBack() throws WeakNetException {
        Random random = new Random(20261125);
        for (int run = 0; run < 10_000; run++) {
            int points = 3 + random.nextInt(6);
            double[][] truth = new double[points][3];
            double[][] start = new double[points][];
            boolean[][] free = new boolean[points][3];
            List<Observation> all = new ArrayList<>();
            for (int i = 0; i < points; i++) {
                truth[i] = i < 2
                        ? new double[] {i * (0.5 + random.nextDouble()), 0.2 * random.nextDouble(), 0}
                        : offLine(random, truth, i);
                start[i] = truth[i].clone();
                if (i >= 2) {
                    free[i] = new boolean[] {true, true, false};
                    int from = random.nextBoolean() ? 0 : i - 2;
                    for (int j = from; j < i; j++) {
                        all.add(new Observation.Distance(
                                j, i, Observation.apart(truth[j], truth[i]), 0.001 + 0.002 * random.nextDouble()));
                    }
                    start[i][0] += 0.004 * random.nextGaussian();
                    start[i][1] += 0.004 * random.nextGaussian();
                }
            }
            Adjusted found = Adjustment.solve(start, free, all);
            for (int i = 0; i < points; i++) {
                Vec3 off = found.place(i).minus(new Vec3(truth[i][0], truth[i][1], truth[i][2]));
                assertThat(off.norm()).as("net %d point %d", run, i).isLessThan(1e-9);
            }
        }
    }

    /** A place from which no two of the points before it lie nearly in one line. */
    private static double[] offLine(Random random, double[][] truth, int count) {
        while (true) {
            Vec2 p = new Vec2(3 * random.nextDouble() - 1, 3 * random.nextDouble() - 1);
            double flattest = 1;
            for (int i = Math.max(0, count - 2); i < count; i++) {
                for (int j = i + 1; j < count; j++) {
                    Vec2 a = new Vec2(truth[i][0], truth[i][1]).minus(p);
                    Vec2 b = new Vec2(truth[j][0], truth[j][1]).minus(p);
                    flattest = Math.min(flattest, Math.abs(a.cross(b)) / (a.norm() * b.norm()));
                }
            }
            if (flattest > 0.3 && flattest <= 1) {
                return new double[] {p.x(), p.y(), 0};
            }
        }
    }

    /** Readings with the error of a class II tape, and of holding it: the truth is within the doubt in about 95 of 100. */
    @Test
    void truthIsWithinTheDoubt() throws WeakNetException {
        Random random = new Random(7);
        double[][] known = {{0, 0, 0}, {1.2, 0.1, 0}, {0.3, 1.1, 0}};
        double[] truth = {0.8, 0.7, 0};
        int runs = 4000;
        int withinX = 0;
        int withinY = 0;
        for (int run = 0; run < runs; run++) {
            double[][] start = {known[0], known[1], known[2], truth.clone()};
            boolean[][] free = new boolean[4][3];
            free[3] = new boolean[] {true, true, false};
            List<Observation> all = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                double length = Observation.apart(known[i], truth);
                double tape = (2 * random.nextDouble() - 1) * Tape.Accuracy.II.largestError(length);
                double held = 0.002 * random.nextGaussian();
                all.add(new Observation.Distance(i, 3, length + tape + held, Tape.USUAL.doubt(length, false)));
            }
            Adjusted found = Adjustment.solve(start, free, all);
            withinX += Math.abs(found.place(3).x() - truth[0]) <= 1.96 * found.doubt(3, 0) ? 1 : 0;
            withinY += Math.abs(found.place(3).y() - truth[1]) <= 1.96 * found.doubt(3, 1) ? 1 : 0;
        }
        assertThat(withinX / (double) runs).isBetween(0.94, 0.96);
        assertThat(withinY / (double) runs).isBetween(0.94, 0.96);
    }

    /** Two references in line with the point leave it open across that line. */
    @Test
    void aPointInLineIsOpen() {
        double[][] start = {{0, 0, 0}, {1, 0, 0}, {2, 0, 0}};
        boolean[][] free = {{false, false, false}, {false, false, false}, {true, true, false}};
        List<Observation> all =
                List.of(new Observation.Distance(0, 2, 2, 0.002), new Observation.Distance(1, 2, 1, 0.002));
        assertThatThrownBy(() -> Adjustment.solve(start, free, all))
                .isInstanceOfSatisfying(WeakNetException.class, e -> {
                    assertThat(e.point()).isEqualTo(2);
                    assertThat(e.upAndDown()).isTrue();
                });
    }

    /** One reading that is 40 mm off among five is the one that is suspected, and left out the rest closes. */
    @Test
    void aReadingThatSpoilsTheRestStandsOut() throws WeakNetException {
        double[][] known = {{0, 0, 0}, {1.2, 0.1, 0}, {0.3, 1.1, 0}, {1.5, 1.2, 0}, {-0.4, 0.6, 0}};
        double[] truth = {0.8, 0.7, 0};
        for (int bad = 0; bad < 5; bad++) {
            double[][] start = {known[0], known[1], known[2], known[3], known[4], {0.79, 0.72, 0}};
            boolean[][] free = new boolean[6][3];
            free[5] = new boolean[] {true, true, false};
            List<Observation> all = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                double length = Observation.apart(known[i], truth) + (i == bad ? 0.04 : 0);
                all.add(new Observation.Distance(i, 5, length, 0.002));
            }
            Adjusted found = Adjustment.solve(start, free, all);
            for (int i = 0; i < 5; i++) {
                if (i != bad) {
                    assertThat(Math.abs(found.suspicion(i))).isLessThan(Math.abs(found.suspicion(bad)));
                }
            }
            assertThat(Math.abs(found.suspicion(bad))).isGreaterThan(3.29);
            assertThat(found.misfit(bad) / found.redundancy(bad)).isCloseTo(-0.04, within(0.002));
        }
    }
}
