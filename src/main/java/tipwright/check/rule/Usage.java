// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.Extreme;
import tipwright.quantity.Kind;

/**
 * What a load makes of a part: the answer of every rule.
 *
 * @param demand SI
 * @param capacity SI, before the factor
 * @param factor on the capacity
 * @param kind of demand and capacity
 */
public record Usage(double demand, double capacity, double factor, Kind kind) {
    /** Demand over what is allowed; infinite where there is no capacity. */
    public double utilisation() {
        return capacity > 0 ? demand / (capacity / factor) : Double.POSITIVE_INFINITY;
    }

    /**
     * Where a rule is worst: where most is used, and of where there is no capacity, where most is asked for.
     *
     * @param largest where a figure of the rule's answer is largest
     */
    public static Extreme worst(Function<ToDoubleFunction<Usage>, Extreme> largest) {
        Extreme used = largest.apply(Usage::utilisation);
        if (used.value() != Double.POSITIVE_INFINITY) {
            return used;
        }
        Extreme asked = largest.apply(u -> u.capacity > 0 ? Double.NEGATIVE_INFINITY : u.demand);
        return new Extreme(used.value(), asked.tilt(), asked.loadCase(), asked.direction());
    }
}
