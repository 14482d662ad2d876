// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.List;
import java.util.Locale;
import tipwright.geometry.Vec2;

/**
 * One part of the machine with its shape in its own axes.
 *
 * @param kind what it is
 * @param name in the builder's words
 * @param body number of the body that it belongs to; of the actuator's halves: the body that its pin sits on
 * @param basis how far the design tells its shape
 * @param form its shape
 */
public record MachinePart(PartKind kind, String name, int body, Basis basis, Form form) {
    /** Before the name of its pin. */
    static final String LUG_OF = "lug of the ";

    static final String MOVING_PIN = "moving pin";

    /** How far a shape is known. */
    public enum Basis {
        /** As the design gives it. */
        GIVEN,
        /** At least as thick as this: enough to tell a clash, not to be drawn. */
        LEAST,
        /** Made up so that the picture can be read; the design does not give it. */
        SKETCHED
    }

    /** Whether it has axes of its own along the actuator: the tube from the fixed pin, the rod back from the moving pin. */
    boolean alongActuator() {
        return kind.actuator();
    }

    /** Whether the clearance check looks at it: its shape is given, and something can run into it. */
    public boolean solid() {
        return basis != Basis.SKETCHED
                && switch (kind) {
                    case TANK, ATTACHED, LINK, TUBE, ROD, FRAME, REST, WHEEL, OBSTACLE, GROUND -> true;
                    default -> false;
                };
    }

    /** What a picture knows it by: kind and name; parts of one kind and name are marked together. */
    public String id() {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-') + "/" + name;
    }

    /** Name of a support by its number, from 1. */
    public static String support(int number) {
        return "support " + number;
    }

    /** Its name and what else a finding may call it: a lug by its pin, a half of an actuator by the actuator, a pin by its key. */
    public List<String> calledAlso() {
        return switch (kind) {
            case LUG -> List.of(name, name.replace(LUG_OF, ""));
            case SHAFT -> List.of(name, "pivot");
            case BEARING -> List.of(name, "bearings");
            case TUBE, ROD -> List.of(name, name.substring(0, name.lastIndexOf(' ')));
            case PIN -> name.equals(MOVING_PIN) ? List.of(name, "tank pin", "rod pin") : List.of(name);
            default -> List.of(name);
        };
    }

    /** Where a pin of the stowed machine is in this part's own axes: the actuator's halves have theirs at their datum. */
    public Vec2 own(Vec2 pin) {
        return alongActuator() ? Vec2.ZERO : pin;
    }
}
