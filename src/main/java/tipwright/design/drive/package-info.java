// SPDX-License-Identifier: Apache-2.0
/**
 * How the tank is moved: every mechanism with its pins, links and slides, and what helps the actuator. Places in m, stowed. A mechanism
 * tells its bodies and joints as a {@link tipwright.linkage.Skeleton}.
 */
@NullMarked
package tipwright.design.drive;

import org.jspecify.annotations.NullMarked;
