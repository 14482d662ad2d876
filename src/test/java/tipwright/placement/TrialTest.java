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
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.geometry.Vec2;

/** Welds that are off: the two engines against each other, and against what must not change. */
class TrialTest {
    private static Design shipped(String name) {
        return ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
    }

    /** Off by a few millimetres anywhere, the closed form and the general analysis are judged alike. */
    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "saw-skid", "lime-barrel"})
    void aStraightDriveComesOutAsByItsClosedForm(String name) throws CannotComputeException {
        Design design = shipped(name);
        Trial general = new Trial(design, CandidateEngine.GENERAL);
        Trial quick = new Trial(design, CandidateEngine.CLOSED_FORM);
        assertThat(quick.places())
                .isEqualTo(general.places())
                .containsExactly("pivot x", "pivot y", "frame pin x", "frame pin y", "tank pin x", "tank pin y");
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 20; i++) {
            double[] off = random.doubles(6, -0.02, 0.02).toArray();
            Judgement a = general.at(off);
            Judgement b = quick.at(off);
            assertThat(b.governing()).isEqualTo(a.governing());
            for (Limit limit : Limit.values()) {
                assertThat(b.of(limit)).as(name + " " + limit).isCloseTo(a.of(limit), within(1e-9 * (1 + a.of(limit))));
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
        int coordinates = welder.places().size();
        SplittableRandom random = new SplittableRandom(3);
        double most = 0;
        for (int i = 0; i < 60; i++) {
            double[] off = random.ints(coordinates, 0, 2)
                    .mapToDouble(b -> b == 0 ? -by : by)
                    .toArray();
            most = Math.max(most, welder.at(off).utilisation());
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
