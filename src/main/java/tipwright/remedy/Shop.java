// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.file.PartsAtHand;
import tipwright.design.joint.Bearing;
import tipwright.quantity.UnitSystem;

/**
 * What can be had.
 *
 * @param units of the sizes and of the tape
 * @param actuators of the parts box
 * @param bearings of the parts box
 */
public record Shop(UnitSystem units, List<ListedActuator> actuators, List<ListedBearing> bearings) {
    /** A bearing by its name in the parts files. */
    public record ListedBearing(String name, Bearing bearing) {}

    /** Of the parts that are at hand. */
    public static Shop of(PartsAtHand parts, UnitSystem units) {
        List<ListedActuator> listed = new ArrayList<>();
        parts.actuators().forEach((name, part) -> listed.add(new ListedActuator(name, part)));
        List<ListedBearing> carried = new ArrayList<>();
        parts.bearings().forEach((name, part) -> carried.add(new ListedBearing(name, part)));
        return new Shop(units, listed, carried);
    }

    /** Copies the lists. */
    public Shop {
        actuators = List.copyOf(actuators);
        bearings = List.copyOf(bearings);
    }

    /** The sizes of a series above one that is there, smallest first. */
    List<SoldSize> above(SoldSize.Series series, double size) {
        return SoldSize.of(series, units).stream()
                .filter(s -> s.size() > size * (1 + 1e-6))
                .toList();
    }
}
