// SPDX-License-Identifier: Apache-2.0
/**
 * Oil in cylinders, hoses and valves: plain functions in SI units over immutable records, each with its source and range. What is
 * outside the range raises an IllegalArgumentException.
 */
@NullMarked
package tipwright.fluid;

import org.jspecify.annotations.NullMarked;
