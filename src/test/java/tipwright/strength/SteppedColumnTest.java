// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.TelescopicCylinder;

/** Columns of several sections, each by another way. */
class SteppedColumnTest {
    private static final int STEPS = 360;
    private static final double STEP = 0.0025;
    private static final double LENGTH = STEPS * STEP;

    /** Sections whose lengths are whole steps and fill up LENGTH. */
    private static double[] lengths(Random random, int count) {
        int[] cuts = random.ints(1, STEPS).distinct().limit(count - 1L).sorted().toArray();
        double[] lengths = new double[count];
        int before = 0;
        for (int i = 0; i < count; i++) {
            int cut = i < count - 1 ? cuts[i] : STEPS;
            lengths[i] = (cut - before) * STEP;
            before = cut;
        }
        return lengths;
    }

    private static double[] stiffness(Random random, int count) {
        double[] all = new double[count];
        Arrays.setAll(all, i -> Math.exp(4 * random.nextDouble()) * 1000);
        return all;
    }

    /**
     * Finite differences a step apart, -w'' = P w / EI with w = 0 at both pins, as a symmetric tridiagonal matrix whose
     * lowest eigenvalue another library finds. Where two sections meet, the mean of their 1 / EI counts.
     */
    private static double differences(double[] stiffness, double[] lengths) {
        double[] weight = new double[STEPS + 1];
        int at = 0;
        for (int i = 0; i < lengths.length; i++) {
            int steps = (int) Math.round(lengths[i] / STEP);
            for (int j = 0; j < steps; j++) {
                weight[at + j] += 0.5 / stiffness[i];
                weight[at + j + 1] += 0.5 / stiffness[i];
            }
            at += steps;
        }
        double[] main = new double[STEPS - 1];
        double[] beside = new double[STEPS - 2];
        Arrays.setAll(main, i -> 2 / (STEP * STEP) / weight[i + 1]);
        Arrays.setAll(beside, i -> -1 / (STEP * STEP) / Math.sqrt(weight[i + 1] * weight[i + 2]));
        double[] values = new EigenDecompositionSymmetric(main, beside).getEigenvalues();
        return Arrays.stream(values).min().orElseThrow();
    }

    @RepeatedTest(12)
    void againstFiniteDifferences(RepetitionInfo info) {
        Random random = new Random(info.getCurrentRepetition());
        int count = 1 + random.nextInt(8);
        double[] lengths = lengths(random, count);
        double[] stiffness = stiffness(random, count);
        double other = differences(stiffness, lengths);
        assertThat(Column.stepped(stiffness, lengths)).isCloseTo(other, within(1e-4 * other));
    }

    /** pi^2 E I / L^2 however it is cut. Source: Euler. */
    @RepeatedTest(8)
    void equalSectionsAreOneColumn(RepetitionInfo info) {
        int count = info.getCurrentRepetition();
        double[] stiffness = new double[count];
        Arrays.fill(stiffness, 5000);
        double euler = Math.PI * Math.PI * 5000 / (LENGTH * LENGTH);
        assertThat(Column.stepped(stiffness, lengths(new Random(count), count))).isCloseTo(euler, within(1e-9 * euler));
    }

    /** Lowest root of sin(k1 L1) cos(k2 L2)/k1 + cos(k1 L1) sin(k2 L2)/k2, looked for from below in small steps. */
    @RepeatedTest(12)
    void twoSectionsAgainstTheProductForm(RepetitionInfo info) {
        Random random = new Random(100 + info.getCurrentRepetition());
        double[] l = lengths(random, 2);
        double[] ei = stiffness(random, 2);
        double step = Math.PI * Math.PI * Math.min(ei[0], ei[1]) / (LENGTH * LENGTH) / 1000;
        double p = step;
        while (product(p, ei, l) > 0) {
            p += step;
        }
        double low = p - step;
        for (int i = 0; i < 60; i++) {
            double middle = (low + p) / 2;
            if (product(middle, ei, l) > 0) {
                low = middle;
            } else {
                p = middle;
            }
        }
        assertThat(Column.stepped(ei[0], l[0], ei[1], l[1])).isCloseTo(p, within(1e-10 * p));
    }

