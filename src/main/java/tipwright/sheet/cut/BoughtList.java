// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.HydraulicActuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.around.Mounts;
import tipwright.design.drive.Assist;
import tipwright.design.drive.Counterweight;
import tipwright.design.drive.Drive;
import tipwright.design.drive.ExtensionSpring;
import tipwright.design.drive.GasSpring;
import tipwright.design.drive.TorsionSpring;
import tipwright.design.joint.BallInsert;
import tipwright.design.joint.Bearing;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.PlainBush;
import tipwright.design.joint.Support;
import tipwright.design.tank.Door;
import tipwright.design.tank.Opening;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** What is bought, with the figures that matter. */
public final class BoughtList {
    private final Design design;
    private final List<BoughtPart> all = new ArrayList<>();

    private BoughtList(Design design) {
        this.design = design;
    }

    /** All of a design but what feeds the actuators. */
    public static List<BoughtPart> of(Design design) {
        BoughtList list = new BoughtList(design);
        list.actuators();
        list.bearings();
        list.bolts();
        list.assists();
        list.doors();
        return list.all;
    }

    private static Text length(double m) {
        return Text.size(m);
    }

    private static Text amount(@Nullable Double value, Kind kind) {
        return value == null ? Text.words("not given") : Text.amount(value, kind);
    }

    private void actuators() {
        Map<Actuator, Integer> count = new LinkedHashMap<>();
        design.drive().actuators().stream().map(PlacedActuator::actuator).forEach(a -> count.merge(a, 1, Integer::sum));
        count.forEach((a, n) -> all.add(new BoughtPart(a.noun() + name(a), n, figures(a))));
    }

    private String name(Actuator a) {
        Mounts mounts = design.mounts();
        for (ListedActuator listed : mounts == null ? List.<ListedActuator>of() : mounts.actuators()) {
            if (listed.actuator().equals(a)) {
                return " '" + listed.name() + "'";
            }
        }
        return "";
    }

    private Text figures(Actuator a) {
        List<Text> all = new ArrayList<>();
        all.add(Text.of("pin to pin {} closed, stroke {}", length(a.closed()), length(a.stroke())));
        if (a.ratedPush() > 0) {
            all.add(Text.of("push {}", Text.amount(a.ratedPush(), Kind.FORCE)));
        }
        if (a.ratedPull() > 0) {
            all.add(Text.of("pull {}", Text.amount(a.ratedPull(), Kind.FORCE)));
        }
        all.add(Text.words("hold ").plus(amount(a.ratedHold(), Kind.FORCE)));
        if (a instanceof ElectricActuator e) {
            electric(e, all);
        } else if (a instanceof HydraulicActuator h) {
            all.add(Text.of("bore {}, rod {}", length(h.bore()), length(h.rod().diameter())));
            all.add(Text.of("relief valve {}", Text.amount(h.reliefPressure(), Kind.PRESSURE)));
        } else if (a instanceof TelescopicCylinder t) {
            List<Text> stages =
                    t.stages().stream().map(s -> length(s.diameter())).toList();
            all.add(Text.words("stages ").plus(Text.join(", ", stages)));
            all.add(Text.of("relief valve {}", Text.amount(t.reliefPressure(), Kind.PRESSURE)));
        }
        if (a.duty() != null) {
            all.add(Text.of("duty {} %", Text.number(100 * a.duty(), 0)));
        }
        eye(Drive.FRAME_PIN, "frame end", all);
        eye(Drive.ROD_PIN, "moving end", all);
        return Text.join("; ", all);
    }

    private void eye(String pin, String end, List<Text> to) {
        PinJoint joint = design.drive().pinJoint(pin);
        if (joint != null) {
            to.add(Text.of(
                    "eye at its " + end + " {} wide for a pin of {}", length(joint.lug()), length(joint.diameter())));
        }
    }

