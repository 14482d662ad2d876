// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.HydraulicActuator;
import tipwright.design.actuator.TelescopicCylinder;

/**
 * Speed of an actuator under load.
 *
 * <p>Electric: linear in load through the no-load and the rated point, and on along the same line past the rated load down to a
 * standstill; a load that helps it along runs at the no-load speed. Hydraulic: flow over the piston's area, bore side out and
 * annulus back (telescopic: the area of the stage that moves), full speed up to the rated force and none over it. Source: linear
 * speed-torque line of a brushed DC motor; v = Q/A.
 */
public final class ActuatorSpeed {
    private ActuatorSpeed() {}

    /**
     * Speed, m/s; 0: stalled; null when the actuator's data do not tell.
     *
     * @param length pin to pin, m; the stages of a telescopic cylinder differ
     * @param against force against the motion on one actuator, N; negative: it helps
     * @param out whether the rod goes out
     */
    public static @Nullable Double at(Actuator actuator, double length, double against, boolean out) {
        double load = Math.max(0, against);
        if (actuator instanceof ElectricActuator e) {
            ElectricActuator.Speed speed = e.speed();
            if (speed == null) {
                return null;
            }
            double rated = out || e.ratedPull() <= 0 ? e.ratedPush() : e.ratedPull();
            return Math.max(0, speed.noLoad() + (speed.rated() - speed.noLoad()) * load / rated);
        }
        if (actuator instanceof TelescopicCylinder t) {
            Double flow = t.flow();
            double rated = out ? t.ratedPush(length) : t.ratedPull();
            if (flow == null) {
                return null;
            }
            return load > rated ? 0.0 : flow / t.moving(length).area();
        }
        if (!(actuator instanceof HydraulicActuator h)) {
            return null;
        }
        Double flow = h.flow();
        if (flow == null) {
            return null;
        }
        double rated = out ? h.ratedPush() : h.ratedPull();
        if (load > rated) {
            return 0.0;
        }
        return flow / (out ? h.boreArea() : h.annulusArea());
    }
}