    private static double product(double p, double[] ei, double[] l) {
        double k1 = Math.sqrt(p / ei[0]);
        double k2 = Math.sqrt(p / ei[1]);
        return Math.sin(k1 * l[0]) * Math.cos(k2 * l[1]) / k1 + Math.cos(k1 * l[0]) * Math.sin(k2 * l[1]) / k2;
    }

    private static Finding buckling(String yaml) throws CannotComputeException {
        return Checker.check(Examples.read(yaml)).findings().stream()
                .filter(f -> f.id().equals("buckling"))
                .findFirst()
                .orElseThrow();
    }

    /** The stages bear more than their narrowest over the whole length and less than their widest. */
    @Test
    void telescopicCylinderStageByStage() throws CannotComputeException, IOException {
        String yaml = Files.readString(Path.of("geometry", "stage-tub.yaml"));
        String thin = yaml.replaceAll(", bore: (63|48|30) mm", "")
                .replaceFirst("tube: \\{[^}]*}", "rod: {diameter: 45 mm, bore: 30 mm}");
        String none = swap(yaml, ", bore: 48 mm", "");
        Finding stages = buckling(yaml);
        Finding narrow = buckling(thin);
        assertThat(stages.note().metric()).isEqualTo("each stage as far as it is out");
        assertThat(narrow.note().metric()).isEqualTo("bare rod over the whole length");
        assertThat(stages.capacity()).isGreaterThan(narrow.capacity());
        assertThat(buckling(none).note().metric()).isEqualTo("actuator.rod missing, and actuator.stages: bore missing");
    }

    /** The longer it is the sooner it buckles, so what the longest bears every shorter one does; with no body, a thin or a stout one. */
    @RepeatedTest(30)
    void whatTheLongestBearsEveryShorterOneDoes(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        int rod = 12 + random.nextInt(40);
        long outside = Math.round(rod * (1.35 + 1.5 * random.nextDouble()));
        String tube = run.getCurrentRepetition() % 3 == 0
                ? ""
                : ", tube: {outside: " + outside + " mm, inside: " + outside * 0.8 + " mm, length: "
                        + (200 + random.nextInt(590)) + " mm}";
        Actuator actuator = Examples.read(
                        swap(Examples.BOX, "pull: 12 kN}", "pull: 12 kN, rod: {diameter: " + rod + " mm}" + tube + "}"))
                .drive()
                .actuators()
                .get(0)
                .actuator();
        double least = Column.least(actuator, 0.8, 1.7);
        assertThat(least).isPositive();
        for (double length = 0.8; length <= 1.7; length += 0.01) {
            assertThat(Column.actuator(actuator, length)).isGreaterThanOrEqualTo(least);
        }
        assertThat(Column.actuator(actuator, 1.7)).isCloseTo(least, within(1e-8 * least));
    }

    /** Where the bare rod stands for rod and body, more length may mean more. */
    @Test
    void noBoundWhereTheBodyIsAsLongAsAllOfIt() {
        Actuator actuator = Examples.read(swap(
                        Examples.BOX,
                        "pull: 12 kN}",
                        "pull: 12 kN, rod: {diameter: 20 mm}, tube: {outside: 60 mm, inside: 50 mm, length: 790 mm}}"))
                .drive()
                .actuators()
                .get(0)
                .actuator();
        assertThat(Column.least(actuator, 0.79, 1.7)).isZero();
        assertThat(Column.actuator(actuator, 0.79)).isLessThan(Column.actuator(actuator, 0.81));
    }

    /** Squash load: a short thick one yields. Half of it: Johnson's parabola and Euler's curve meet there. Source: Johnson. */
    @Test
    void shortStagesYield() {
        TelescopicCylinder.Part part = new TelescopicCylinder.Part(0.05, 0.06, 0.04);
        double squash = 355e6 * part.area();
        double p = Column.stages(List.of(part), 205e9, 355e6);
        assertThat(p).isCloseTo(Column.uniform(0.05, part.area(), part.inertia(), 205e9, 355e6), within(1e-9 * p));
        assertThat(p).isBetween(0.98 * squash, squash);
        TelescopicCylinder.Part slim = new TelescopicCylinder.Part(3, 0.06, 0.04);
        double euler = Column.uniform(3, slim.area(), slim.inertia(), 205e9, 355e6);
        assertThat(Column.stages(List.of(slim), 205e9, 355e6)).isCloseTo(euler, within(1e-9 * euler));
    }
}
