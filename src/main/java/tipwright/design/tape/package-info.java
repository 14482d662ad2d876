// SPDX-License-Identifier: Apache-2.0
/** Points that are told by the tape: how far from others, adjusted so that all readings fit best, with their doubt. */
@NullMarked
package tipwright.design.tape;

import org.jspecify.annotations.NullMarked;
