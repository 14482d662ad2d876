// SPDX-License-Identifier: Apache-2.0
/** A machine asked for question by question, from tape readings to a design file; no terminal and no window, pure values only. */
@NullMarked
package tipwright.interview;

import org.jspecify.annotations.NullMarked;
