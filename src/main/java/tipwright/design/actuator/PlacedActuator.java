// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import java.util.List;
import tipwright.design.key.FromParts;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * An actuator where it sits.
 *
 * @param z m along the pivot axis
 */
public record PlacedActuator(
        @Note("Where it sits along the pivot") @Measured(Kind.LENGTH) double z,
        @Note("A name from the parts files, or its data in place") @FromParts("actuators") Actuator actuator) {

    /** Half way between them along z, m. */
    public static double middle(List<PlacedActuator> places) {
        return places.stream().mapToDouble(PlacedActuator::z).average().orElse(0);
    }

    /** The same places with another actuator in each. */
    public static List<PlacedActuator> all(List<PlacedActuator> places, Actuator other) {
        return places.stream().map(p -> new PlacedActuator(p.z, other)).toList();
    }
}
