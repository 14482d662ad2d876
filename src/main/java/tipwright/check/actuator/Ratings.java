// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.function.ToDoubleFunction;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.Cylinder;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.supply.HandPump;
import tipwright.design.supply.Pump;
import tipwright.design.supply.Supply;

/** Ratings of actuators that share the load. */
public final class Ratings {
    private Ratings() {}

    /** Rated push of all while moving at a length in m, N: no more than the pump's relief valve lets the cylinders give. */
    public static double push(Design design, double length) {
        return together(design, a -> a.ratedPush(length) * share(design, a));
    }

    /** Rated pull of all while moving, N: no more than the pump's relief valve lets the cylinders give. */
    public static double pull(Design design) {
        return together(design, a -> a.ratedPull() * share(design, a));
    }

    /** Share of a cylinder's rating that is left under the pump's own relief setting. */
    private static double share(Design design, Actuator actuator) {
        Supply supply = design.supply();
        Double setting = supply instanceof Pump p ? p.relief() : supply instanceof HandPump h ? h.relief() : null;
        return setting != null && actuator instanceof Cylinder c ? Math.min(1, setting / c.reliefPressure()) : 1;
    }

    /** What actuators bear together when each carries an equal share: the weakest times their number. */
    public static double together(Design design, ToDoubleFunction<Actuator> rating) {
        double weakest = Double.POSITIVE_INFINITY;
        for (PlacedActuator p : design.drive().actuators()) {
            weakest = Math.min(weakest, rating.applyAsDouble(p.actuator()));
        }
        return weakest * design.drive().actuators().size();
    }
}
