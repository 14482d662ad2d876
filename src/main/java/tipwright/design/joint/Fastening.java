// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Note;

/**
 * How one joint is held to its body.
 *
 * @param joint frame-pin, tank-pin, bearing-1, bearing-2, or a pin of the mechanism by its name
 * @param on the body that it is held to: frame, tank or a link; null: the body that it belongs to
 */
public record Fastening(
        @Note("frame-pin, tank-pin, bearing-1, bearing-2, or a pin of the mechanism by its name") String joint,
        @Note("frame, tank or a link; left out: the body that the joint belongs to") @Nullable String on,
        @Note("Fillet welds that hold it") @Nullable FilletWeld weld,
        @Note("Bolts that hold it") @Nullable Bolts bolts,
        @Note("The lug with the hole for the pin") @Nullable Lug lug) {}
