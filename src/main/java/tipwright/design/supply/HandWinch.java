// SPDX-License-Identifier: Apache-2.0
package tipwright.design.supply;

import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A crank or winch turned by hand that moves the actuator a fixed way each turn, and holds when let go.
 *
 * @param travelPerTurn of the actuator, m
 * @param turnsPerMinute of a steady worker
 */
@Choice("hand-winch")
public record HandWinch(
        @Note("How far the actuator moves for each turn of the crank") @Measured(value = Kind.LENGTH, above = "0 mm")
                double travelPerTurn,
        @Note("Strokes a minute one person can keep up")
                @Measured(value = Kind.RATIO, preset = "30", above = "0", atMost = "200")
                double turnsPerMinute)
        implements Supply {}
