// SPDX-License-Identifier: Apache-2.0
/**
 * The rules of strength under the checks: shells, plates, welds, bolts, tubes, stops. Plain functions in SI units over immutable
 * records; each tells its source and where it holds. What is outside a rule's range raises an IllegalArgumentException: it is for the
 * caller to say 'cannot tell' instead of asking.
 */
@NullMarked
package tipwright.strength;

import org.jspecify.annotations.NullMarked;
