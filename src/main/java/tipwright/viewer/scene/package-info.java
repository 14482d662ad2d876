// SPDX-License-Identifier: Apache-2.0
/** The picture in three dimensions: built from results only, in metres, in the design's own axes. */
@NullMarked
package tipwright.viewer.scene;

import org.jspecify.annotations.NullMarked;
