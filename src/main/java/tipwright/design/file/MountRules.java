// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.around.KeepOut;
import tipwright.design.around.Zone;
import tipwright.geometry.Vec2;

/** Zones must hold some area, rows of holes a pitch, and listed actuators each a name of its own. */
final class MountRules {
    private static final double LEAST_AREA = 1e-6;

    private MountRules() {}

    static void check(Facts facts) {
        for (Bound.Found<Zone> zone : facts.bound().all(Zone.class)) {
            outline(facts, zone.path(), zone.value().outline());
            Zone.Holes holes = zone.value().holes();
            if (holes != null && holes.across() == null && holes.up() == null) {
                facts.wrong(
                        zone.path() + ".holes",
                        "gives no pitch; add 'across: 50 mm', 'up: 50 mm' or both, or leave holes out");
            }
        }
        for (Bound.Found<KeepOut> keepOut : facts.bound().all(KeepOut.class)) {
            outline(facts, keepOut.path(), keepOut.value().outline());
        }
        PlaceRules.check(facts);
        Set<String> names = new HashSet<>();
        int i = 0;
        for (ListedActuator listed : facts.bound().list("mounts.actuators", ListedActuator.class)) {
            i++;
            if (!names.add(listed.name())) {
                facts.wrong(
                        Paths.item("mounts.actuators", i),
                        ErrorText.quoted(listed.name()) + " is listed twice; remove one");
            }
        }
    }

    private static void outline(Facts facts, String path, List<Vec2> points) {
        double twice = 0;
        for (int i = 0; i < points.size(); i++) {
            twice += points.get(i).cross(points.get((i + 1) % points.size()));
        }
        if (Math.abs(twice) < 2 * LEAST_AREA) {
            facts.wrong(path + ".outline", "encloses no area; its points lie on one line or cross over");
        }
    }
}
