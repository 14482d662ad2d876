// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.file.PartsFile;
import tipwright.design.file.Problem;
import tipwright.design.joint.Bearing;
import tipwright.quantity.UnitSystem;

/**
 * The parts that are at hand: those of extra files, then of the files that the design names, then those that came with the program;
 * of two with one name the first.
 *
 * @param actuators by name
 * @param bearings by name
 * @param problems all that is wrong with the files
 */
public record PartsAtHand(Map<String, Actuator> actuators, Map<String, Bearing> bearings, List<Problem> problems) {

    /**
     * Reads them.
     *
     * @param folder where the design's own parts files lie; null: the one at hand
     * @param named parts files that the design names
     */
    public static PartsAtHand of(@Nullable Path folder, List<String> named, List<Path> extra) {
        PartsAtHand parts = new PartsAtHand(new LinkedHashMap<>(), new LinkedHashMap<>(), new ArrayList<>());
        List<Path> all = new ArrayList<>(extra);
        named.forEach(name -> all.add(folder == null ? Path.of(name) : folder.resolve(name)));
        for (Path file : all) {
            parts.put(PartsFile.read(file));
        }
        parts.put(PartsFile.shipped());
        return parts;
    }

    /** As a shop. */
    public Shop shop(UnitSystem units) {
        List<ListedActuator> listed = new ArrayList<>();
        actuators.forEach((name, part) -> listed.add(new ListedActuator(name, part)));
        List<Shop.ListedBearing> carried = new ArrayList<>();
        bearings.forEach((name, part) -> carried.add(new Shop.ListedBearing(name, part)));
        return new Shop(units, listed, carried);
    }

    private void put(PartsFile.Contents contents) {
        problems.addAll(contents.problems());
        for (PartsFile.Part part : contents.parts()) {
            if (part.part() instanceof Actuator actuator) {
                actuators.putIfAbsent(part.name(), actuator);
            } else if (part.part() instanceof Bearing bearing) {
                bearings.putIfAbsent(part.name(), bearing);
            }
        }
    }
}
