// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import tipwright.quantity.Kind;

/**
 * An actuator where it sits.
 *
 * @param z m along the pivot axis
 */
public record PlacedActuator(@Measured(Kind.LENGTH) double z, @FromParts("actuators") Actuator actuator) {}
