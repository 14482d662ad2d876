// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.PartsAtHand;
import tipwright.design.file.Reading;

/**
 * What the parts that are at hand are called.
 *
 * @param parts at hand
 */
public record PartNames(PartsAtHand parts) {
    /** Those that are at hand for a design. */
    public static PartNames of(Draft draft, Reading.Good good) {
        return new PartNames(draft.parts(good.design()));
    }

    /** The name of an actuator or a bearing; null: it is none of those. */
    public @Nullable String name(Object part) {
        String actuator = name(parts.actuators(), part);
        return actuator == null ? name(parts.bearings(), part) : actuator;
    }

    private static @Nullable String name(Map<String, ?> some, Object part) {
        for (Map.Entry<String, ?> entry : some.entrySet()) {
            if (entry.getValue().equals(part)) {
                return entry.getKey();
            }
        }
        return null;
    }
}
