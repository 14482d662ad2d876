// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.Cylinder;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rope;
import tipwright.design.actuator.Sharing;
import tipwright.design.supply.HandPump;
import tipwright.design.supply.Pump;
import tipwright.design.supply.Supply;

/** Ratings of actuators that share the load. */
public final class Ratings {
    /** In place of a rating where an actuator cannot push or pull, so that the largest share can be told, N. */
    public static final double NOTHING = 1e-9;

    private Ratings() {}

    /** Whether a rope moves the tank, which cannot push. */
    public static boolean byRope(Design design) {
        return design.drive().actuators().stream().anyMatch(p -> p.actuator() instanceof Rope);
    }

    /** Rated push of all while moving at a length in m, N: no more than the first relief valve to open lets the cylinders give. */
    public static double push(Design design, double length) {
        return together(design, length, true, a -> one(design, a, length, true));
    }

    /** Rated pull of all while moving, N: no more than the first relief valve to open lets the cylinders give. */
    public static double pull(Design design) {
        return together(design, Double.NaN, false, a -> one(design, a, Double.NaN, false));
    }

    /** Rated push at a length in m, or pull, of one of the design's actuators, N: no more than the first relief valve lets it give. */
    public static double one(Design design, Actuator actuator, double length, boolean push) {
        return (push ? actuator.ratedPush(length) : actuator.ratedPull()) * share(design, actuator);
    }

    /** Share of a cylinder's rating that is left when the first relief valve opens. */
    private static double share(Design design, Actuator actuator) {
        return actuator instanceof Cylinder c ? Math.min(1, relief(design) / c.reliefPressure()) : 1;
    }

    /** The lowest relief setting of all cylinders, which stand on one line, and of the pump, Pa; infinite where there is none. */
    public static double relief(Design design) {
        Double setting = setting(design);
        double least = setting == null ? Double.POSITIVE_INFINITY : setting;
        for (PlacedActuator p : design.drive().actuators()) {
            least = p.actuator() instanceof Cylinder c ? Math.min(least, c.reliefPressure()) : least;
        }
        return least;
    }

    /** The pump's own relief setting, Pa; null when it has none. */
    private static @Nullable Double setting(Design design) {
        Supply supply = design.supply();
        return supply instanceof Pump p ? p.relief() : supply instanceof HandPump h ? h.relief() : null;
    }

    /**
     * What actuators bear together, N: as much as brings the first of them to its rating.
     *
     * @param length pin to pin, m
     * @param push whether they push, else they pull
     */
    public static double together(Design design, double length, boolean push, ToDoubleFunction<Actuator> rating) {
        List<PlacedActuator> all = design.drive().actuators();
        double[] shares = Sharing.shares(all, length, push);
        double most = Double.POSITIVE_INFINITY;
        for (int i = 0; i < shares.length; i++) {
            if (shares[i] > 0) {
                most = Math.min(most, rating.applyAsDouble(all.get(i).actuator()) / shares[i]);
            }
        }
        return most;
    }
}
