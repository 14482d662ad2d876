// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.design.Design;

/**
 * A drive whose force has a closed form. Frame pin 1 m straight below the pivot, tank pin 0.6 m from the pivot, 500 kg on the line
 * from pivot to tank pin at 0.4 m; all at 30 degrees from straight down when stowed. No friction, no slurry. By the rule of sines
 * the force is proportional to the actuator's length: F = W c L / (a b).
 */
final class Simple {
    static final double A = 1;
    static final double B = 0.6;
    static final double C = 0.4;
    static final double MASS = 500;
    static final double G = 9.80665;
    /** F / L, N/m. */
    static final double PER_LENGTH = MASS * G * C / (A * B);

    static final double FIRST = length(30);
    static final double LAST = length(100);

    static final String ELECTRIC =
            "kind: electric, closed: 550 mm, stroke: 750 mm, push: 5 kN, pull: 5 kN, voltage: 12 V, duty: 25 %, "
                    + "speed: {no-load: 20 mm/s, rated: 10 mm/s}, current: {no-load: 2 A, rated: 20 A}";
    static final String CYLINDER =
            "kind: hydraulic, bore: 50 mm, rod: {diameter: 28 mm}, closed: 550 mm, stroke: 750 mm, relief-pressure: 160 bar, "
                    + "efficiency: 100 %";

    private Simple() {}

    private static double length(double degrees) {
        return Math.sqrt(A * A + B * B - 2 * A * B * Math.cos(Math.toRadians(degrees)));
    }

    /**
     * The design.
     *
     * @param actuator its keys
     * @param more lines at the left margin, such as the supply
     */
    static Design design(String actuator, String more) {
        return Examples.read(
                """
                tipwright: 1
                name: Closed form
                tank:
                  interior: {shape: box, size: [300 mm, 300 mm, 300 mm], centre: [0 mm, 1 m, 0 mm]}
                  mass: {empty: 500 kg, centre: [-200 mm, 653.589838486225 mm, 0 mm]}
                slurry: {volume: 0 L, density: 1000 kg/m3}
                pivot:
                  at: [0 mm, 1000 mm]
                  bearings:
                    - {z: -500 mm, bearing: {kind: ball-insert, bore: 40 mm, c0: 19 kN}}
                    - {z: 500 mm, bearing: {kind: ball-insert, bore: 40 mm, c0: 19 kN}}
                drive:
                  straight:
                    frame-pin: [0 mm, 0 mm]
                    tank-pin: [-300 mm, 480.384757729337 mm]
                    actuators:
                      - {z: 0 mm, actuator: {%s}}
                tilt: {to: 70 deg}
                friction: {pivot: 0, pins: 0}
                """
                                .formatted(actuator)
                        + more);
    }

    static Timing time(Design design) {
        return time(design, 1e-9);
    }

    static Timing time(Design design, double tolerance) {
        return CycleTimer.time(analysis(design), tolerance);
    }

    static Analysis analysis(Design design) {
        try {
            return Analyser.analyse(design);
        } catch (CannotComputeException e) {
            throw new AssertionError(e);
        }
    }

    /** The dump; fails the test when the time is not known. */
    static Cycle dump(Timing timing) {
        Cycle dump = timing.dump();
        if (dump == null) {
            throw new AssertionError(timing.missing());
        }
        return dump;
    }
}
