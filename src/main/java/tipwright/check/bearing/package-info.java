// SPDX-License-Identifier: Apache-2.0
/**
 * Checks of the two pivot bearings and of the shaft between them. Bearing loads come in split in three dimensions, N, in the design's
 * axes.
 */
@NullMarked
package tipwright.check.bearing;

import org.jspecify.annotations.NullMarked;
