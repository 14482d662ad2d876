// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.tank.Attached;
import tipwright.design.tank.CylinderInterior;
import tipwright.design.tank.Interior;
import tipwright.design.tank.PrismInterior;
import tipwright.design.tank.Tank;
import tipwright.geometry.ShapeException;
import tipwright.geometry.Solid;

/** The tank must have an inside, and should have a way out. */
final class TankRules {
    private TankRules() {}

    static void check(Facts facts) {
        Tank tank = facts.bound().get("tank", Tank.class);
        if (tank != null && tank.openings().isEmpty()) {
            facts.warnings()
                    .add(
                            facts.sources().key("tank"),
                            "tank",
                            "no openings: nothing can leave the tank, however far it tips");
        }
        List<Attached> attached = facts.bound().list("tank.attached", Attached.class);
        Names.unique(
                facts, "tank.attached", attached.stream().map(Attached::name).toList());
    }

    /** The inside of the tank; null when it was not understood, or with a problem noted when it is not sound. */
    static @Nullable Solid solid(Bound bound, SourceMap sources, Problems problems) {
        Interior interior = bound.get("tank.interior", Interior.class);
        try {
            return interior == null ? null : interior.solid();
        } catch (ShapeException wrong) {
            String key = interior instanceof CylinderInterior
                    ? ".length"
                    : interior instanceof PrismInterior ? ".outline" : "";
            String path = "tank.interior" + key;
            problems.add(sources.nearest(path), path, String.valueOf(wrong.getMessage()));
            return null;
        }
    }
}
