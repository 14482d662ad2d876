// SPDX-License-Identifier: Apache-2.0
/**
 * Whether moving parts hit anything on their way. Outlines come in as polygons of the side view with a range along the pivot axis, m;
 * the smallest gap over the whole tilt range goes out, with the tilt.
 */
@NullMarked
package tipwright.check.clearance;

import org.jspecify.annotations.NullMarked;
