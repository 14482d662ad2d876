// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * How one joint is held to its body.
 *
 * @param joint frame-pin, tank-pin, bearing-1, bearing-2, or a pin of the mechanism by its name
 * @param on the body that it is held to: frame, tank or a link; null: the body that it belongs to
 * @param seat where it sits on a round tank; null: not on its wall, or not known
 * @param flange that the bolts hold; null when not known
 * @param height from the pin to the plate behind it, m; null when not known
 */
public record Fastening(
        @Note("frame-pin, tank-pin, bearing-1, bearing-2, or a pin of the mechanism by its name") String joint,
        @Note("frame, tank or a link; left out: the body that the joint belongs to") @Nullable String on,
        @Note("Fillet welds that hold it") @Nullable FilletWeld weld,
        @Note("Bolts that hold it") @Nullable Bolts bolts,
        @Note("The lug with the hole for the pin") @Nullable Lug lug,
        @Note("Where it sits on the wall of a round tank") @Nullable Seat seat,
        @Note("The plate that the bolts hold") @Nullable Flange flange,
        @Note("From the pin's middle square to the plate behind it, that the actuator swings over")
                @Measured(value = Kind.LENGTH, above = "0 mm")
                @Nullable
                Double height) {}
