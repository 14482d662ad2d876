// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.List;

/**
 * What the drive does and takes at one moment.
 *
 * @param speed of the rod, m/s, never negative; 0: stalled
 * @param current A, all actuators together; 0 when not electric or not known
 * @param power drawn from the supply, W; 0 when not known
 * @param pressure in the working side of the cylinders, Pa; 0 when not hydraulic
 * @param flow from the pump, m3/s
 * @param returned flow out of the other side of the cylinders, m3/s
 * @param shaft power at the pump's shaft, W
 * @param currents A, of each of unlike electric actuators; empty: all are alike, or not electric
 */
public record DriveState(
        double speed,
        double current,
        double power,
        double pressure,
        double flow,
        double returned,
        double shaft,
        List<Double> currents) {
    /** Copies the list. */
    public DriveState {
        currents = List.copyOf(currents);
    }

    /** Of actuators that are all alike. */
    public DriveState(
            double speed, double current, double power, double pressure, double flow, double returned, double shaft) {
        this(speed, current, power, pressure, flow, returned, shaft, List.of());
    }

    /** Current of one of unlike electric actuators, A; 0 while it rests. */
    public double current(int actuator) {
        return currents.isEmpty() ? 0 : currents.get(actuator);
    }

    static DriveState moving(double speed, double power) {
        return new DriveState(speed, 0, power, 0, 0, 0, 0);
    }
}
