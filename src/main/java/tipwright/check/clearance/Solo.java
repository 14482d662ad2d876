// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import org.locationtech.jts.geom.Geometry;
import tipwright.geometry.Vec2;

/**
 * One part in the clearance check: its outline in its own axes and how it moves.
 *
 * @param name in the builder's words
 * @param kind what it is
 * @param body number of the body that it belongs to; of the actuator's halves: the body that its pin sits on
 * @param outline by the part of the axis that is looked at
 * @param zone where it begins and ends along the axis
 * @param path how it moves
 */
record Solo(String name, Kind kind, int body, Outline outline, Zone zone, Motions.Path path) {
    /** What a part is. */
    enum Kind {
        TANK,
        LINK,
        TUBE,
        ROD,
        FRAME,
        REST,
        OBSTACLE,
        GROUND;

        boolean moves() {
            return compareTo(FRAME) < 0;
        }

        boolean actuator() {
            return this == TUBE || this == ROD;
        }
    }

    /** The outline of what lies within a zone; empty when nothing does. */
    interface Outline {
        Geometry within(Zone zone);
    }

    /** Where a pin of the stowed machine is in this part's own axes: the actuator's halves have theirs at their datum. */
    Vec2 own(Vec2 pin) {
        return kind.actuator() ? Vec2.ZERO : pin;
    }
}
