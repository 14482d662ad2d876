// SPDX-License-Identifier: Apache-2.0
/** The command line. */
@NullMarked
package tipwright.command;

import org.jspecify.annotations.NullMarked;
