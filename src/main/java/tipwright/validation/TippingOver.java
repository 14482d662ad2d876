// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import java.util.List;
import tipwright.check.standing.Footprint;
import tipwright.check.standing.SupportLoads;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Standing on the ground. */
final class TippingOver {
    private static final double G = 9.81;
    private static final double FOOT = 0.3048;
    private static final List<Footprint.Mass> TWO = List.of(
            new Footprint.Mass(12_000 / G, new Vec3(0.2, 0.7, 0)),
            new Footprint.Mass(9_000 / G, new Vec3(0.6, 1.6, 0)));

    private TippingOver() {}

    static void addTo(Figures figures) {
        figures.add("half-track", () -> tips(0.9, List.of(new Footprint.Mass(500, new Vec3(0, 1.2, 0)))));
        Vec3 high = new Vec3(0, 3.5 * FOOT, 0);
        figures.add("hibbeler-11-43", () -> tips(1.5 * FOOT, List.of(new Footprint.Mass(100, high))));
        figures.add("two-masses", () -> tips(0.9, TWO));
        figures.add("restoring", TippingOver::restoring);
        figures.add("crane-light", () -> crane(0) + crane(1));
        figures.add("crane-heavy", () -> crane(2) + crane(3));
    }

    private static Footprint square(double half) {
        return Footprint.around(
                List.of(new Vec2(-half, -half), new Vec2(half, -half), new Vec2(half, half), new Vec2(-half, half)), 0);
    }

    /** The edge towards +x. */
    private static Footprint.Edge front(Footprint footprint) {
        return footprint.edges().stream()
                .filter(e -> e.outward().x() > 0.999)
                .findFirst()
                .orElseThrow();
    }

    /** Slope at which it tips over the edge towards +x, degrees. */
    private static double tips(double half, List<Footprint.Mass> masses) {
        Footprint feet = square(half);
        return Math.toDegrees(feet.steepest(front(feet), masses, G, 0, 1));
    }

    private static double restoring() {
        Footprint feet = square(0.9);
        double slope = Math.toRadians(5);
        Vec3 up = new Vec3(-Math.sin(slope), Math.cos(slope), 0);
        return 1 / feet.about(front(feet), TWO, G, up, 0).share();
    }

    /** Load of one of four wheels, N: 2000 kg in the middle, 400 kg on 8 m of boom at 30 degrees. */
    private static double crane(int wheel) {
        List<Vec2> wheels = List.of(new Vec2(-1.4, -0.9), new Vec2(-1.4, 0.9), new Vec2(1.4, 0.9), new Vec2(1.4, -0.9));
        double boom = 8 * Math.cos(Math.toRadians(30));
        return SupportLoads.of(wheels, 2400 * G, new Vec2(400 * boom / 2400, 0))[wheel];
    }
}
