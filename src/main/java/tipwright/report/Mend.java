// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Limits;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/** What would mend a check that fails or is close. Common practice, no source. */
public final class Mend {
    private static final String ARM =
            "move the pins so that the actuator passes the pivot further off ('place' searches for them)";

    private static final String NEARER = "pins nearer to or further from each other";
    private static final String BOX = " ('actuators' tries those of the parts box)";

    private Mend() {}

    /** A sentence; where a larger capacity would do, it tells how large. Empty when there is nothing to say. */
    public static String of(Finding f, Limits limits, UnitSystem units) {
        if (f.verdict() != Verdict.FAIL && f.verdict() != Verdict.CLOSE) {
            return "";
        }
        String way = f.id().startsWith("stroke/") ? stroke(f, units) : way(f.id());
        String needed = needed(f, limits, units);
        if (way.isEmpty()) {
            return needed.isEmpty() ? "" : "To mend: a part good for " + needed + ", or less load.";
        }
        return "To mend: " + way.replace("{needed}", needed.isEmpty() ? "" : " (" + needed + ")") + ".";
    }

    /** The capacity at which the check passes; empty where no capacity decides. */
    private static String needed(Finding f, Limits limits, UnitSystem units) {
        boolean decides = f.utilisation() > limits.close()
                && Double.isFinite(f.demand())
                && f.demand() > 0
                && f.capacity() > 0
                && Double.isFinite(f.capacity())
                && byRatio(f);
        if (!decides) {
            return "";
        }
        return Quantities.show(f.demand() * f.factor() / limits.close(), f.kind(), units) + " in place of "
                + Quantities.show(f.capacity(), f.kind(), units);
    }

    /** By how much the actuator is too long or too short; demand is what is left of the stroke, capacity the margin wanted. */
    private static String stroke(Finding f, UnitSystem units) {
        double lacking = f.capacity() - f.demand();
        if (!(lacking > 0)) {
            return "a little more room at that end of the stroke, or " + NEARER;
        }
        String much = Quantities.show(lacking, f.kind(), units);
        return f.id().contains("drawn-out")
                ? "an actuator with " + much + " more stroke" + BOX + ", a shorter tilt, or " + NEARER
                : "an actuator that is " + much + " shorter drawn in" + BOX + ", or " + NEARER;
    }

    /** Whether the utilisation is demand over allowed capacity; some rules go another way. */
    public static boolean byRatio(Finding f) {
        double ratio = f.demand() / (f.capacity() / f.factor());
        return Math.abs(ratio - f.utilisation()) <= 1e-6 * Math.max(1, Math.abs(ratio));
    }

    private static String way(String id) {
        String family = id.contains("/") ? id.substring(0, id.indexOf('/')) : id;
        return switch (family) {
            case "push", "pull", "hold" -> "a stronger actuator{needed}, or " + ARM + ", or less in the tank";
            case "stall" -> "a stronger or better supplied actuator, or " + ARM + ", or less in the tank";
            case "reach" -> "an actuator of another length or stroke, or " + NEARER;
            case "buckling" -> "a thicker or shorter rod{needed}, or " + ARM;
            case "transmission" -> ARM;
            case "over-centre" -> "a pivot further out or higher, a shorter tilt, or a drive that can also pull";
            case "bearing-static", "bush" -> "larger bearings{needed}, or bearings further apart";
            case "bearing-housing" -> "a stronger housing{needed}, or its base turned so that the load presses onto it";
            case "shaft", "pin" -> "a thicker or harder shaft or pin, or less overhang and gap";
            case "slide" -> "an actuator that holds more, larger bearings, or the cake washed loose before it tips";
            case "link" -> "a thicker or shorter link{needed}";
            case "assist" -> "a spring that is longer drawn out, or its pins elsewhere";
            case "duty", "cycle-time" -> "a faster actuator or one rated for more on-time, or fewer dumps an hour";
            case "electrical" -> electrical(id);
            case "hydraulic" -> "a larger bore, a pump and hoses that fit it, or a relief valve set as the cylinder allows";
            case "vent" -> "a larger vent";
            case "channel" -> "a wider or deeper channel, a smaller opening, or a slower tilt";
            case "door" -> "stronger hinges or latches{needed}, or more latches";
            case "empties" -> "more tilt, a steeper floor, or a door as high as the tank";
            case "clearance" -> "move or cut back the part that is too near, or end the tilt sooner";
            case "landing" -> "move the pit or bin, or the machine, or let it run out more slowly";
            case "tip-over" -> "a wider stance or outriggers, weight low down on the far side, or less in the tank";
            case "hang" -> "the lifting eye above the centre of mass, or a second leg on the sling";
            case "weld" -> "a larger or longer weld, or legs further apart";
            case "bolt" -> "larger, stronger or more bolts, or bolts further apart";
            case "lug" -> "a thicker lug, or more of it around the hole";
            case "cross-member" -> "a deeper or thicker tube, or the pin nearer to its supports";
            case "what-if" -> whatIf(id);
            default -> "";
        };
    }

    private static String electrical(String id) {
        return switch (id.substring(id.indexOf('/') + 1)) {
            case "current" -> "a stronger actuator, or " + ARM + ", or less in the tank";
            case "fuse" -> "a larger fuse{needed}, as the cable and the actuator allow";
            case "cable" -> "a thicker cable{needed}, or a smaller fuse";
            case "voltage-drop" -> "a thicker or shorter cable";
            case "battery" -> "a larger battery, or a charge more often";
            default -> "a thicker or shorter cable, the right fuse, or a larger supply";
        };
    }

    private static String whatIf(String id) {
        return switch (id.substring(id.indexOf('/') + 1)) {
            case "lost-power", "load-let-go-at-once" -> "an actuator that holds more{needed}, or " + ARM;
            case "burst-hose" -> "a lock valve screwed to the cylinder, or a narrower way out of it";
            case "wheel-sinks" -> "as for the check that is named";
            default -> "";
        };
    }
}
