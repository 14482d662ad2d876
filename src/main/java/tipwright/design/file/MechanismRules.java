// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.design.drive.Drive;
import tipwright.design.drive.Free;
import tipwright.design.joint.NamedPin;
import tipwright.design.key.Annotated;
import tipwright.geometry.Vec2;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.linkage.Strut;

/** A drive must be a mechanism with one freedom, made of parts that have a length. */
final class MechanismRules {
    private static final double APART = 1e-3;

    private final Facts facts;
    private final String path;
    private final Skeleton skeleton;

    private MechanismRules(Facts facts, Drive drive, Skeleton skeleton) {
        this.facts = facts;
        this.path = path(drive);
        this.skeleton = skeleton;
    }

    private static String path(Drive drive) {
        return "drive." + Annotated.of(drive.getClass()).word();
    }

    static void check(Facts facts) {
        Drive drive = facts.bound().get("drive", Drive.class);
        if (drive != null) {
            sideBySide(facts, drive);
            Skeleton skeleton = skeleton(facts);
            if (skeleton != null && !drive.direct()) {
                new MechanismRules(facts, drive, skeleton).check();
            }
        }
    }

    /** The mechanism of the design; null when it is not understood so far. */
    static @Nullable Skeleton skeleton(Facts facts) {
        Drive drive = facts.bound().get("drive", Drive.class);
        Vec2 pivot = facts.bound().get("pivot.at", Vec2.class);
        if (drive == null || pivot == null || (drive instanceof Free free && !FreeRules.sound(free))) {
            return null;
        }
        return drive.skeleton(pivot);
    }

    private void check() {
        freedoms();
        Strut strut = skeleton.actuator();
        for (int body = 1; body < skeleton.bodies().size(); body++) {
            List<Vec2> points = new ArrayList<>();
            boolean slides = false;
            for (Joint j : skeleton.joints()) {
                if (j.a() == body || j.b() == body) {
                    points.add(j.at());
                    slides |= j instanceof Joint.Slide;
                }
            }
            if (strut.a() == body || strut.b() == body) {
                points.add(strut.a() == body ? strut.onA() : strut.onB());
            }
            if (!slides && points.size() == 2 && same(points.get(0), points.get(1))) {
                facts.wrong(
                        path, "both pins of '" + skeleton.bodies().get(body) + "' are in one place; move them apart");
            }
        }
        if (same(strut.onA(), strut.onB())) {
            facts.wrong(path + ".frame-pin", "sits on the rod-pin; the actuator has no length");
        }
        for (Joint j : skeleton.joints()) {
            if (j instanceof Joint.Slide slide && !(slide.direction().norm() > 0)) {
                facts.wrong(path, "the rail '" + j.name() + "' has no direction; write 'along: [1, 0]' or the like");
            }
        }
        named();
    }

    private void freedoms() {
        int moving = skeleton.bodies().size() - 1;
        int held = 2 * skeleton.joints().size();
        int left = 3 * moving - held;
        if (left != 1) {
            String mend = left > 1
                    ? "add a joint or leave a body out: each joint takes 2, and one freedom must be left for the tilt"
                    : "leave a joint out or add a body: each body brings 3, and one freedom must be left for the tilt";
            facts.wrong(
                    path,
                    moving + " moving bodies have " + 3 * moving + " freedoms and "
                            + skeleton.joints().size() + " joints take " + held + " of them; " + mend);
        }
    }

    /** The names by which pins may be given their dimensions. */
    private Set<String> pins() {
        Set<String> names = new LinkedHashSet<>(List.of(Drive.FRAME_PIN, Drive.ROD_PIN));
        for (Joint j : skeleton.joints()) {
            if (j instanceof Joint.Pin && !j.name().equals(Skeleton.PIVOT)) {
                names.add(j.name());
            }
        }
        return names;
    }

    private void named() {
        Set<String> known = pins();
        Set<String> seen = new LinkedHashSet<>();
        for (Bound.Found<NamedPin> found : facts.bound().all(NamedPin.class)) {
            String name = found.value().pin();
            if (!known.contains(name)) {
                found.wrong(
                        facts.problems(),
                        "pin",
                        "no pin " + ErrorText.quoted(name) + "; " + ErrorText.meant(name, known));
            } else if (!seen.add(name)) {
                found.wrong(facts.problems(), "pin", "'" + name + "' is given twice; keep one");
            }
        }
    }

    private static void sideBySide(Facts facts, Drive drive) {
        for (int i = 1; i < drive.actuators().size(); i++) {
            for (int j = 0; j < i; j++) {
                double z = drive.actuators().get(i).z();
                if (Math.abs(z - drive.actuators().get(j).z()) < APART) {
                    facts.wrong(
                            Paths.item(path(drive) + ".actuators", i + 1) + ".z",
                            "actuator " + (j + 1) + " sits there too; give each actuator its own z");
                }
            }
        }
    }

    private static boolean same(Vec2 a, Vec2 b) {
        return a.minus(b).norm() < APART;
    }
}
