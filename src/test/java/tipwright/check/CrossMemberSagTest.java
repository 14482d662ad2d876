// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.check.joint.CrossMemberCheck;

/**
 * The cross member bends most between the pins or towards its middle, not at the pins. Source: tables of beams on two supports in
 * any text on strength of materials (from memory).
 */
class CrossMemberSagTest {
    private static final String ACTUATOR =
            "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}";
    private static final String TUBE =
            "frame: {cross-member: {at: [-600 mm, -500 mm], height: 100 mm, width: 100 mm, wall: 5 mm,"
                    + " z: [-600 mm, 600 mm], modulus: 200 GPa}}\n";
    /** Of a square tube, m4: (b^4 - inner^4) / 12. */
    private static final double INERTIA = (Math.pow(0.1, 4) - Math.pow(0.09, 4)) / 12;

    private static final double SPAN = 1.2;

    private static double sag(Analysis analysis) {
        return new CrossMemberCheck()
                .run(analysis).stream()
                        .filter(f -> f.id().equals("cross-member/bending"))
                        .findFirst()
                        .orElseThrow()
                        .demand();
    }

    private static double most(Analysis analysis) {
        return Extreme.largest(analysis.cases(), (row, b) -> Math.abs(b.force()))
                .value();
    }

    /** P a (3 L^2 - 4 a^2) / (24 E I) in the middle between two equal forces, a from each end. */
    @Test
    void betweenTwoPins() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(swap(
                        Examples.BOX,
                        "{z: 0 mm, actuator: " + ACTUATOR,
                        "{z: -300 mm, actuator: " + ACTUATOR,
                        "tilt: {to",
                        "      - {z: 300 mm, actuator: " + ACTUATOR + "\ntilt: {to")
                + TUBE));
        double force = most(analysis) / 2;
        double a = 0.3;
        double middle = force * a * (3 * SPAN * SPAN - 4 * a * a) / (24 * 200e9 * INERTIA);
        assertThat(sag(analysis)).isCloseTo(middle, within(1e-6 * middle));
    }

    /** P a (L^2 - a^2)^1.5 / (9 sqrt 3 L E I) for one force beside the middle, a from the nearer end. */
    @Test
    void besideOnePinThatIsOffTheMiddle() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(
                swap(Examples.BOX, "{z: 0 mm, actuator: " + ACTUATOR, "{z: 300 mm, actuator: " + ACTUATOR) + TUBE));
        double a = 0.3;
        double worst =
                most(analysis) * a * Math.pow(SPAN * SPAN - a * a, 1.5) / (9 * Math.sqrt(3) * SPAN * 200e9 * INERTIA);
        assertThat(sag(analysis)).isCloseTo(worst, within(1e-4 * worst));
    }
}
