// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rod;
import tipwright.design.around.Site;
import tipwright.design.drive.Straight;
import tipwright.design.drive.TiltRange;
import tipwright.design.joint.BallInsert;
import tipwright.design.joint.Friction;
import tipwright.design.joint.Pivot;
import tipwright.design.joint.Support;
import tipwright.design.key.Copy;
import tipwright.design.tank.Attached;
import tipwright.design.tank.BoxInterior;
import tipwright.design.tank.CylinderInterior;
import tipwright.design.tank.Interior;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Outflow;
import tipwright.design.tank.PrismInterior;
import tipwright.design.tank.Slurry;
import tipwright.design.tank.Tank;
import tipwright.design.tank.Wall;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Valid designs made from a seed: invented, of every tank shape. */
public final class RandomDesigns {
    /** All that is not drawn by lot is as the presets have it. */
    private static final Design BASE = Examples.read(Examples.BOX);

    private final SplittableRandom random;

    /** The series of a seed. */
    public RandomDesigns(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** The next design; its linkage may or may not reach the full tilt. */
    public Design next() {
        Vec3 middle = new Vec3(in(-0.2, 0.2), in(0.5, 0.9), in(-0.05, 0.05));
        Interior interior = interior(middle);
        Vec2 pivot = new Vec2(in(0.1, 0.8), in(0.0, 0.4));
        Vec2 frame = new Vec2(in(-1.0, -0.2), in(-0.4, 0.1));
        Vec2 tank = new Vec2(in(-0.9, -0.1), in(0.2, 0.8));
        Opening door = new Opening(
                "door",
                Opening.Rim.RECTANGLE,
                null,
                in(0.2, 0.5),
                in(0.1, 0.3),
                List.of(),
                new Vec3(in(0.5, 0.7), in(0.5, 0.7), 0),
                new Vec3(1, 0, 0),
                random.nextBoolean() ? 0 : in(0, 0.5),
                null,
                new Outflow(0.62, 1));
        return design(interior, pivot, new Straight(frame, tank, actuators(), null, null), List.of(door));
    }

    private Design design(Interior interior, Vec2 pivot, Straight drive, List<Opening> openings) {
        Design made = Copy.with(BASE, "site", new Site(in(-0.1, 0.1), in(-0.06, 0.06), 0, 0, 293.15, 323.15));
        made = Copy.with(
                made,
                "tank",
                new Tank(
                        interior,
                        new Wall(in(0.003, 0.008), 7850, 235e6, null, null),
                        null,
                        List.of(new Attached(
                                "cradle",
                                in(10, 60),
                                new Vec3(in(-0.3, 0.3), in(0.2, 0.6), in(-0.2, 0.2)),
                                List.of(),
                                List.of())),
                        openings,
                        null,
                        List.of()));
        made = made.withSlurry(
                new Slurry(in(0.1, 1.0), null, in(1050, 1900), null, null, 2650, 1000, 0.6, in(0.2, 0.8), in(0.3, 3)));
        made = made.withPivot(new Pivot(pivot, List.of(support(in(-0.6, -0.3)), support(in(0.3, 0.6))), null))
                .withDrive(drive);
        made = made.withTilt(new TiltRange(0, in(0.6, 1.6), Math.toRadians(1)));
        return made.withFriction(new Friction(null, 0.15));
    }

    private Interior interior(Vec3 middle) {
        return switch (random.nextInt(3)) {
            case 0 -> new CylinderInterior(
                    new Vec3(random.nextInt(2), random.nextInt(2), 0).plus(new Vec3(0.001, 0, in(0, 0.2))),
                    in(0.5, 1.0),
                    in(0.4, 1.4),
                    List.of(
                            CylinderInterior.HeadShape.values()[random.nextInt(4)],
                            CylinderInterior.HeadShape.values()[random.nextInt(4)]),
                    1,
                    0.06,
                    middle);
            case 1 -> new BoxInterior(new Vec3(in(0.4, 1.5), in(0.4, 1.0), in(0.4, 1.2)), middle);
            default -> new PrismInterior(hopper(middle), in(0.5, 1.3), middle.z());
        };
    }

    private List<Vec2> hopper(Vec3 middle) {
        double half = in(0.4, 0.8);
        double foot = in(0.05, 0.3);
        double deep = in(0.4, 0.9);
        List<Vec2> outline = new ArrayList<>();
        outline.add(new Vec2(middle.x() - foot, middle.y() - deep / 2));
        outline.add(new Vec2(middle.x() + foot, middle.y() - deep / 2));
        outline.add(new Vec2(middle.x() + half, middle.y() + deep / 2));
        outline.add(new Vec2(middle.x() - half, middle.y() + deep / 2));
        return outline;
    }

    private List<PlacedActuator> actuators() {
        List<PlacedActuator> all = new ArrayList<>();
        all.add(new PlacedActuator(in(-0.4, 0.4), actuator()));
        if (random.nextInt(4) == 0) {
            all.add(new PlacedActuator(in(-0.4, 0.4), actuator()));
        }
        return all;
    }

    private static ElectricActuator actuator() {
        return new ElectricActuator(
                0.4, 0.6, 12_000, 12_000, 18_000.0, null, null, null, null, rod(), null, 1, null, null, false);
    }

    private static @Nullable Rod rod() {
        return new Rod(0.035, 0, null, 355e6, 205e9);
    }

    private static Support support(double z) {
        return new Support(z, new BallInsert(0.04, 19_000.0, 30_000.0, List.of(), null, null), new Vec2(0, -1), false);
    }

    private double in(double low, double high) {
        return random.nextDouble(low, high);
    }
}
