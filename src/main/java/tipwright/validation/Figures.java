// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import java.util.LinkedHashMap;
import java.util.Map;

/** How the program comes to its figures, by the reference's id. */
final class Figures {
    private final Map<String, Figure> byId = new LinkedHashMap<>();

    /** One of the program's figures. */
    @FunctionalInterface
    interface Figure {
        /**
         * Computes it, in the unit of its reference.
         *
         * @throws Exception whatever keeps the program from an answer; the row fails
         */
        double value() throws Exception;
    }

    /** Adds one. */
    void add(String id, Figure figure) {
        if (byId.put(id, figure) != null) {
            throw new IllegalArgumentException("'" + id + "' is there already");
        }
    }

    Map<String, Figure> byId() {
        return byId;
    }
}
