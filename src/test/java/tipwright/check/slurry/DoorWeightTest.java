// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;

/** A door's own weight on hinge and latch, beside the pressure on it, by statics of the plate alone. */
class DoorWeightTest {
    private static final double G = 9.80665;
    private static final String END =
            "- {name: end, rim: rectangle, width: 1 m, height: 1 m, centre: [500 mm, 1 m, 0 mm],"
                    + " normal: x, door: {hinge: [500 mm, 1500 mm, 0 mm], latch: [500 mm, 500 mm, 0 mm], latch-rating: 50 kN,"
                    + " hinge-rating: 50 kN%s}}";
    private static final String BOX = swap(
            Examples.BOX.replaceFirst("- \\{name: top.*\\}", END),
            "fill: 100 %",
            "fill: 40 %",
            "tilt: {to: 80 deg}",
            "tilt: {to: 38 deg}\ncases: {skip: [draining, heaped, caked, empty, heel, settled, slid]}");

    private static Finding of(double kg, String part) throws CannotComputeException {
        String yaml = swap(BOX, "%s", kg > 0 ? ", mass: " + kg + " kg" : "");
        return new DoorCheck()
                .run(Analyser.analyse(Examples.read(yaml))).stream()
                        .filter(f -> f.id().equals("door/end-" + part))
                        .findFirst()
                        .orElseThrow();
    }

    /** The wedge of slurry stands h = 0.4 m + tan(a)/2 up the door: F = rho g cos(a) h^2/2, h/3 from the bottom; the weight turns with the tilt. */
    private static double[] byHand(double kg) {
        double latch = 0;
        double hinge = 0;
        for (int i = 0; i <= 38; i++) {
            double a = Math.toRadians(i);
            double h = 0.4 + Math.tan(a) / 2;
            double press = 1400 * G * Math.cos(a) * h * h / 2;
            double outward = kg * G * Math.sin(a);
            latch = Math.max(latch, press * (1 - h / 3) + outward / 2);
            hinge = Math.max(hinge, Math.hypot(press * h / 3 + outward / 2, kg * G * Math.cos(a)));
        }
        return new double[] {latch, hinge};
    }

    @Test
    void weightHangsOnTheHingeAndLeansOnTheLatch() throws CannotComputeException {
        for (double kg : new double[] {0, 60, 300}) {
            double[] hand = byHand(kg);
            assertThat(of(kg, "latch").demand()).isCloseTo(hand[0], within(1e-6 * hand[0]));
            assertThat(of(kg, "hinge").demand()).isCloseTo(hand[1], within(1e-6 * hand[1]));
        }
        assertThat(of(300, "hinge").demand()).isGreaterThan(1.2 * of(0, "hinge").demand());
    }
}
