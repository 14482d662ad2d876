// SPDX-License-Identifier: Apache-2.0
/** Vectors, closed solids, clipping by a plane and mass properties; metres, in the design's axes (x to the dump side, y up, z along the pivot). */
@NullMarked
package tipwright.geometry;

import org.jspecify.annotations.NullMarked;
