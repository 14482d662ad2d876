// SPDX-License-Identifier: Apache-2.0
/**
 * What follows when something goes wrong. Each fault changes the loads or the site and asks the same rules again.
 */
@NullMarked
package tipwright.check.fault;

import org.jspecify.annotations.NullMarked;
