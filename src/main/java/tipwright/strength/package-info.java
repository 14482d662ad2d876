// SPDX-License-Identifier: Apache-2.0
/**
 * Strength of one part under a given load, as pure functions in SI: beams, tubes, pins, lugs, welds, bolts, columns, round and flat
 * walls, fatigue, stops. No load cases and no tilts: whoever calls has found the load. Each tells its source and where it holds; what is
 * outside a rule's range raises an IllegalArgumentException, so that the caller says 'cannot tell' instead of asking.
 */
@NullMarked
package tipwright.strength;

import org.jspecify.annotations.NullMarked;
