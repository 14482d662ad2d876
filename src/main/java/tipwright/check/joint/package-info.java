// SPDX-License-Identifier: Apache-2.0
/**
 * Checks of what holds the parts together: pins, lugs, welds, bolts, links, slides and the cross member. Loads come in as the reactions of
 * the analysis, carried to the joint in the axes of the body that it is fixed to.
 */
@NullMarked
package tipwright.check.joint;

import org.jspecify.annotations.NullMarked;
