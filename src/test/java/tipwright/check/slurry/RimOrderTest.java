// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;

/** A rim that is told by its corners, one way round or the other, is the same rim as one that is told by its middle and sizes. */
class RimOrderTest {
    private static final String TOP = "rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}";
    private static final String MORE = "receiver: {near: [450 mm, -600 mm], far: [6 m, -600 mm]}\n";
    private static final String BOX = swap(
            Examples.BOX,
            "80 deg",
            "60 deg",
            "repose: 30 deg",
            "repose: 30 deg, release: 40 deg, wall-friction: 3 deg");

    private static List<Finding> found(String rim, String door) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(swap(BOX, TOP, rim + door + "}") + MORE));
        List<Finding> all = new ArrayList<>(new LandingCheck().run(analysis));
        all.addAll(new DoorCheck().run(analysis));
        return all;
    }

    @ParameterizedTest
    @CsvSource({
        "top, 'centre: [0 m, 1.5 m, 0 m], normal: y', '[500 mm, 1.5 m, 500 mm]', '[500 mm, 1.5 m, -500 mm]',"
                + " '[-500 mm, 1.5 m, -500 mm]', '[-500 mm, 1.5 m, 500 mm]', ''",
        "end, 'centre: [500 mm, 1 m, 0 mm], normal: x', '[500 mm, 1.5 m, 500 mm]', '[500 mm, 1.5 m, -500 mm]',"
                + " '[500 mm, 500 mm, -500 mm]', '[500 mm, 500 mm, 500 mm]', '510 mm'",
        "far, 'centre: [-500 mm, 1 m, 0 mm], normal: [-1, 0, 0]', '[-500 mm, 1.5 m, 500 mm]', '[-500 mm, 1.5 m, -500 mm]',"
                + " '[-500 mm, 500 mm, -500 mm]', '[-500 mm, 500 mm, 500 mm]', '-510 mm'",
    })
    void isTheSameEitherWayRound(String name, String middle, String a, String b, String c, String d, String x)
            throws CannotComputeException {
        String door = x.isEmpty()
                ? ""
                : ", door: {hinge: [X, 1.5 m, 0 mm], latch: [X, 500 mm, 0 mm], latch-rating: 50 kN, hinge-rating: 50 kN, mass: 90 kg}"
                        .replace("X", x);
        List<Finding> expected = found("rim: rectangle, width: 1 m, height: 1 m, " + middle, door);
        List<String> corners = new ArrayList<>(List.of(a, b, c, d));
        for (int i = 0; i < 2; i++) {
            List<Finding> all = found("rim: polygon, points: [" + String.join(", ", corners) + "]", door);
            assertThat(all).as(name).hasSameSizeAs(expected);
            for (int k = 0; k < all.size(); k++) {
                Finding is = all.get(k);
                Finding was = expected.get(k);
                assertThat(is.id()).isEqualTo(was.id());
                assertThat(is.verdict()).as(is.id()).isEqualTo(was.verdict());
                if (!Double.isNaN(was.capacity()) && Double.isFinite(was.capacity())) {
                    assertThat(is.demand()).as(is.id()).isCloseTo(was.demand(), within(1e-6 * Math.abs(was.demand())));
                    assertThat(is.capacity())
                            .as(is.id())
                            .isCloseTo(was.capacity(), within(1e-6 * (1 + Math.abs(was.capacity()))));
                }
            }
            Collections.reverse(corners);
        }
    }
}
