// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import tipwright.quantity.Kind;

/**
 * An actuator where it sits.
 *
 * @param z m along the pivot axis
 */
public record PlacedActuator(
        @Note("Where it sits along the pivot") @Measured(Kind.LENGTH) double z,
        @Note("A name from the parts files, or its data in place") @FromParts("actuators") Actuator actuator) {}
