// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.joint.WeldCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;

/** What is only looked at where the pins are off the worst ways. */
class OtherChecksTest {
    private static final double OFF = 0.003;

    /** The demo with a weld at the frame pin of some size. */
    private static Design demo(double leg) throws IOException {
        return Examples.read(Files.readString(Path.of("geometry", "silt-trailer.yaml"))
                .replace("step: 1 deg", "step: 10 deg")
                .replace("leg: 6 mm", "leg: " + leg + " mm")
                .replaceAll("(?m)^road:.*\n|^cold:.*\n|^channel:.*\n", ""));
    }

    private static Finding weld(Design design) throws CannotComputeException {
        return new WeldCheck()
                .run(Analyser.analyse(design)).stream()
                        .filter(f -> f.id().equals("weld/frame-pin"))
                        .findFirst()
                        .orElseThrow();
    }

    /** A weld that just holds as drawn: in the thirty worst corners it is as the general analysis of the moved design says. */
    @Test
    void aWeldThatHoldsAsDrawnFailsWithThePinsOff() throws IOException, CannotComputeException {
        double leg = 6 * weld(demo(6)).utilisation() / 0.99;
        Design design = demo(Math.ceil(leg * 1000) / 1000);
        assertThat(weld(design).verdict()).isEqualTo(Verdict.CLOSE);
        Welder welder = new Welder(design);
        welder.tolerance(OFF, 0, 1);
        OtherChecks others = welder.others(30);
        assertThat(others.tried()).isEqualTo(30);
        OtherChecks.Other weld = others.all().stream()
                .filter(o -> o.drawn().id().equals("weld/frame-pin"))
                .findFirst()
                .orElseThrow();
        List<double[]> corners = new ArrayList<>();
        for (int corner = 0; corner < 1 << 6; corner++) {
            double[] off = new double[6];
            for (int i = 0; i < 6; i++) {
                off[i] = (corner >> i & 1) == 0 ? -OFF : OFF;
            }
            corners.add(off);
        }
        corners.sort(Comparator.comparingDouble((double[] c) -> welder.at(c).utilisation())
                .reversed());
        Trial trial = new Trial(design);
        double most = 0;
        int fails = 0;
        for (double[] corner : corners.subList(0, 30)) {
            double used = weld(trial.moved(corner)).utilisation();
            most = Math.max(most, used);
            fails += used > 1 ? 1 : 0;
        }
        assertThat(most).isGreaterThan(1);
        assertThat(weld.used()).isCloseTo(most, within(1e-6));
        assertThat(weld.fails()).isEqualTo(fails);
        assertThat(weld.spoilt()).isTrue();
        assertThat(others.spoilt()).contains(weld);
        assertThat(others.parts()).contains("welds", "bolts", "lug", "tank wall", "worn pins");
    }
}
