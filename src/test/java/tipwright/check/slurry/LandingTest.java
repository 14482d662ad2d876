// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.HowFull;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.around.Receiver;
import tipwright.geometry.Vec2;

/** Where the stream lands, by hand. */
class LandingTest {
    private static final double G = 9.80665;
    private static final Receiver PIT = new Receiver("pit", new Vec2(1, 0), new Vec2(3, 0));

    private static Finding of(Result result, String id) {
        return result.findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Source: level jet, x = v sqrt(2 h / g) (any physics text). */
    @Test
    void levelJetFallsInAParabola() {
        double v = 2.5;
        double x = 0.8 + v * Math.sqrt(2 * 1.2 / G);
        double share = lands(PIT, new Vec2(0.8, 1.2), new Vec2(v, 0), new Vec2(0, -G));
        assertThat(share).isCloseTo((x - 1) / 2, within(1e-12));
    }

    /** Source: jet straight up comes back down on the same line. */
    @Test
    void jetThrownUpwardsComesDown() {
        double share = lands(PIT, new Vec2(1.5, 1), new Vec2(0, 3), new Vec2(0, -G));
        assertThat(share).isCloseTo(0.25, within(1e-12));
        double range = lands(PIT, new Vec2(0, 0), new Vec2(3, 4), new Vec2(0, -G));
        assertThat(range).isCloseTo(-0.5, within(1e-12));
        double thrown = lands(PIT, new Vec2(0, -1e-9 + 2e-9), new Vec2(3, 4), new Vec2(0, -G));
        assertThat(thrown).isCloseTo((2 * 3 * 4 / G - 1) / 2, within(1e-6));
    }

    @Test
    void lipInsideTheMouthIsTakenWhereItIs() {
        assertThat(lands(PIT, new Vec2(2, -0.5), new Vec2(9, 0), new Vec2(0, -G)))
                .isCloseTo(0.5, within(1e-12));
    }

    /** A door 0.2 m high low in the box's side, 1 m of slurry: the jet at the start, and running over from the same lip. */
    @Test
    void jetThroughADoorWithTheHeadBehindIt() throws CannotComputeException {
        String door = "- {name: top, rim: rectangle, width: 400 mm, height: 200 mm, centre: [500 mm, 700 mm, 0 mm],"
                + " normal: x}";
        String yaml = Examples.BOX.replaceFirst("- \\{name: top.*\\}", door)
                + "receiver: {near: [450 mm, -600 mm], far: [3 m, -600 mm]}\n"
                + "limits: {landing: 60 mm}\n";
        Result result = Checker.check(Examples.read(yaml));
        // Head 0.9 m over the lip at y = 0.6 m, which is 1.2 m above the pit's mouth.
        double v = Math.sqrt(2 * G * 0.9);
        double x = 0.5 + v * Math.sqrt(2 * 1.2 / G);
        Finding jet = of(result, "landing/jet");
        assertThat(jet.capacity()).isCloseTo(Math.min(x - 0.45, 3 - x), within(1e-9));
        assertThat(jet.note().metric()).contains("4.2 m/s");
        Finding over = of(result, "landing/running-over");
        assertThat(over.capacity()).isCloseTo(0.05, within(1e-9));
        assertThat(over.tilt()).isZero();
        assertThat(over.verdict()).isEqualTo(Verdict.FAIL);
    }

    /**
     * 'How full' takes the landing in. Under a level L the jet from a lip at height y over the pit's mouth lands 2 sqrt((L - y) y) off
     * (Torricelli and a free fall, any physics text); here y = 1.2 m, and the box's fill is the head over the lip plus 0.1 m. At 60 % it
     * lands well within; full, it shoots over the far edge.
     */
    @Test
    void theFullestLoadIsTheOneWhoseJetStillLandsInThePit() throws CannotComputeException {
        double far = 2.5;
        double margin = 0.06;
        String door = "- {name: gate, rim: rectangle, width: 400 mm, height: 200 mm, centre: [500 mm, 700 mm, 0 mm],"
                + " normal: x}";
        String yaml = Examples.BOX
                        .replaceFirst("- \\{name: top.*\\}", door)
                        .replace("push: 12 kN, pull: 12 kN", "push: 90 kN, pull: 90 kN")
                        .replace("c0: 19 kN", "c0: 90 kN")
                        .replace("fill: 100 %, density: 1400 kg/m3", "fill: 60 %, density: 1000 kg/m3")
                + "receiver: {near: [400 mm, -600 mm], far: [2500 mm, -600 mm]}\n"
                + "limits: {landing: 60 mm, clearance: 0 mm}\n";
        Result result = Checker.check(Examples.read(yaml));
        assertThat(of(result, "landing/jet").verdict()).isEqualTo(Verdict.PASS);
        double reach = far - margin - 0.5;
        double fullest = 0.1 + reach * reach / 4 / 1.2;
        assertThat(fullest).isBetween(0.6, 1.0);
        HowFull most = Objects.requireNonNull(result.howFull());
        assertThat(most.limit()).isEqualTo("Load: landing of the jet");
        assertThat(most.fill()).isCloseTo(fullest, within(2e-3)).isLessThanOrEqualTo(fullest + 1e-6);
        assertThat(2 * Math.sqrt(1.2 * 0.9)).isGreaterThan(far - 0.5);
        Result above = Checker.asFilled(Examples.read(yaml.replace("fill: 60 %", "fill: 90 %")));
        assertThat(of(above, "landing/jet").verdict()).isEqualTo(Verdict.FAIL);
    }

    private static double lands(Receiver receiver, Vec2 lip, Vec2 velocity, Vec2 gravity) {
        return new Stream.Fall(receiver, gravity).lands(lip, velocity);
    }
}
