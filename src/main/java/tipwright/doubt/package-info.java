// SPDX-License-Identifier: Apache-2.0
/** How sure a verdict is when values of the design may be off: which value decides, and how often it passes. */
@NullMarked
package tipwright.doubt;

import org.jspecify.annotations.NullMarked;
