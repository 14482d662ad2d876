// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

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
}
