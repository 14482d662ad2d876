// SPDX-License-Identifier: Apache-2.0
package tipwright.design.supply;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A crank or winch turned by hand that moves the actuator a fixed way each turn, and holds when let go.
 *
 * @param travelPerTurn of the actuator, m
 * @param turnsPerMinute of a steady worker
 * @param crank from its axis to the hand, m; null: not known
 * @param efficiency share of the hand's work that reaches the actuator; null: not known
 */
@Choice("hand-winch")
public record HandWinch(
        @Note("How far the actuator moves for each turn of the crank") @Measured(value = Kind.LENGTH, above = "0 mm")
                double travelPerTurn,
        @Note("Strokes a minute one person can keep up")
                @Measured(value = Kind.RATIO, preset = "30", above = "0", atMost = "200")
                double turnsPerMinute,
        @Note("From the crank's axis to the hand") @Measured(value = Kind.LENGTH, above = "0 mm") @Nullable
                Double crank,
        @Note("Share of the hand's work that reaches the actuator; a self-locking screw or worm gives 20 to 40 %")
                @Measured(value = Kind.RATIO, above = "0 %", atMost = "100 %")
                @Nullable
                Double efficiency)
        implements Supply {}
