// SPDX-License-Identifier: Apache-2.0
/**
 * The one picture of the machine: the outlines of all its parts at any tilt, seen from the side, from above and from the dump end, m.
 * The clearance check, the sheets, the report and the window take them from here.
 */
@NullMarked
package tipwright.outline;

import org.jspecify.annotations.NullMarked;
