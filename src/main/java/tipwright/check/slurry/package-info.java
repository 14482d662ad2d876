// SPDX-License-Identifier: Apache-2.0
/**
 * Checks of what is in the tank: does it run out, can air get in, where does it land, does the door hold. Heights and volumes come from
 * the load cases.
 */
@NullMarked
package tipwright.check.slurry;

import org.jspecify.annotations.NullMarked;