    private static void electric(ElectricActuator e, List<Text> all) {
        ElectricActuator.Speed speed = e.speed();
        ElectricActuator.Current current = e.current();
        if (e.voltage() != null) {
            all.add(Text.amount(e.voltage(), Kind.VOLTAGE));
        }
        if (current != null) {
            all.add(Text.of("{} at the rated push", Text.amount(current.rated(), Kind.CURRENT)));
        }
        if (speed != null) {
            all.add(Text.of("{} at the rated push", Text.amount(speed.rated(), Kind.SPEED)));
        }
    }

    private void bearings() {
        Map<Bearing, Integer> count = new LinkedHashMap<>();
        design.pivot().bearings().stream().map(Support::bearing).forEach(b -> count.merge(b, 1, Integer::sum));
        count.forEach((b, n) -> {
            if (b instanceof BallInsert ball) {
                all.add(new BoughtPart(
                        "pillow-block bearing",
                        n,
                        Text.of("bore {}; C0 ", length(b.bore()))
                                .plus(amount(ball.c0(), Kind.FORCE))
                                .plus("; C ")
                                .plus(amount(ball.c(), Kind.FORCE))));
            } else if (b instanceof PlainBush bush) {
                all.add(new BoughtPart(
                        "bushing",
                        n,
                        Text.of("bore {}, {} long; pressure ", length(b.bore()), length(bush.length()))
                                .plus(amount(bush.pressure(), Kind.PRESSURE))));
            }
        });
    }

    private void bolts() {
        Map<Text, Integer> count = new LinkedHashMap<>();
        for (Fastening f : design.fastenings()) {
            Bolts bolts = f.bolts();
            if (bolts != null) {
                Text words = Text.of(
                        "thread {}; tensile strength {}",
                        length(bolts.diameter()),
                        Text.amount(bolts.ultimate(), Kind.PRESSURE));
                count.merge(words, bolts.positions().size(), Integer::sum);
            }
        }
        count.forEach((words, n) -> all.add(new BoughtPart("bolt with nut and washers", n, words)));
    }

    private void assists() {
        for (Assist a : design.assists()) {
            if (a instanceof GasSpring g) {
                all.add(new BoughtPart(
                        "gas spring: " + g.name(),
                        1,
                        Text.of(
                                "pin to pin {} fully out, stroke {}; {} fully out, {} pressed in",
                                length(g.extended()),
                                length(g.stroke()),
                                Text.amount(g.force(), Kind.FORCE),
                                Text.amount(g.compressedForce(), Kind.FORCE))));
            } else if (a instanceof ExtensionSpring s) {
                all.add(new BoughtPart(
                        "extension spring: " + s.name(),
                        1,
                        Text.of(
                                "hook to hook {} without load, up to {}; {}",
                                length(s.free()),
                                length(s.longest()),
                                Text.amount(s.rate(), Kind.STIFFNESS))));
            } else if (a instanceof TorsionSpring t) {
                all.add(new BoughtPart(
                        "torsion spring: " + t.name(),
                        1,
                        Text.of(
                                "{} stowed; {}",
                                Text.amount(t.moment(), Kind.MOMENT),
                                Text.amount(t.rate(), Kind.ANGULAR_STIFFNESS))));
            } else if (a instanceof Counterweight w) {
                all.add(new BoughtPart("weight: " + w.name(), 1, Text.amount(w.mass(), Kind.MASS)));
            }
        }
    }

    private void doors() {
        for (Opening opening : design.tank().openings()) {
            Door door = opening.door();
            if (door != null) {
                all.add(new BoughtPart(
                        "latch: " + opening.name(),
                        door.latches(),
                        Text.words("rated for ")
                                .plus(amount(door.latchRating(), Kind.FORCE))
                                .plus(" each")));
                all.add(new BoughtPart(
                        "hinges: " + opening.name(),
                        1,
                        Text.words("rated for ")
                                .plus(amount(door.hingeRating(), Kind.FORCE))
                                .plus(" together")));
            }
        }
    }
}
