// SPDX-License-Identifier: Apache-2.0
/** Drawings for the workshop: the map of a pin's zone, the side view, the weld sheet, the template, the tolerance plot. */
@NullMarked
package tipwright.sheet;

import org.jspecify.annotations.NullMarked;
