// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Pose;
import tipwright.check.bearing.BushCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.time.CycleTimer;

/** A bush whose maker gives pressure times speed is held to it. Source: pV = p omega d/2 (elementary). */
class BushSpeedTest {
    private static final String BALL = "{kind: ball-insert, bore: 40 mm, c0: 19 kN}";

    private static String design(String speed, String limit) {
        return swap(
                Examples.BOX,
                "80 deg",
                "40 deg",
                BALL,
                "{kind: bush, bore: 40 mm, length: 50 mm, pressure: 20 MPa" + limit + "}",
                "push: 12 kN, pull: 12 kN",
                "push: 12 kN, pull: 12 kN" + speed);
    }

    private static List<Finding> run(String yaml) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        return new BushCheck().run(analysis, CycleTimer.time(analysis));
    }

    /** The same speed at every load: the tank turns fastest where the actuator's arm is shortest, omega = v / arm. */
    @Test
    void pressureTimesSpeed() throws CannotComputeException {
        String yaml = design(", speed: {no-load: 50 mm/s, rated: 49.999 mm/s}", ", pressure-velocity: 100000 Pa m/s");
        double arm = Analyser.analyse(Examples.read(yaml)).poses().stream()
                .mapToDouble(Pose::arm)
                .min()
                .orElseThrow();
        List<Finding> found = run(yaml);
        assertThat(found.stream().map(Finding::id))
                .containsExactly("bush/bearing-1", "bush/bearing-2", "bush/bearing-1-speed", "bush/bearing-2-speed");
        double fastest = found.get(0).demand() * 0.050 / arm * 0.020;
        Finding speed = found.get(2);
        assertThat(speed.demand()).isCloseTo(fastest, within(0.01 * fastest));
        assertThat(speed.capacity()).isEqualTo(100_000);
        assertThat(speed.utilisation()).isCloseTo(1.5 * speed.demand() / 100_000, within(1e-9));
    }

    @Test
    void withoutASpeedItIsNotChecked() throws CannotComputeException {
        List<Finding> found = run(design("", ", pressure-velocity: 100000 Pa m/s"));
        assertThat(found).hasSize(4);
        assertThat(found.subList(2, 4))
                .allMatch(f -> f.verdict() == Verdict.NOT_CHECKED)
                .allMatch(f -> f.note().metric().contains("actuator.speed missing"));
    }

    @Test
    void withoutALimitThePressureGoverns() throws CannotComputeException {
        assertThat(run(design("", ""))).hasSize(2);
    }
}
