// SPDX-License-Identifier: Apache-2.0
/** Load cases: tilt to mass and centroid. */
@NullMarked
package tipwright.load;

import org.jspecify.annotations.NullMarked;
