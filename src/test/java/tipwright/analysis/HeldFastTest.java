// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.geometry.Vec2;

/** What the drive does to the links of a machine whose tank is held, against balances of single bodies by hand. */
class HeldFastTest {
    private static Analysis of(String name) throws Exception {
        return Analyser.analyse(Examples.read(Files.readString(Path.of("geometry", name + ".yaml"))));
    }

    private static int joint(Analysis analysis, String name) {
        List<JointPlan> joints = analysis.mechanism().joints();
        for (int i = 0; i < joints.size(); i++) {
            if (joints.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new AssertionError(name);
    }

    private static Vec2 place(Analysis analysis, int pose, String name) {
        return analysis.mechanism()
                .joints()
                .get(joint(analysis, name))
                .place(analysis.poses().get(pose));
    }

    private static Vec2 push(Pose pose) {
        return pose.tankPin().minus(pose.framePin()).unit();
    }

    /** Moments of rod and link about the crank's own pivot, which bears the rest. Source: statics. */
    @Test
    void theLinkOfABellCrankBearsByItsLevers() throws Exception {
        Analysis analysis = of("crank-cart");
        HeldFast held = HeldFast.of(analysis);
        for (int i = 0; i < analysis.poses().size(); i += 5) {
            Pose pose = analysis.poses().get(i);
            Vec2 crank = place(analysis, i, "crank-pivot");
            Vec2 knee = place(analysis, i, "link-pin");
            Vec2 line = place(analysis, i, "tank-pin").minus(knee).unit();
            double ratio = pose.tankPin().minus(crank).cross(push(pose))
                    / knee.minus(crank).cross(line);
            List<Vec2> joints = held.joints(i, 1000);
            double link = joints.get(joint(analysis, "link-pin")).norm();
            assertThat(link).isCloseTo(1000 * Math.abs(ratio), within(1e-6 * link));
            assertThat(joints.get(joint(analysis, "tank-pin")).norm()).isCloseTo(link, within(1e-6 * link));
            Vec2 rest = push(pose).minus(line.times(ratio)).times(1000);
            assertThat(joints.get(joint(analysis, "crank-pivot")).norm())
                    .isCloseTo(rest.norm(), within(1e-6 * rest.norm()));
        }
        assertThat(held.driven(analysis.mechanism().pivot())).isFalse();
    }

    /** At the middle pin the push is taken apart along the two links. Source: parallelogram of forces. */
    @Test
    void theTwoLinksOfAKneeShareThePushByTheirDirections() throws Exception {
        Analysis analysis = of("knee-stand");
        HeldFast held = HeldFast.of(analysis);
        int last = analysis.poses().size() - 1;
        for (int i : new int[] {0, last / 2, last}) {
            Pose pose = analysis.poses().get(i);
            Vec2 knee = pose.tankPin();
            Vec2 upper = place(analysis, i, "tank-pin").minus(knee).unit();
            Vec2 lower = place(analysis, i, "foot-pin").minus(knee).unit();
            double toTank = push(pose).cross(lower) / upper.cross(lower);
            double toFoot = upper.cross(push(pose)) / upper.cross(lower);
            List<Vec2> joints = held.joints(i, -500);
            assertThat(joints.get(joint(analysis, "tank-pin")).norm())
                    .isCloseTo(500 * Math.abs(toTank), within(1e-6 * 500));
            assertThat(joints.get(joint(analysis, "foot-pin")).norm())
                    .isCloseTo(500 * Math.abs(toFoot), within(1e-6 * 500));
        }
    }

    /** Without friction a carriage hands on what lies along its rail: the link bears the push over the cosine of its slope. */
    @Test
    void theLinkOfACarriageBearsThePushOverItsCosine() throws Exception {
        Analysis analysis = of("rail-pusher");
        HeldFast held = HeldFast.of(analysis);
        int last = analysis.poses().size() - 1;
        Vec2 line = place(analysis, last, "tank-pin")
                .minus(place(analysis, last, "slider-pin"))
                .unit();
        double link = 1000 / Math.abs(line.x());
        assertThat(held.joints(last, 1000).get(joint(analysis, "tank-pin")).norm())
                .isCloseTo(link, within(1e-6 * link));
    }

    /** Where the links carry the tank, what they bear depends on where it is held. */
    @ParameterizedTest
    @ValueSource(strings = {"kerb-swing", "slide-back", "silt-trailer"})
    void whatCarriesTheTankIsNotKnown(String name) throws Exception {
        Analysis analysis = of(name);
        HeldFast held = HeldFast.of(analysis);
        for (int i = 0; i < analysis.mechanism().joints().size(); i++) {
            assertThat(held.driven(i)).isFalse();
        }
    }
}
