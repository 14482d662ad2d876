// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.List;
import tipwright.design.actuator.Actuator;
import tipwright.design.supply.HandWinch;

/** A crank turned by hand at a steady pace; stalls over the actuators' rated force. Power is what the hand gives to the load. */
final class WinchMachine implements Machine {
    private final double speed;
    private final double push;
    private final double pull;

    WinchMachine(HandWinch winch, List<Actuator> actuators) {
        speed = winch.travelPerTurn() * winch.turnsPerMinute() / 60;
        double weakestPush = Double.POSITIVE_INFINITY;
        double weakestPull = Double.POSITIVE_INFINITY;
        for (Actuator a : actuators) {
            weakestPush = Math.min(weakestPush, a.ratedPush());
            weakestPull = Math.min(weakestPull, a.ratedPull());
        }
        push = weakestPush * actuators.size();
        pull = weakestPull * actuators.size();
    }

    @Override
    public DriveState draw(double against, boolean out, boolean raising) {
        double v = against > (out ? push : pull) ? 0 : speed;
        return DriveState.moving(v, v * Math.max(0, against));
    }

    @Override
    public double freeSpeed() {
        return speed;
    }

    @Override
    public double duty() {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public double heating(DriveState draw) {
        return 0;
    }

    @Override
    public boolean runs(DriveState draw) {
        return false;
    }

    @Override
    public boolean powerKnown() {
        return true;
    }
}
