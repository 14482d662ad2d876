// SPDX-License-Identifier: Apache-2.0
package tipwright.check.mistake;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.drive.Drive;
import tipwright.design.joint.PinJoint;
import tipwright.design.supply.Battery;
import tipwright.design.tank.Wall;
import tipwright.geometry.Range;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Sizes that are off by the inches or feet in a metre's parts, forces by the newtons in a pound or a kilogram. */
final class WrongUnit {
    private static final double INCH = 25.4;
    private static final double FOOT = 12;
    private static final double POUND = 4.448;
    private static final double GRAVITY = 9.807;
    /** How far from what it should be a size may be once its unit is right: a factor. */
    private static final double ROUGH = 1.5;

    private WrongUnit() {}

    static List<Text> find(Design design) {
        List<Text> all = new ArrayList<>();
        actuators(design, all);
        across(design, all);
        thick(design, all);
        power(design, all);
        return all;
    }

    /** The actuator is far too long or too short for its pins, and would fit in another unit. */
    private static void actuators(Design design, List<Text> all) {
        double length = design.drive().stowedLength(design.pivot().at());
        Actuator a = design.drive().actuators().get(0).actuator();
        double least = a.closed();
        double most = a.closed() + a.stroke();
        double off = length > most ? length / most : length < least ? length / least : 1;
        Text unit = unit(off);
        if (unit != null) {
            all.add(Text.of(
                    "Stowed, the actuator's pins are {} apart, but it is {} to {} pin to pin: {}. Is a unit wrong?",
                    Text.amount(length, Kind.LENGTH),
                    Text.amount(least, Kind.LENGTH),
                    Text.amount(most, Kind.LENGTH),
                    unit));
        }
    }

    /** The bearings are much further apart or much nearer to each other than the tank is wide. */
    private static void across(Design design, List<Text> all) {
        Range room = new Contents(design).solid().extent(new Vec3(0, 0, 1));
        double apart = Math.abs(design.pivot().bearings().get(1).z()
                - design.pivot().bearings().get(0).z());
        Text unit = unit(apart / room.span());
        if (unit != null) {
            all.add(Text.of(
                    "The bearings are {} apart along the pivot, and the tank is {} wide: {}. Is a unit wrong?",
                    Text.amount(apart, Kind.LENGTH),
                    Text.amount(room.span(), Kind.LENGTH),
                    unit));
        }
    }

    /** Walls and pins as thick as what they belong to. */
    private static void thick(Design design, List<Text> all) {
        Solid solid = new Contents(design).solid();
        double size = Math.min(
                solid.extent(new Vec3(1, 0, 0)).span(),
                solid.extent(new Vec3(0, 1, 0)).span());
        Wall wall = design.tank().wall();
        if (wall != null && wall.thickness() > size / FOOT) {
            all.add(Text.of(
                    "The wall is {} thick, and the tank {} long or high: is the wall's unit right?",
                    Text.size(wall.thickness()),
                    Text.amount(size, Kind.LENGTH)));
        }
        for (String name : List.of(Drive.FRAME_PIN, Drive.ROD_PIN)) {
            PinJoint pin = design.drive().pinJoint(name);
            double closed = design.drive().actuators().get(0).actuator().closed();
            if (pin != null && pin.diameter() > closed / 2) {
                all.add(Text.of(
                        "The {} is {} thick, and the actuator {} long: is the pin's unit right?",
                        Text.words(name.equals(Drive.FRAME_PIN) ? "frame pin" : "tank pin"),
                        Text.size(pin.diameter()),
                        Text.size(closed)));
            }
        }
    }

    /** An actuator that gives more power than it draws. */
    private static void power(Design design, List<Text> all) {
        for (PlacedActuator p : design.drive().actuators()) {
            if (p.actuator() instanceof ElectricActuator e) {
                ElectricActuator.Speed speed = e.speed();
                ElectricActuator.Current current = e.current();
                Double volt = e.voltage() != null
                        ? e.voltage()
                        : design.supply() instanceof Battery b ? Double.valueOf(b.voltage()) : null;
                double times = speed == null || current == null || volt == null
                        ? 0
                        : e.ratedPush() * speed.rated() / (volt * current.rated());
                String unit = times <= 1
                        ? null
                        : times / POUND < 1
                                ? "4.45 times less, had it been in pounds"
                                : times / GRAVITY < 1 ? "9.81 times less, had it been in kilograms" : null;
                if (unit != null) {
                    all.add(Text.of(
                            "The actuator's rated push of {} at its rated speed takes {} times the power that it draws: is the"
                                    + " unit of the push right? It would be {}.",
                            Text.amount(e.push(), Kind.FORCE),
                            Text.number(times, 1),
                            Text.words(unit)));
                    return;
                }
            }
        }
    }

    /** What a factor may come from; null: it is no such factor. */
    private static @Nullable Text unit(double factor) {
        double times = factor < 1 ? 1 / factor : factor;
        return times > FOOT / ROUGH && times < INCH * ROUGH
                ? Text.of("{} times; feet for inches make 12, inches for millimetres 25.4", Text.number(times, 0))
                : null;
    }
}
