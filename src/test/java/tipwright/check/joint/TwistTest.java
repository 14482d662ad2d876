// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.check.Checker;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.geometry.Vec2;

/** An actuator beside the middle, and one of two that lags. */
class TwistTest {
    private static final String ASIDE = "{z: 120 mm, actuator: {kind";
    private static final String TUBES =
            "twist: {tank: {height: 80 mm, width: 60 mm, wall: 4 mm}, frame: {height: 100 mm, width: 60 mm, wall: 5 mm}}\n";

    private static String box(String more) {
        return swap(Examples.BOX, "{z: 0 mm, actuator: {kind", ASIDE, "80 deg", "40 deg, step: 5 deg") + more;
    }

    /** In the middle nothing twists, and two alike at both sides share: nothing is told. */
    @Test
    void nothingTwistsInTheMiddle() throws CannotComputeException {
        assertThat(One.all(Examples.BOX, "twist")).isEmpty();
        String two = "- {z: -200 mm, actuator: ACT}\n      - {z: 200 mm, actuator: ACT}";
        String act = "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}";
        String pair = swap(Examples.BOX, "- {z: 0 mm, actuator: " + act + "}", two.replace("ACT", act));
        assertThat(One.all(pair + TUBES, "twist")).isEmpty();
        // One that lags leaves all to the other, 200 mm off: found among what may go wrong.
        assertThat(Checker.check(Examples.read(pair + TUBES)).findings())
                .anyMatch(f -> f.id().equals("what-if/twist-of-the-tank-when-one-carries-all"));
    }

    /**
     * With the actuator in the middle, 50 kg that hang 300 mm beside it twist the tank at the pivot with m g z, stowed, where the line to
     * the pin is level. Nothing twists the frame, and without a tube of the cradle nothing is told. Source: statics; Bredt (from memory).
     */
    @Test
    void loadBesideTheMiddleTwistsTheTankAtThePivot() throws CannotComputeException {
        String hung = swap(
                Examples.BOX,
                "  openings:",
                "  attached:\n    - {name: box, mass: 50 kg, centre: [0 mm, 1 m, 300 mm]}\n  openings:");
        assertThat(One.all(hung, "twist")).isEmpty();
        double byHand = Math.sqrt(3) * 50 * 9.80665 * 0.3 / (2 * 0.076 * 0.056 * 0.004);
        Finding found = One.of(hung + TUBES, "twist/tank");
        assertThat(found.demand()).isCloseTo(byHand, within(1e-6 * byHand));
        assertThat(One.all(hung + TUBES, "twist")).hasSize(1);
    }

    /**
     * By hand, 120 mm beside the middle: the actuator's force square to the line from pivot to pin, times that, in Bredt's thin tube.
     * Source: statics; T / (2 A t) of R. Bredt (from memory).
     */
    @Test
    void tubesOfCradleAndFrame() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(box(TUBES)));
        Vec2 pivot = new Vec2(0.4, 0.4);
        Extreme tank = Extreme.largest(analysis.cases(), (row, b) -> {
            Vec2 u = row.pose().tankPin().minus(row.pose().framePin()).unit();
            Vec2 r = row.pose().tankPin().minus(pivot);
            return Math.abs(b.force() * (u.x() * r.y() - u.y() * r.x()) / r.norm()) * 0.120;
        });
        double byHand = Math.sqrt(3) * tank.value() / (2 * 0.076 * 0.056 * 0.004);
        Finding found = One.of(box(TUBES), "twist/tank");
        assertThat(found.demand()).isCloseTo(byHand, within(1e-9 * byHand));
        Extreme frame = Extreme.largest(analysis.cases(), (row, b) -> {
            Vec2 u = row.pose().tankPin().minus(row.pose().framePin()).unit();
            return Math.abs(b.force() * u.y()) * 0.120;
        });
        double other = Math.sqrt(3) * frame.value() / (2 * 0.095 * 0.055 * 0.005);
        assertThat(One.of(box(TUBES), "twist/frame").demand()).isCloseTo(other, within(1e-9 * other));
    }

    @Test
    void limitIsHitExactly() throws CannotComputeException {
        for (String id : new String[] {"twist/tank", "twist/frame"}) {
            Finding asItIs = One.of(box(TUBES), id);
            assertThat(asItIs.verdict()).isEqualTo(Verdict.PASS);
            double allowed = asItIs.factor() / asItIs.utilisation();
            String factor = "factors: {cross-member: %s}\n";
            String full = box(TUBES) + factor.replace("%s", "" + allowed * (1 - 1e-9));
            String over = box(TUBES) + factor.replace("%s", "" + allowed * (1 + 1e-9));
            assertThat(One.of(full, id).verdict()).isEqualTo(Verdict.CLOSE);
            assertThat(One.of(over, id).verdict()).isEqualTo(Verdict.FAIL);
        }
    }

    /** Wear is off the tubes' walls before they are looked at. */
    @Test
    void wearThinsTheTubes() throws CannotComputeException {
        double fresh = One.of(box(TUBES), "twist/tank").demand();
        double worn = One.of(box(TUBES) + "wear: {wall: 1 mm}\n", "twist/tank").demand();
        double ratio = (0.076 * 0.056 * 0.004) / (0.077 * 0.057 * 0.003);
        assertThat(worn / fresh).isCloseTo(ratio, within(1e-9));
    }

    @Test
    void whatIsMissingIsNamed() throws CannotComputeException {
        Finding tank = One.of(box(""), "twist/tank");
        assertThat(tank.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(tank.note().metric()).contains("twist.tank missing", "it bears");
        assertThat(One.of(box(""), "twist/frame").note().metric()).contains("twist.frame missing");
    }

    /** A round tank with its brackets on its wall bears the twist itself: T / (pi r^2 t), thin-walled, elementary. */
    @Test
    void theRoundTankItself() throws IOException, CannotComputeException {
        String demo = swap(
                Files.readString(Path.of("geometry/silt-trailer.yaml")),
                "step: 1 deg",
                "step: 10 deg",
                "{z: 0 mm, actuator: mid-12-long}",
                "{z: 100 mm, actuator: mid-12-long}");
        Finding found = One.of(demo, "twist/tank");
        String tube = "twist: {tank: {height: 80 mm, width: 80 mm, wall: 4 mm}}\n";
        double torque = One.of(demo + tube, "twist/tank").demand() / Math.sqrt(3) * 2 * 0.076 * 0.076 * 0.004;
        double byHand = torque / (Math.PI * 0.3825 * 0.3825 * 0.005);
        assertThat(found.demand()).isCloseTo(byHand, within(1e-6 * byHand));
        assertThat(found.verdict()).isEqualTo(Verdict.PASS);
    }
}
