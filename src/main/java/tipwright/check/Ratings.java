// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.function.ToDoubleFunction;
import tipwright.design.Actuator;
import tipwright.design.Design;
import tipwright.design.PlacedActuator;

/** Ratings of actuators that share the load. */
final class Ratings {
    private Ratings() {}

    /** What actuators bear together when each carries an equal share: the weakest times their number. */
    static double together(Design design, ToDoubleFunction<Actuator> rating) {
        double weakest = Double.POSITIVE_INFINITY;
        for (PlacedActuator p : design.drive().actuators()) {
            weakest = Math.min(weakest, rating.applyAsDouble(p.actuator()));
        }
        return weakest * design.drive().actuators().size();
    }
}
