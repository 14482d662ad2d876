// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tape;

import java.util.LinkedHashMap;
import java.util.Map;
import tipwright.geometry.Vec3;

/**
 * Points by their names, as they follow from the tape.
 *
 * @param places m, tank stowed; in the order of the file
 * @param doubts largest standard doubt of each in the side view, m; 0 where its coordinates are given
 */
public record NamedPoints(Map<String, Vec3> places, Map<String, Double> doubts) {
    /** Copies the maps, in their order. */
    public NamedPoints {
        places = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(places));
        doubts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(doubts));
    }
}
