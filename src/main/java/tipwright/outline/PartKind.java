// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.List;

/** What a part of the machine is. Those that move come first, those that stand still from the frame on. */
public enum PartKind {
    TANK,
    /** Turns with the tank: a door's cradle, a hook, a ladder. */
    ATTACHED,
    CONTENTS,
    OPENING,
    DOOR,
    /** What ties the tank's pins to the tank. */
    CRADLE,
    LINK,
    TUBE,
    ROD,
    SHAFT,
    PIN,
    LUG,
    SPRING,
    WEIGHT,
    FRAME,
    /** A part of the frame or an obstacle that the stowed tank lies on. */
    REST,
    CROSS_MEMBER,
    BEARING,
    /** What carries the bearings where the design tells of no frame. */
    STAND,
    FOOT,
    WHEEL,
    OBSTACLE,
    GROUND,
    RECEIVER,
    /** Where no pin may be. */
    KEEP_OUT,
    /** Where a pin may be put. */
    ZONE;

    /** Whether it goes with the tank or with the mechanism. */
    public boolean moves() {
        return compareTo(FRAME) < 0;
    }

    /** Whether it is one half of an actuator. */
    public boolean actuator() {
        return this == TUBE || this == ROD;
    }

    /** Whether it is a limit of the design, not a thing. */
    public boolean limit() {
        return this == KEEP_OUT || this == ZONE;
    }

    /** Place from behind to the front. */
    public int layer() {
        return LAYERS.indexOf(this);
    }

    private static final List<PartKind> LAYERS = List.of(
            GROUND,
            ZONE,
            WHEEL,
            STAND,
            FOOT,
            CROSS_MEMBER,
            FRAME,
            REST,
            OBSTACLE,
            RECEIVER,
            CRADLE,
            TANK,
            CONTENTS,
            ATTACHED,
            OPENING,
            DOOR,
            LUG,
            LINK,
            WEIGHT,
            SPRING,
            ROD,
            TUBE,
            BEARING,
            SHAFT,
            PIN,
            KEEP_OUT);
}
