// SPDX-License-Identifier: Apache-2.0
/** Reading design and parts files: every error with its line and column, all at once. */
@NullMarked
package tipwright.design.file;

import org.jspecify.annotations.NullMarked;
