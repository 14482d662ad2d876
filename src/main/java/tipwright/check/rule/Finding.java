// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import org.jspecify.annotations.Nullable;
import tipwright.quantity.Kind;

/**
 * What one check found: demand against capacity where it is worst.
 *
 * @param id of the check, with the part after a slash where there are several ('bearing-static/1')
 * @param title in the trade's words
 * @param demand SI; NaN when not checked
 * @param capacity SI, before the factor; NaN when not checked
 * @param factor on the capacity
 * @param kind of demand and capacity
 * @param utilisation demand / (capacity / factor)
 * @param tilt where it is worst, rad; NaN when no tilt governs
 * @param loadCase that governs; null when none does
 * @param verdict what follows
 * @param source of the rule
 * @param note one sentence for the builder: what happens, or what is missing
 */
public record Finding(
        String id,
        String title,
        double demand,
        double capacity,
        double factor,
        Kind kind,
        double utilisation,
        double tilt,
        @Nullable String loadCase,
        Verdict verdict,
        String source,
        String note) {}
