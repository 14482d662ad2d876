// SPDX-License-Identifier: Apache-2.0
/**
 * The tank, its openings, and what is in it. Lengths in m in the design's axes with the tank stowed, masses in kg.
 */
@NullMarked
package tipwright.design.tank;

import org.jspecify.annotations.NullMarked;
