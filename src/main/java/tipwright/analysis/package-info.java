// SPDX-License-Identifier: Apache-2.0
/** Sweeps the tilt range over all load cases: actuator force, pivot load, the load of each bearing. */
@NullMarked
package tipwright.analysis;

import org.jspecify.annotations.NullMarked;
