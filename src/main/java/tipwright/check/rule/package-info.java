// SPDX-License-Identifier: Apache-2.0
/**
 * What a check is: its interface, what it finds, and how it looks for the worst over load cases, tilts and directions of motion. Takes in an
 * {@link tipwright.analysis.Analysis}, and a {@link tipwright.time.Timing} where the dump in time matters; gives findings in SI. Every room of
 * checks builds on it; it knows none of them.
 */
@NullMarked
package tipwright.check.rule;

import org.jspecify.annotations.NullMarked;
