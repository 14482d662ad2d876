// SPDX-License-Identifier: Apache-2.0
/** The checks, one small class each, each with its source. */
@NullMarked
package tipwright.check;

import org.jspecify.annotations.NullMarked;
