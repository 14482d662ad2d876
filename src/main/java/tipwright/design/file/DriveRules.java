// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/** Pins must be apart to turn the tank, and the tilt must go somewhere. */
final class DriveRules {
    private static final double APART = 1e-3;

    private DriveRules() {}

    static void check(Facts facts) {
        Vec2 pivot = facts.bound().get("pivot.at", Vec2.class);
        Vec2 frame = facts.bound().get("drive.straight.frame-pin", Vec2.class);
        Vec2 tank = facts.bound().get("drive.straight.tank-pin", Vec2.class);
        if (same(tank, pivot)) {
            facts.wrong("drive.straight.tank-pin", "sits on the pivot, so it cannot turn the tank; move it away");
        }
        if (same(frame, pivot)) {
            facts.wrong(
                    "drive.straight.frame-pin",
                    "sits on the pivot, so the length of the actuator would never change; move it away");
        } else if (same(frame, tank)) {
            facts.wrong("drive.straight.frame-pin", "sits on the tank-pin; the actuator has no length");
        }
        Double from = facts.number("tilt.from");
        Double to = facts.number("tilt.to");
        if (from != null && Facts.is(to, t -> !(t > from))) {
            facts.wrong("tilt.to", "must be more than tilt.from (" + Facts.say(from, Kind.ANGLE) + ")");
        }
        Double warn = facts.number("limits.transmission-warn");
        if (warn != null && Facts.is(facts.number("limits.transmission-fail"), f -> f > warn)) {
            boolean own = facts.sources().find("limits.transmission-fail") != null;
            facts.wrong(
                    own ? "limits.transmission-fail" : "limits.transmission-warn",
                    "transmission-fail must not be more than transmission-warn (" + Facts.say(warn, Kind.ANGLE) + ")");
        }
    }

    private static boolean same(@Nullable Vec2 a, @Nullable Vec2 b) {
        return a != null && b != null && a.minus(b).norm() < APART;
    }
}
