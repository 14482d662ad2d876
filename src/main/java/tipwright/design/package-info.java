// SPDX-License-Identifier: Apache-2.0
/** The design as immutable records, SI inside. */
@NullMarked
package tipwright.design;

import org.jspecify.annotations.NullMarked;
