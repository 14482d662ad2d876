// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.Actuator;
import tipwright.design.joint.Bearing;

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
     * @param folder in which the design's own parts files lie; null: they go by their names alone
     * @param own names of the design's own parts files
     * @param extra files that come before them
     */
    public static PartsAtHand of(@Nullable Path folder, List<String> own, List<Path> extra) {
        PartsAtHand parts = new PartsAtHand(new LinkedHashMap<>(), new LinkedHashMap<>(), new ArrayList<>());
        List<Path> all = new ArrayList<>(extra);
        own.forEach(name -> all.add(folder == null ? Path.of(name) : folder.resolve(name)));
        for (Path file : all) {
            parts.put(PartsFile.read(file));
        }
        parts.put(PartsFile.shipped());
        return parts;
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

    /** What an actuator or a bearing is called; null: it is none of those at hand. */
    public @Nullable String name(Object part) {
        String actuator = name(actuators, part);
        return actuator == null ? name(bearings, part) : actuator;
    }

    private static @Nullable String name(Map<String, ?> some, Object part) {
        for (Map.Entry<String, ?> entry : some.entrySet()) {
            if (entry.getValue().equals(part)) {
                return entry.getKey();
            }
        }
        return null;
    }

    /** The names in a section of the parts files, 'actuators' or 'bearings'. */
    public List<String> names(String section) {
        return List.copyOf(section.equals("bearings") ? bearings.keySet() : actuators.keySet());
    }
}
