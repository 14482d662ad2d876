// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import java.util.List;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.strength.BoltGroup;
import tipwright.strength.WeldGroup;

/** Welds and bolts. */
final class Joining {
    private static final double INCH = 0.0254;
    private static final double KIP = 4448.2216152605;
    private static final double KSI = 6.894757293168361e6;
    private static final Vec3 OUT = new Vec3(0, 0, 1);

    private Joining() {}

    static void addTo(Figures figures) {
        figures.add("e60", () -> perInch(60));
        figures.add("e70", () -> perInch(70));
        figures.add("e80", () -> perInch(80));
        figures.add("bracket", () -> box(0.05, 0.1).most(new Vec3(0, -10_000, 0), new Vec3(0, 0, 0.2)) / 1000);
        figures.add("box-bending", () -> box(0.06, 0.11).aboutU() * 1e9);
        figures.add("bolts-shear", Joining::nearestBolt);
        figures.add("stress-area-m12", () -> BoltGroup.stressArea(0.012) * 1e6);
    }

    /** kip per inch of weld and inch of leg. */
    private static double perInch(double electrode) {
        return WeldGroup.allowed(INCH, electrode * KSI) / (KIP / INCH);
    }

    private static WeldGroup box(double width, double depth) {
        FilletWeld.Rectangle box = new FilletWeld.Rectangle(width, depth);
        return new WeldGroup(new FilletWeld(Vec3.ZERO, OUT, 0.006, 70 * KSI, box, null, null, List.of()));
    }

    /** kN. */
    private static double nearestBolt() {
        List<Vec2> four =
                List.of(new Vec2(-0.075, -0.06), new Vec2(0.075, -0.06), new Vec2(0.075, 0.06), new Vec2(-0.075, 0.06));
        BoltGroup group = new BoltGroup(new Bolts(Vec3.ZERO, OUT, four, 0.016, null, 800e6));
        double most = 0;
        for (BoltGroup.Load load : group.loads(new Vec3(0, -16_000, 0), new Vec3(0.425, 0, 0))) {
            most = Math.max(most, load.shear());
        }
        return most / 1000;
    }
}
