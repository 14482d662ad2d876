// SPDX-License-Identifier: Apache-2.0
/**
 * What stands around the tank: site, frame, feet, ground, obstacles, receiver, and where mounts may go.
 */
@NullMarked
package tipwright.design.around;

import org.jspecify.annotations.NullMarked;
