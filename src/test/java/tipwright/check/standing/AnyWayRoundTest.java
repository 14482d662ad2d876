// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.CannotComputeException;
import tipwright.check.One;
import tipwright.check.rule.Finding;

/**
 * Which load over which edge is the worst on a slope is not the one that uses most on another slope: a tank that hangs over one edge, and
 * masses that stand high beside another. By hand, of masses that lie still, from moments about each edge.
 */
class AnyWayRoundTest {
    private static final double PX = 0.582;
    private static final double PY = 0.035;
    private static final double GROUND = -0.43;

    private static String high(int to) {
        return """
                tipwright: 1
                name: High
                tank:
                  interior: {shape: box, size: [1.2 m, 0.9 m, 0.73 m], centre: [0 m, 1.244 m, 0 m]}
                  mass: {empty: 191 kg, centre: [0 m, 1.294 m, 0 m]}
                  openings:
                    - {name: end, rim: rectangle, width: 500 mm, height: 300 mm, centre: [600 mm, 1.1 m, 0 m], normal: x}
                slurry: {fill: 0.01, density: 1000 kg/m3}
                pivot:
                  at: [582 mm, 35 mm]
                  bearings:
                    - {z: -300 mm, bearing: {kind: ball-insert, bore: 40 mm, c0: 190 kN}}
                    - {z: 300 mm, bearing: {kind: ball-insert, bore: 40 mm, c0: 190 kN}}
                drive:
                  straight:
                    frame-pin: [-600 mm, -500 mm]
                    tank-pin: [-450 mm, 794 mm]
                    actuators:
                      - {z: 0 mm, actuator: {kind: electric, closed: 300 mm, stroke: 2.9 m, push: 90 kN, pull: 90 kN}}
                frame: {mass: 702 kg, centre: [-620 mm, 60 mm, 0 mm]}
                cases: {skip: [held, draining, heaped, caked, heel, settled, slid],
                  add: [{name: block, mass: 877 kg, centre: [-490 mm, 1.24 m, 0 mm]}]}
                supports: {y: -430 mm, slope: 3 deg, outline: [[-0.6 m, -0.84 m], [0.67 m, -0.84 m], [0.67 m, 0.84 m], [-0.6 m, 0.84 m]]}
                tilt: {step: 5 deg, to: %d deg}
                """
                .formatted(to);
    }

    /** Tangent of the slope down over an edge on which what holds is 1.5 times what turns over: masses as {kg, inside it, height}. */
    private static double tangent(double[]... masses) {
        double holds = 0;
        double turns = 0;
        double high = 0;
        for (double[] m : masses) {
            holds += m[0] * Math.max(0, m[1]);
            turns += m[0] * Math.max(0, -m[1]);
            high += m[0] * m[2];
        }
        return (holds - 1.5 * turns) / (1.5 * high);
    }

    private static double least(int to) {
        double least = Double.POSITIVE_INFINITY;
        for (int tilt = 0; tilt <= to; tilt += 5) {
            double cos = Math.cos(Math.toRadians(tilt));
            double sin = Math.sin(Math.toRadians(tilt));
            for (double more : new double[] {0, 877}) {
                double kg = 191 + more;
                double x = -0.49 * more / kg - PX;
                double y = (191 * 1.294 + more * 1.24) / kg - PY;
                double atX = PX + cos * x + sin * y;
                double high = PY - sin * x + cos * y - GROUND;
                for (double[] inside : new double[][] {{atX + 0.6, -0.02}, {0.67 - atX, 0.67 + 0.62}, {0.84, 0.84}}) {
                    double[] tank = {kg, inside[0], high};
                    double[] frame = {702, inside[1], 0.06 - GROUND};
                    least = Math.min(least, tangent(tank, frame));
                }
            }
        }
        return Math.atan(Math.max(0, least));
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 55, 60, 65, 70})
    void theWorstOnItsOwnSlope(int to) throws CannotComputeException {
        Finding found = One.of(high(to), "tip-over/any-way-round");
        assertThat(found.capacity()).isCloseTo(least(to), within(1e-6));
    }
}
