// SPDX-License-Identifier: Apache-2.0
/** What Maven runs between compiling and packaging; not part of the program that is packaged. */
@NullMarked
package tipwright.build;

import org.jspecify.annotations.NullMarked;
