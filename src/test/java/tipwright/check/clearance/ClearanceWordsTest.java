// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** What is said of gaps. The box reaches from x = -504 mm to 504 mm stowed, is lowest at y = 496 mm, and moves off to the dump side. */
class ClearanceWordsTest {
    private static final String BOX = swap(Examples.BOX, "to: 80 deg", "to: 20 deg, step: 5 deg");

    private static String post(String name, int x0, int x1, int y0, int y1) {
        return "{name: " + name + ", outline: [[" + x0 + " mm, " + y0 + " mm], [" + x1 + " mm, " + y0 + " mm], [" + x1
                + " mm, " + y1 + " mm], [" + x0 + " mm, " + y1 + " mm]]}";
    }

    private static List<Finding> found(String... posts) throws CannotComputeException {
        return One.all(BOX + "obstacles: [" + String.join(", ", posts) + "]\n", "clearance");
    }

    private static String says(Finding finding) {
        return new ClearanceCheck().says(finding).metric();
    }

    /** 96 mm, 196 mm and so on from the box; only the three nearest are named. */
    @Test
    void theThreeNearestAreNamed() throws CannotComputeException {
        List<Finding> all = found(
                post("far", -900, -800, 700, 800),
                post("near", -900, -600, 1000, 1050),
                post("farthest", -900, -850, 1200, 1250),
                post("next", -900, -700, 900, 950));
        assertThat(all).hasSize(1);
        Finding tank = all.get(0);
        assertThat(tank.id()).isEqualTo("clearance/tank");
        assertThat(tank.capacity()).isCloseTo(0.096, within(1e-9));
        assertThat(tank.utilisation()).isCloseTo(20 / 96.0, within(1e-9));
        assertThat(tank.note().metric())
                .isEqualTo("nearest: near 96 mm at 0 deg, next 196 mm at 0 deg, far 296 mm at 0 deg");
        assertThat(says(tank)).isEqualTo("Tank: clearance: needs 20 mm, has 96 mm");
    }

    /** 2 mm of 20 mm: 18 mm more, a tenth at most on top, in whole millimetres up; what is free is told beside it. */
    @Test
    void whatIsTooNearIsToldByItself() throws CannotComputeException {
        List<Finding> all = found(post("sill", -900, -506, 700, 800), post("wall", -900, -700, 900, 950));
        assertThat(all).extracting(Finding::id).containsExactly("clearance/tank-to-sill", "clearance/tank");
        Finding near = all.get(0);
        assertThat(near.capacity()).isCloseTo(0.002, within(1e-9));
        assertThat(near.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(near.note().metric())
                .startsWith("2.0 mm at 0.0 deg; move the sill 19 mm away from the dump side or ");
        assertThat(says(near)).isEqualTo("Tank to sill: clearance: needs 20 mm, has 2 mm");
        assertThat(all.get(1).note().metric()).isEqualTo("nearest: wall 196 mm at 0 deg");
        Finding touches = found(post("sill", -900, -500, 700, 800)).get(0);
        assertThat(touches.capacity()).isZero();
        assertThat(touches.utilisation()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(touches.note().metric())
                .startsWith("they touch from 0.0 deg; move the sill 25 mm away from the dump side");
        assertThat(says(touches)).isEqualTo("Tank to sill: they touch");
    }

    /** Nothing wanted: only touching counts. */
    @Test
    void withoutAGapWantedOnlyTouchingCounts() throws CannotComputeException {
        String none = BOX + "limits: {clearance: 0 mm}\nobstacles: [";
        Finding free = One.of(none + post("wall", -900, -505, 700, 800) + "]\n", "clearance/tank");
        assertThat(free.verdict()).isEqualTo(Verdict.PASS);
        assertThat(free.utilisation()).isZero();
        assertThat(free.capacity()).isCloseTo(0.001, within(1e-9));
        Finding touches = One.of(none + post("wall", -900, -503, 700, 800) + "]\n", "clearance/tank-to-wall");
        assertThat(touches.verdict()).isEqualTo(Verdict.FAIL);
    }

    /** The tank lies on a bed and sinks 4 mm into what is drawn of it, so that it never comes off; beside a post it passes by. */
    @Test
    void whatTheTankLiesOn() throws CannotComputeException {
        String bed = swap(post("bed", -100, 100, 300, 500), "]]}", "]], rest: yes}");
        List<Finding> all = found(bed, post("wall", -900, -700, 900, 950));
        assertThat(all).extracting(Finding::id).containsExactly("clearance/tank-to-bed", "clearance/tank");
        assertThat(all.get(0).note().metric()).isEqualTo("they touch from 0.0 deg: the tank does not come off it");
        assertThat(all.get(0).demand()).isEqualTo(0.02);
        assertThat(all.get(1).note().metric()).isEqualTo("nearest: wall 196 mm at 0 deg");
    }

    @Test
    void whatCannotBeLookedAt() throws CannotComputeException {
        Finding missing = One.of(BOX, "clearance");
        assertThat(missing.missing()).isTrue();
        assertThat(missing.note().metric()).isEqualTo("frame.members, obstacles and ground missing");
        Finding aside = found(swap(post("post", -900, -800, 0, 100), "]]}", "]], z: [5 m, 6 m]}"))
                .get(0);
        assertThat(aside.missing()).isFalse();
        assertThat(aside.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(aside.note().metric()).isEqualTo("nothing that moves overlaps anything else along the pivot");
        Finding rest = found(swap(post("bed", -100, 100, 300, 490), "]]}", "]], rest: yes}"))
                .get(0);
        assertThat(rest.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(rest.note().metric())
                .isEqualTo("only what the tank may rest on is drawn, and it keeps clear of that");
    }
}
