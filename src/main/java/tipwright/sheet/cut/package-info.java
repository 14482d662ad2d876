// SPDX-License-Identifier: Apache-2.0
/** What is cut and what is bought: plates, sections, round bar, and how they come out of stock lengths. */
@NullMarked
package tipwright.sheet.cut;

import org.jspecify.annotations.NullMarked;
