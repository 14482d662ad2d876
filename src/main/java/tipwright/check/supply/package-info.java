// SPDX-License-Identifier: Apache-2.0
/**
 * Checks of what feeds the actuator: battery, cable and fuse, or pump, oil and hoses. They need the dump in time.
 */
@NullMarked
package tipwright.check.supply;

import org.jspecify.annotations.NullMarked;
