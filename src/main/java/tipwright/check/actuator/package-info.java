// SPDX-License-Identifier: Apache-2.0
/**
 * Checks of the actuator: does it reach, is its stroke enough, do push, pull, holding load, rod and duty stay within what it is rated
 * for, and what the springs and weights that help it do.
 */
@NullMarked
package tipwright.check.actuator;

import org.jspecify.annotations.NullMarked;
