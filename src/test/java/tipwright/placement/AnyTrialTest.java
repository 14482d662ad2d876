// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.design.drive.Straight;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.geometry.Vec2;

/** Welds that are off on any mechanism: against the closed form of the straight drive, and against what must not change. */
class AnyTrialTest {
    private static Design shipped(String name) {
        return ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
    }

    /** The same limits by the search's closed form and by the checks themselves, places matched by name. */
    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "saw-skid", "lime-barrel"})
    void aStraightDriveComesOutAsByItsClosedForm(String name) throws CannotComputeException {
        Design design = shipped(name);
        Trial any = new AnyTrial(design);
        Trial quick = new StraightTrial(design, (Straight) design.drive());
        assertThat(any.places())
                .containsExactly("pivot x", "pivot y", "frame pin x", "frame pin y", "rod pin x", "rod pin y");
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 20; i++) {
            double[] off = random.doubles(6, -0.002, 0.002).toArray();
            double[] a = any.at(off[4], off[5], off[0], off[1], off[2], off[3]).clone();
            double[] b = quick.at(off);
            for (Limit limit : Limit.values()) {
                double fast = b[limit.index()];
                if (fast > 0 && fast < 1) {
                    assertThat(a[limit.index()]).as(name + " " + limit).isCloseTo(fast, within(2e-3));
                }
            }
        }
    }

    /** Every pin moved as one along the line of gravity: as stowed, no arm of the weight changes, nor any length. */
    @ParameterizedTest
    @ValueSource(strings = {"crank-cart", "kerb-swing", "knee-stand", "slide-back", "rail-pusher", "six-link"})
    void aMechanismMovedAlongTheLineOfItsWeightKeepsItsForce(String name) throws CannotComputeException {
        Design design = shipped(name);
        Vec2 by = design.site().up().xy().unit().times(-0.037);
        Design moved = design.withPivot(
                        design.pivot().movedTo(design.pivot().at().plus(by)))
                .withDrive(design.drive().moved(p -> p.plus(by)));
        List<Row> before = Analyser.analyse(design).cases().get(0).rows();
        List<Row> after = Analyser.analyse(moved).cases().get(0).rows();
        assertThat(after).hasSameSizeAs(before);
        assertThat(after.get(0).rest().force()).isCloseTo(before.get(0).rest().force(), within(1e-4));
        for (int i = 0; i < before.size(); i++) {
            assertThat(after.get(i).pose().length())
                    .isCloseTo(before.get(i).pose().length(), within(1e-9));
            assertThat(after.get(i).pose().arm()).isCloseTo(before.get(i).pose().arm(), within(1e-8));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = "crank-cart")
    void noRunWithinTheToleranceIsWorseThanTheWorstCornerBySomething(String name) throws CannotComputeException {
        Design design = shipped(name);
        Welder welder = new Welder(design);
        double by = 0.003;
        Tolerance found = welder.tolerance(by, 0, 1);
        int coordinates = new AnyTrial(design).places().size();
        SplittableRandom random = new SplittableRandom(3);
        double most = 0;
        for (int i = 0; i < 60; i++) {
            double[] off = random.ints(coordinates, 0, 2)
                    .mapToDouble(b -> b == 0 ? -by : by)
                    .toArray();
            double[] used = welder.at(off);
            most = Math.max(most, used[Judge.governing(used)]);
        }
        assertThat(most).isGreaterThan(found.utilisation()).isLessThanOrEqualTo(found.worstCorner() + 1e-3);
    }

    @Test
    void theLargestToleranceOfALinkageKeepsItsCornersAndTwiceAsMuchDoesNot() throws CannotComputeException {
        Design design = shipped("crank-cart");
        Welder welder = new Welder(design);
        double largest = welder.tolerance(0.003, 0, 1).largest();
        assertThat(largest).isBetween(0.001, 0.05);
        assertThat(welder.tolerance(0.98 * largest, 0, 1).worstCorner()).isLessThanOrEqualTo(1);
        assertThat(welder.tolerance(2 * largest, 0, 1).worstCorner()).isGreaterThan(1);
    }

    @Test
    void seedsRepeatOnAnyMechanism() throws CannotComputeException {
        Welder welder = new Welder(shipped("knee-stand"));
        assertThat(welder.tolerance(0.02, 40, 4).chance())
                .isEqualTo(welder.tolerance(0.02, 40, 4).chance());
    }
}
