// SPDX-License-Identifier: Apache-2.0
/**
 * What feeds the actuator: battery and cable, pump, hand pump, winch.
 */
@NullMarked
package tipwright.design.supply;

import org.jspecify.annotations.NullMarked;
