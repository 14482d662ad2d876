// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import tipwright.design.key.FromParts;
import tipwright.design.key.Note;

/**
 * An actuator to choose from.
 *
 * @param name as in the parts files
 */
public record ListedActuator(
        @Note("What it is called") String name,
        @Note("A name from the parts files, or its data in place") @FromParts("actuators") Actuator actuator) {}
