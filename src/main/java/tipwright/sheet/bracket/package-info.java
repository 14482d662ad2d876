// SPDX-License-Identifier: Apache-2.0
/** The plates of a machine's brackets as they are cut: as the design gives them, or proposed and tried by the checks. */
@NullMarked
package tipwright.sheet.bracket;

import org.jspecify.annotations.NullMarked;
