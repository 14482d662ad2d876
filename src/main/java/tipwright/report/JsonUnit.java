// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import tipwright.quantity.Kind;

/**
 * The unit in which a check's figures stand in the JSON: the same as in the names of the other figures (N, mm, deg), SI else.
 *
 * @param name as written
 * @param size in SI
 */
record JsonUnit(String name, double size) {
    static JsonUnit of(Kind kind) {
        return switch (kind) {
            case LENGTH -> new JsonUnit("mm", 1e-3);
            case ANGLE -> new JsonUnit("deg", Math.PI / 180);
            case VOLUME -> new JsonUnit("L", 1e-3);
            case PRESSURE -> new JsonUnit("MPa", 1e6);
            default -> new JsonUnit(kind.si(), 1);
        };
    }

    double of(double si) {
        return si / size;
    }
}
