// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.HydraulicActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rope;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.supply.Battery;
import tipwright.design.supply.HandPump;
import tipwright.design.supply.HandWinch;
import tipwright.design.supply.Pump;
import tipwright.design.supply.Supply;

/** Puts actuators and supply together. */
final class Machines {
    private Machines() {}

    /** Thrown when the time cannot be known; the message names the missing key. */
    static final class MissingException extends Exception {
        private static final long serialVersionUID = 1L;

        MissingException(String key) {
            super(key);
        }
    }

    static Machine of(Design design) throws MissingException {
        List<Actuator> all = design.drive().actuators().stream()
                .map(PlacedActuator::actuator)
                .toList();
        Supply supply = design.supply();
        double kelvin = design.site().temperature();
        if (supply instanceof HandWinch winch) {
            return new WinchMachine(winch, all);
        }
        if (all.stream().anyMatch(a -> a instanceof Rope)) {
            throw new MissingException("a rope needs a supply of kind: hand-winch");
        }
        List<ElectricActuator> electric = new ArrayList<>();
        List<HydraulicActuator> hydraulic = new ArrayList<>();
        List<TelescopicCylinder> stages = new ArrayList<>();
        for (Actuator a : all) {
            if (a instanceof ElectricActuator e) {
                electric.add(e);
            } else if (a instanceof HydraulicActuator h) {
                hydraulic.add(h);
            } else if (a instanceof TelescopicCylinder t) {
                stages.add(t);
            }
        }
        if (stages.size() == all.size() && (supply == null || supply instanceof Pump)) {
            return new StageMachine(stages, (Pump) supply, kelvin);
        }
        if (!stages.isEmpty()) {
            throw new MissingException("telescopic cylinders need one another and a supply of kind: pump");
        }
        if (hydraulic.isEmpty()) {
            if (supply != null && !(supply instanceof Battery)) {
                throw new MissingException("a supply that drives electric actuators (kind: battery) missing");
            }
            return ElectricMachine.of(electric, (Battery) supply);
        }
        if (!electric.isEmpty()) {
            throw new MissingException(
                    "electric and hydraulic actuators side by side: their common speed is not known");
        }
        if (supply instanceof HandPump hand) {
            return HydraulicMachine.byHand(hydraulic, hand, kelvin);
        }
        if (supply instanceof Battery) {
            throw new MissingException("a supply that drives cylinders (kind: pump or hand-pump) missing");
        }
        return HydraulicMachine.of(hydraulic, (Pump) supply, kelvin);
    }
}
