// SPDX-License-Identifier: Apache-2.0
/**
 * Strength of one part under a given load, as pure functions in SI: beams, tubes, pins, lugs, welds, bolts, columns. No load cases and no
 * tilts: whoever calls has found the load.
 */
@NullMarked
package tipwright.strength;

import org.jspecify.annotations.NullMarked;
