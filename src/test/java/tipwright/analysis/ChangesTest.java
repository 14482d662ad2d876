// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.design.Design;
import tipwright.design.drive.TiltRange;

/** What changes at one tilt is worked out on both of its sides, whatever the step. */
class ChangesTest {
    private static final String CAKE = Examples.BOX.replace(
            "density: 1400 kg/m3, repose: 30 deg", "solids-by-volume: 40 %, repose: 30 deg, release: 79 deg");
    private static final String STAGES = Examples.BOX.replace(
            "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}",
            "{kind: telescopic, closed: 800 mm, relief-pressure: 150 bar, stages: [{diameter: 100 mm, stroke: 300 mm},"
                    + " {diameter: 80 mm, stroke: 300 mm}, {diameter: 60 mm, stroke: 400 mm}]}");

    private static Analysis stepped(String yaml, double degrees) throws CannotComputeException {
        Design design = Examples.read(yaml);
        TiltRange range = new TiltRange(0, Math.toRadians(80), Math.toRadians(degrees));
        return Analyser.analyse(design.withTilt(range));
    }

    private static List<Row> rows(Analysis analysis, String name) {
        return analysis.cases().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow()
                .rows();
    }

    private static double least(Analysis analysis) {
        return rows(analysis, "caked").stream()
                .mapToDouble(r -> r.rest().force())
                .min()
                .orElseThrow();
    }

    /** A cake that lets go at 79 degrees pulls hardest just before; a step of a twentieth of a degree is the referee. */
    @Test
    void aReleaseBetweenCoarseStepsIsNotMissed() throws CannotComputeException {
        double fine = least(stepped(CAKE, 0.05));
        double coarse = least(stepped(CAKE, 10));
        assertThat(fine).isNegative();
        assertThat(coarse).isCloseTo(fine, within(1e-4 * Math.abs(fine)));
    }

    /** The rows of the steps are what they are without the sides. */
    @Test
    void theStepsStayRows() throws CannotComputeException {
        double[] tilts =
                rows(stepped(CAKE, 10), "caked").stream().mapToDouble(Row::tilt).toArray();
        for (int i = 0; i <= 8; i++) {
            double step = i * Math.toRadians(10);
            assertThat(tilts).contains(step);
        }
        assertThat(tilts).isSorted();
    }

    /** Lengths by plane geometry: the distance of the two pins as the tank turns about its pivot. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 3, 10})
    void bothSidesOfAStageChangeAreThere(double step) throws CannotComputeException {
        Analysis analysis = stepped(STAGES, step);
        for (double change : new double[] {0.8 + 0.3, 0.8 + 0.6}) {
            List<Pose> poses = analysis.poses();
            boolean found = false;
            for (int i = 1; i < poses.size(); i++) {
                double before = poses.get(i - 1).length();
                double after = poses.get(i).length();
                if (before < change && after >= change) {
                    found = true;
                    assertThat(after - before).isLessThan(1e-6);
                    assertThat(length(poses.get(i).tilt())).isCloseTo(change, within(1e-6));
                }
            }
            assertThat(found).isTrue();
        }
    }

    private static double length(double tilt) {
        double x = 0.4 + Math.cos(tilt) * (-0.45 - 0.4) + Math.sin(tilt) * 0;
        double y = 0.4 - Math.sin(tilt) * (-0.45 - 0.4);
        return Math.hypot(x + 0.6, y + 0.5);
    }
}
