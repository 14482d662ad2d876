// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import tipwright.check.Finding;
import tipwright.quantity.UnitSystem;

/** What would mend a check. Common practice, no source. */
final class Mend {
    private static final String ARM =
            "move the pins so that the actuator passes the pivot further off ('place' searches for them)";

    private Mend() {}

    /** A sentence; where a larger capacity would do, it tells how large. */
    static String of(Finding f, UnitSystem units) {
        String id = f.id().contains("/") ? f.id().substring(0, f.id().indexOf('/')) : f.id();
        String way = way(id);
        boolean rating = f.utilisation() > 0 && Double.isFinite(f.demand()) && f.capacity() > 0 && byRatio(f);
        String needed = rating
                ? "at least " + Words.show(f, f.demand() * f.factor(), units) + " in place of "
                        + Words.show(f, f.capacity(), units)
                : "";
        if (way.isEmpty()) {
            return rating ? "To mend: a part good for " + needed + ", or less load." : "";
        }
        return "To mend: " + way.replace("{needed}", rating ? " (" + needed + ")" : "") + ".";
    }

    /** Whether the utilisation is demand over allowed capacity; some rules go another way. */
    static boolean byRatio(Finding f) {
        double ratio = f.demand() / (f.capacity() / f.factor());
        return Math.abs(ratio - f.utilisation()) <= 1e-6 * Math.max(1, Math.abs(ratio));
    }

    private static String way(String id) {
        return switch (id) {
            case "push", "pull", "hold", "stall" -> "a stronger actuator{needed}, or " + ARM + ", or less in the tank";
            case "stroke",
                    "reach" -> "an actuator of another length or stroke, or pins nearer to or further from each other";
            case "buckling" -> "a thicker or shorter rod{needed}, or " + ARM;
            case "transmission" -> ARM;
            case "over-centre" -> "a pivot further out or higher, a shorter tilt, or a drive that can also pull";
            case "bearing-static", "bush" -> "larger bearings{needed}, or bearings further apart";
            case "bearing-housing" -> "a stronger housing{needed}, or its base turned so that the load presses onto it";
            case "shaft", "pin" -> "a thicker or harder shaft or pin, or less overhang and gap";
            case "duty", "cycle-time" -> "a faster actuator or one rated for more on-time, or fewer dumps an hour";
            case "electrical" -> "a thicker or shorter cable, the right fuse, or a larger supply";
            case "hydraulic" -> "a larger bore, a pump and hoses that fit it, or a relief valve set as the cylinder allows";
            case "vent" -> "a larger vent{needed}";
            case "channel" -> "a wider or deeper channel, a smaller opening, or a slower tilt";
            case "door" -> "stronger hinges or latches{needed}, or more latches";
            case "empties" -> "more tilt, a steeper floor, or a door as high as the tank";
            case "clearance" -> "move or cut back the part that is too near, or end the tilt sooner";
            case "tip-over" -> "a wider stance or outriggers, weight low down on the far side, or less in the tank";
            default -> "";
        };
    }
}
