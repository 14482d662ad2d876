// SPDX-License-Identifier: Apache-2.0
/**
 * The program's figures held against outside references, computed anew on the machine that asks.
 *
 * <p>References are data (references.txt and the tables beside it), each with its source; a class for each group of them computes
 * the program's own value through the same code that checks a design.
 */
@NullMarked
package tipwright.validation;

import org.jspecify.annotations.NullMarked;
