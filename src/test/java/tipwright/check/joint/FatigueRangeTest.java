// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec3;
import tipwright.strength.WeldGroup;

/** The range of stress in a weld over a dump, against every load worked out one at a time. */
class FatigueRangeTest {
    private static Design shipped(String name) {
        return ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
    }

    private static List<Finding> run(Analysis analysis) {
        return new FatigueCheck(new WallInfluences()).run(analysis);
    }

    /** Of every end of a seam the box around all forces that it takes on the way; its diagonal over the throat. */
    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "saw-skid", "six-link"})
    void rangeOfAWeldIsThatOfItsLoads(String name) throws Exception {
        Analysis analysis = Analyser.analyse(shipped(name));
        List<Finding> found = run(analysis);
        int looked = 0;
        for (Fastening f : analysis.design().fastenings()) {
            FilletWeld weld = f.weld();
            if (weld == null) {
                continue;
            }
            WeldGroup group = new WeldGroup(weld);
            JointLoad load =
                    Objects.requireNonNull(JointLoad.of(analysis, f, weld.at().z()));
            double[][] low = new double[group.ends()][3];
            double[][] high = new double[group.ends()][3];
            load.normal(held -> {
                List<Vec3> ends = group.along(held.force(), load.place());
                for (int i = 0; i < ends.size(); i++) {
                    double[] at = {ends.get(i).x(), ends.get(i).y(), ends.get(i).z()};
                    for (int k = 0; k < 3; k++) {
                        low[i][k] = Math.min(low[i][k], at[k]);
                        high[i][k] = Math.max(high[i][k], at[k]);
                    }
                }
            });
            double most = 0;
            for (int i = 0; i < low.length; i++) {
                double square = 0;
                for (int k = 0; k < 3; k++) {
                    square += (high[i][k] - low[i][k]) * (high[i][k] - low[i][k]);
                }
                most = Math.max(most, Math.sqrt(square));
            }
            double range = most / (weld.leg() / Math.sqrt(2));
            Finding its = found.stream()
                    .filter(g -> g.id().equals("fatigue/weld-" + f.joint()))
                    .findFirst()
                    .orElseThrow();
            assertThat(its.demand()).as(f.joint()).isCloseTo(range, within(1e-3 * range));
            looked++;
        }
        assertThat(looked).isPositive();
    }

    /** Nothing welded and nothing on the wall: nothing to tire, whatever else is missing. */
    @Test
    void withoutWeldAndSeatNothingIsAsked() throws Exception {
        Design design = shipped("silt-trailer");
        List<Fastening> bare = design.fastenings().stream()
                .map(f -> new Fastening(f.joint(), f.on(), null, f.bolts(), f.lug(), null, f.flange(), f.height()))
                .toList();
        assertThat(run(Analyser.analyse(design.withFastenings(bare)))).isEmpty();
        assertThat(run(Analyser.analyse(design))).isNotEmpty();
    }
}
