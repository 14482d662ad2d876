// SPDX-License-Identifier: Apache-2.0
/** The card of one part of the machine, with its fields. */
@NullMarked
package tipwright.viewer.card;

import org.jspecify.annotations.NullMarked;
