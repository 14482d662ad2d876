// SPDX-License-Identifier: Apache-2.0
/**
 * Parts that join: pivot with shaft and bearings, pins, lugs, welds, bolts, guides, and their friction.
 */
@NullMarked
package tipwright.design.joint;

import org.jspecify.annotations.NullMarked;
