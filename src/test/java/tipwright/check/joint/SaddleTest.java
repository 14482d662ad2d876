// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** The demo's drum on two saddles. */
class SaddleTest {
    private static final String CRADLE =
            "cradle: {at: [[-450 mm, 255 mm], [450 mm, 255 mm]], angle: 120 deg, width: 100 mm}\n";
    private static String demo = "";

    @BeforeAll
    static void read() throws IOException {
        demo = swap(
                Files.readString(Path.of("geometry/silt-trailer.yaml")),
                "step: 1 deg",
                "step: 10 deg",
                "site: {grade: 2 deg, cross-slope: 1 deg}",
                "site: {grade: 0 deg}");
    }

    /**
     * By hand, stowed and full: each saddle's load by the lever rule, K5 and K6 of a saddle of 120 deg from the printed table, K7 = K6
     * (1.5 x 0.523 - 0.5) 200 mm from the end at a radius of 382.5 mm, linear between a quarter and all. Source: Zick's coefficients
     * (Pressure Vessel Design Manual, p. 174: K5 0.760; K6 0.0529 from the closed form).
     */
    @Test
    void stressesByTheTable() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(demo + CRADLE));
        double most = 0;
        for (var result : analysis.cases()) {
            Row row = result.rows().get(0);
            if (result.load().normalAt(row.tilt())) {
                double x = row.load().centroid().x();
                most = Math.max(most, row.load().mass() * 9.80665 * (0.45 - x) / 0.9);
            }
        }
        double r = 0.3825;
        double t = 0.005;
        double helped = 0.1 + 1.56 * Math.sqrt(r * t);
        Finding below = One.of(demo + CRADLE, "saddle/below-the-front-saddle");
        assertThat(below.demand()).isCloseTo(0.760 * most / (t * helped), within(0.002 * below.demand()));
        double share = 0.2 / r;
        double k7 = 0.0529 * (1.5 * share - 0.5);
        double tip = most / (4 * t * helped) + 2 * 12 * k7 * most * r / (1.3 * t * t);
        Finding horn = One.of(demo + CRADLE, "saddle/tip-of-the-front-saddle");
        assertThat(horn.demand()).isCloseTo(tip, within(0.002 * tip));
        String soft = swap(CRADLE, "width: 100 mm", "width: 100 mm, rigid: no, welded: yes");
        double once = most / (4 * t * helped) + 12 * k7 * most * r / (1.3 * t * t);
        assertThat(One.of(demo + soft, horn.id()).demand()).isCloseTo(once, within(0.002 * once));
        assertThat(One.of(demo + soft, below.id()).demand()).isCloseTo(below.demand() / 10, within(1e-6 * tip));
    }

    /** The same drum and its saddles 40 mm nearer to the dump end: each saddle's load and its way to the end count from the middle. */
    @Test
    void aDrumWithItsMiddleElsewhere() throws CannotComputeException {
        String aside = swap(
                demo + CRADLE,
                "centre: [0 mm, 640 mm, 0 mm]",
                "centre: [40 mm, 640 mm, 0 mm]",
                "centre: [767 mm, 640 mm, 0 mm]",
                "centre: [807 mm, 640 mm, 0 mm]",
                "[[-450 mm, 255 mm], [450 mm, 255 mm]]",
                "[[-410 mm, 255 mm], [490 mm, 255 mm]]");
        Finding below = One.of(aside, "saddle/below-the-front-saddle");
        double most = 0;
        for (var result : Analyser.analyse(Examples.read(aside)).cases()) {
            Row row = result.rows().get(0);
            if (result.load().normalAt(row.tilt())) {
                double x = row.load().centroid().x() - 0.040;
                most = Math.max(most, row.load().mass() * 9.80665 * (0.45 - x) / 0.9);
            }
        }
        double r = 0.3825;
        double t = 0.005;
        double helped = 0.1 + 1.56 * Math.sqrt(r * t);
        assertThat(below.demand()).isCloseTo(0.760 * most / (t * helped), within(0.002 * below.demand()));
        double k7 = 0.0529 * (1.5 * 0.2 / r - 0.5);
        double tip = most / (4 * t * helped) + 2 * 12 * k7 * most * r / (1.3 * t * t);
        assertThat(One.of(aside, "saddle/tip-of-the-front-saddle").demand()).isCloseTo(tip, within(0.002 * tip));
    }

    /**
     * Tipped with its door shut, the weight leans on the rear saddle: by hand, what is left of it square to the drum, by the lever rule,
     * and its pull along at the height of its middle over the distance of the saddles.
     */
    @Test
    void tippedItLeansOnTheRearSaddle() throws CannotComputeException {
        String shut = swap(demo, "opens-at: 0 deg", "opens-at: 50 deg") + CRADLE;
        Finding front = One.of(shut, "saddle/below-the-front-saddle");
        Finding rear = One.of(shut, "saddle/below-the-rear-saddle");
        assertThat(front.tilt()).isZero();
        assertThat(rear.tilt()).isGreaterThan(0);
        double most = 0;
        for (var result : Analyser.analyse(Examples.read(shut)).cases()) {
            for (Row row : result.rows()) {
                double weight = row.load().mass() * 9.80665;
                double across =
                        weight * Math.cos(row.tilt()) * (row.load().centroid().x() + 0.45) / 0.9;
                double along =
                        weight * Math.sin(row.tilt()) * (row.load().centroid().y() - 0.640 + 0.3825) / 0.9;
                most = Math.max(most, result.load().normalAt(row.tilt()) ? across + along : 0);
            }
        }
        double helped = 0.1 + 1.56 * Math.sqrt(0.3825 * 0.005);
        assertThat(rear.demand()).isCloseTo(0.760 * most / (0.005 * helped), within(0.002 * rear.demand()));
    }

    @Test
    void limitIsHitExactly() throws CannotComputeException {
        String id = "saddle/tip-of-the-rear-saddle";
        Finding asItIs = One.of(demo + CRADLE, id);
        double allowed = asItIs.factor() / asItIs.utilisation();
        String factor = "factors: {wall: %s}\n";
        assertThat(One.of(demo + CRADLE + factor.replace("%s", "" + allowed * (1 - 1e-9)), id)
                        .verdict())
                .isEqualTo(Verdict.CLOSE);
        assertThat(One.of(demo + CRADLE + factor.replace("%s", "" + allowed * (1 + 1e-9)), id)
                        .verdict())
                .isEqualTo(Verdict.FAIL);
    }

    /** The table begins at 120 deg; less is no pass. A tank that is not round has no such saddles. */
    @Test
    void outOfItsRangeItCannotTell() throws CannotComputeException {
        String less = swap(CRADLE, "120 deg", "100 deg");
        assertThat(One.of(demo + less, "saddle/front-saddle").verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(One.of(Examples.BOX + CRADLE, "saddle").verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(One.all(demo, "saddle")).isEmpty();
    }
}
