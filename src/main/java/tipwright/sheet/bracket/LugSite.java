// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.bracket;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Mechanism;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Support;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.linkage.Strut;

/**
 * Where a pin is held by lugs on the frame or on the tank.
 *
 * @param joint as a fastening names it
 * @param pin as the drive names it
 * @param on as a fastening names the body; null: the joint's own
 * @param body its number
 * @param at the pin, m, stowed
 * @param across where it is along the pivot, m, one for each time that it is made
 * @param fork whether two plates hold the pin, one on each side of an eye; else one plate sits between two
 * @param actuator whether an actuator's end is on the pin
 */
record LugSite(
        String joint,
        String pin,
        @Nullable String on,
        int body,
        Vec2 at,
        List<Double> across,
        boolean fork,
        boolean actuator) {
    private static final String TANK = "tank";

    /** All of a machine's. */
    static List<LugSite> of(Analysis analysis) {
        Design design = analysis.design();
        Mechanism mechanism = analysis.mechanism();
        Drive drive = design.drive();
        Strut strut = drive.skeleton(design.pivot().at()).actuator();
        List<Double> actuators =
                drive.actuators().stream().map(PlacedActuator::z).toList();
        List<LugSite> all = new ArrayList<>();
        if (held(mechanism, strut.a())) {
            all.add(new LugSite(Drive.FRAME_PIN, Drive.FRAME_PIN, null, strut.a(), strut.onA(), actuators, true, true));
        }
        if (held(mechanism, strut.b())) {
            all.add(new LugSite(
                    drive.rodPinName(), Drive.ROD_PIN, null, strut.b(), strut.onB(), actuators, true, true));
        }
        for (int i = 0; i < mechanism.joints().size(); i++) {
            JointPlan joint = mechanism.joints().get(i);
            if (i == mechanism.pivot() || joint.slide()) {
                continue;
            }
            for (int body : new int[] {joint.a(), joint.b()}) {
                if (held(mechanism, body)) {
                    String on = body == joint.a()
                            ? null
                            : body == mechanism.tank()
                                    ? TANK
                                    : mechanism.bodies().get(body);
                    int other = body == joint.a() ? joint.b() : joint.a();
                    all.add(new LugSite(
                            joint.name(),
                            joint.name(),
                            on,
                            body,
                            joint.at(),
                            across(design, joint.name(), actuators),
                            !twoPlates(design, mechanism.bodies().get(other)),
                            false));
                }
            }
        }
        return all;
    }

    private static boolean held(Mechanism mechanism, int body) {
        return body == 0 || body == mechanism.tank();
    }

    private static List<Double> across(Design design, String joint, List<Double> actuators) {
        if (design.drive().paired(joint)) {
            return design.pivot().bearings().stream().map(Support::z).toList();
        }
        return List.of(actuators.stream().mapToDouble(z -> z).average().orElse(0));
    }

    /** Whether a link is two plates side by side. */
    private static boolean twoPlates(Design design, String link) {
        boolean bars = design.linkSections().stream().anyMatch(l -> l.body().equals(link) && l.bars() > 1);
        return bars
                || design.links().stream().filter(l -> l.body().equals(link)).count() > 1;
    }

    /** Whether a fastening is here. */
    boolean has(Fastening f, Mechanism mechanism) {
        boolean tankPin = pin.equals(Drive.ROD_PIN)
                && actuator
                && (f.joint().equals(Drive.TANK_PIN) || f.joint().equals(Drive.ROD_PIN));
        if (!f.joint().equals(joint) && !tankPin) {
            return false;
        }
        String there = f.on();
        if (there == null) {
            return on == null;
        }
        int number = there.equals(TANK) ? mechanism.tank() : mechanism.bodies().indexOf(there);
        return number == body;
    }

    @Nullable
    PinJoint known(Design design) {
        return design.drive().pinJoint(pin);
    }

    /** In the builder's words. */
    String words() {
        return NameId.words(joint) + (on == null || actuator ? "" : " on the " + on);
    }
}
