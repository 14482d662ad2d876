// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import tipwright.analysis.ClosedFormAnalyser;
import tipwright.design.Design;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.HydraulicActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rod;
import tipwright.design.around.Wear;
import tipwright.design.drive.Counterweight;
import tipwright.design.drive.Drive;
import tipwright.design.drive.Straight;
import tipwright.design.joint.BallInsert;
import tipwright.design.joint.Friction;
import tipwright.design.joint.HousingStrength;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Pivot;
import tipwright.design.joint.PlainBush;
import tipwright.design.joint.Shaft;
import tipwright.design.joint.Support;
import tipwright.design.key.Copy;
import tipwright.design.supply.Pump;
import tipwright.design.tank.Cases;
import tipwright.design.tank.HookReading;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** A design with one optional key after another switched on. */
final class Variants {
    /** How many there are; the first is the design as it is. */
    static final int COUNT = 17;

    private Variants() {}

    /** One of the variants of a design, by number; those of a straight drive leave another as it is. */
    static Design of(Design d, int number) {
        return switch (number % COUNT) {
            case 1 -> shaft(d, List.of(-0.2, 0.2));
            case 2 -> shaft(d, List.of());
            case 3 -> bearings(d, (k, s) -> new BallInsert(0.04, 40_000.0, 60_000.0, housing(), null, null));
            case 4 -> bearings(d, (k, s) -> k == 0 ? s.bearing() : new PlainBush(0.06, 0.06, 2e7, null, null));
            case 5 -> Copy.with(d.withDrive(drive(d, cylinders(d, 0.05))), "supply", pump());
            case 6 -> d.withDrive(drive(d, cylinders(d, 0.04)));
            case 7 -> d.withCases(
                    new Cases(List.of("heel"), List.of(new Cases.Own("crate", 900, new Vec3(0.2, 0.9, 0.1)))));
            case 8 -> Copy.with(
                    d, "assists", List.of(new Counterweight("back weight", "tank", 60, new Vec3(0.9, 0.3, 0.1))));
            case 9 -> d.withFriction(new Friction(0.12, 0.25)).withDrive(pins(d));
            case 10 -> Copy.with(d, "wear", new Wear(0.001, 0.002, 0.001, 0.02));
            case 11 -> d.withSite(Copy.with(d.site(), "windPressure", 400.0));
            case 12 -> d.withSite(Copy.with(d.site(), "anyWay", Math.toRadians(4)));
            case 13 -> Copy.with(d, "tank", Copy.with(d.tank(), "weighed", held(d)));
            case 14 -> Copy.with(
                    d,
                    "factors",
                    Copy.with(Copy.with(Copy.with(d.factors(), "service", 1.3), "shaft", 3.0), "bearingStatic", 2.6));
            case 15 -> Copy.with(d, "limits", Copy.with(d.limits(), "strokeMargin", 0.011));
            case 16 -> d.withSlurry(d.slurry().withFill(0.45));
            default -> d;
        };
    }

    /** The same with actuators that are as long as the motion asks for, strong and on strong bearings. */
    static Design fitting(Design d) {
        double[] lengths = ClosedFormAnalyser.lengths(d, d.tilt().tilts());
        double shortest = DoubleStream.of(lengths).min().orElse(0.5);
        double longest = DoubleStream.of(lengths).max().orElse(0.6);
        Rod rod = new Rod(0.09, 0, null, 355e6, 205e9);
        double stroke = longest - shortest + 0.04;
        List<PlacedActuator> all = new ArrayList<>();
        for (PlacedActuator placed : d.drive().actuators()) {
            all.add(new PlacedActuator(
                    placed.z(),
                    placed.actuator() instanceof HydraulicActuator
                            ? cylinder(0.14, rod, shortest - 0.015, stroke)
                            : new ElectricActuator(
                                    shortest - 0.015,
                                    stroke,
                                    90_000,
                                    90_000,
                                    120_000.0,
                                    null,
                                    null,
                                    null,
                                    null,
                                    rod,
                                    null,
                                    1,
                                    null,
                                    null,
                                    false)));
        }
        Design strong = bearings(
                d, (k, s) -> s.bearing() instanceof BallInsert b ? Copy.with(b, "c0", 400_000.0) : s.bearing());
        return strong.withDrive(drive(d, all));
    }

    private interface Choose {
        tipwright.design.joint.Bearing at(int number, Support support);
    }

    /** Two pulls of a hook scale at the tank. */
    private static List<HookReading> held(Design d) {
        Vec2 at = d.pivot().at().plus(new Vec2(-0.8, 0.3));
        return List.of(new HookReading(at, 700, new Vec2(0, 1), 0), new HookReading(at, 500, new Vec2(0.1, 1), 0.5));
    }

    private static Design shaft(Design d, List<Double> carriedAt) {
        Pivot p = d.pivot();
        return d.withPivot(new Pivot(p.at(), p.bearings(), new Shaft(0.04, 355e6, 0.06, carriedAt)));
    }

    private static Design bearings(Design d, Choose choose) {
        List<Support> all = new ArrayList<>();
        for (int k = 0; k < 2; k++) {
            Support s = d.pivot().bearings().get(k);
            all.add(new Support(s.z(), choose.at(k, s), new Vec2(0.2, -1), k == 1));
        }
        return d.withPivot(new Pivot(d.pivot().at(), all, d.pivot().shaft()));
    }

    private static List<HousingStrength> housing() {
        return List.of(
                new HousingStrength(0, 30_000), new HousingStrength(1.5, 20_000), new HousingStrength(3.1416, 12_000));
    }

    private static Drive drive(Design d, List<PlacedActuator> actuators) {
        return !(d.drive() instanceof Straight s)
                ? d.drive()
                : new Straight(s.framePin(), s.tankPin(), actuators, s.framePinJoint(), s.tankPinJoint());
    }

    private static Drive pins(Design d) {
        PinJoint pin = new PinJoint(0.025, PinJoint.Shear.DOUBLE, 0.03, 0.012, 0.002, 235e6);
        return !(d.drive() instanceof Straight s)
                ? d.drive()
                : new Straight(s.framePin(), s.tankPin(), s.actuators(), pin, pin);
    }

    /** Two unlike cylinders side by side. */
    private static List<PlacedActuator> cylinders(Design d, double bore) {
        Rod rod = new Rod(0.03, 0, null, 355e6, 205e9);
        double z = d.drive().actuators().get(0).z();
        return List.of(
                new PlacedActuator(z - 0.2, cylinder(bore, rod, 0.45, 0.5)),
                new PlacedActuator(z + 0.1, cylinder(bore + 0.01, rod, 0.45, 0.7)));
    }

    private static HydraulicActuator cylinder(double bore, Rod rod, double closed, double stroke) {
        return new HydraulicActuator(
                bore, rod, closed, stroke, 160e5, 1e-4, HydraulicActuator.Acting.DOUBLE, null, null, null, 0.95, null);
    }

    private static Pump pump() {
        return new Pump(1.3e-4, 60e5, null, 0.8, 0.8, Pump.Lowering.POWER_DOWN, null, null, 3, null, null);
    }
}
