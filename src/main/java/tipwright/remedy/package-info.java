// SPDX-License-Identifier: Apache-2.0
/**
 * What would fix a design that fails: every change is worked out before it is told, and only those that pass are.
 */
@NullMarked
package tipwright.remedy;

import org.jspecify.annotations.NullMarked;
