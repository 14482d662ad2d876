// SPDX-License-Identifier: Apache-2.0
/** Stills of the dump, and an animated picture of it, made with no window shown. */
@NullMarked
package tipwright.viewer.still;

import org.jspecify.annotations.NullMarked;
