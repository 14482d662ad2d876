// SPDX-License-Identifier: Apache-2.0
/** Cards: the fields of one part of the machine, to be read and changed; its shape, its outline, its parts from the parts box. */
@NullMarked
package tipwright.viewer.card;

import org.jspecify.annotations.NullMarked;
