// SPDX-License-Identifier: Apache-2.0
/** General planar linkage: position, rates and reactions of rigid bodies, pins, slides and struts. */
@NullMarked
package tipwright.linkage;

import org.jspecify.annotations.NullMarked;
