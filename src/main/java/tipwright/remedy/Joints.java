// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.drive.Drive;
import tipwright.design.drive.Straight;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.Lug;
import tipwright.design.joint.PinJoint;
import tipwright.design.key.Copy;

/** Changes parts of joints in a design, by the names of the joints. */
final class Joints {
    /** Sizes nearer to each other than this are meant to be one, m. */
    private static final double SAME = 1e-4;

    private Joints() {}

    /** What is known of the pin of a joint; null when nothing is. */
    static @Nullable PinJoint pin(Design design, String joint) {
        return design.drive().pinJoint(name(design, joint));
    }

    /** The pin of a joint changed, where it is known. */
    static Design withPin(Design design, String joint, UnaryOperator<PinJoint> change) {
        PinJoint old = pin(design, joint);
        if (old == null) {
            return design;
        }
        return design.withDrive(design.drive().withPin(name(design, joint), change.apply(old)));
    }

    /** Every fastening of a sort changed. */
    static Design withFastenings(Design design, Predicate<Fastening> which, UnaryOperator<Fastening> change) {
        List<Fastening> all = new ArrayList<>();
        design.fastenings().forEach(f -> all.add(which.test(f) ? change.apply(f) : f));
        return design.withFastenings(all);
    }

    /** A thicker pin; the holes of the lugs that it goes through grow with it. */
    static Design thicker(Design design, String joint, double diameter) {
        PinJoint old = pin(design, joint);
        if (old == null) {
            return design;
        }
        double by = diameter - old.diameter();
        Design put = withPin(design, joint, p -> Copy.with(p, "diameter", diameter));
        return withFastenings(
                put,
                f -> f.lug() != null && name(design, f.joint()).equals(name(design, joint)),
                f -> Copy.with(f, "lug", Copy.with(lug(f), "hole", lug(f).hole() + by)));
    }

    /** Thicker plates of a lug; where the pin's data name the same thickness, they follow. */
    static Design thickerLug(Design design, String joint, double thickness) {
        Design put = design;
        for (Fastening f : design.fastenings()) {
            if (f.lug() != null && f.joint().equals(joint)) {
                double old = f.lug().thickness();
                put = withPin(put, joint, p -> {
                    PinJoint wider = same(p.lug(), old) ? Copy.with(p, "lug", thickness) : p;
                    return same(p.cheek(), old) ? Copy.with(wider, "cheek", thickness) : wider;
                });
            }
        }
        return withFastenings(
                put,
                f -> f.lug() != null && f.joint().equals(joint),
                f -> Copy.with(f, "lug", Copy.with(lug(f), "thickness", thickness)));
    }

    private static Lug lug(Fastening f) {
        Lug lug = f.lug();
        if (lug == null) {
            throw new IllegalArgumentException(f.joint());
        }
        return lug;
    }

    private static boolean same(double a, double b) {
        return Math.abs(a - b) < SAME;
    }

    /** How much smaller than its hole a pin is, over what is allowed: 10 % of it or 1.5 mm; 0 where no hole is given. */
    static double slack(Design design, String joint) {
        PinJoint pin = pin(design, joint);
        double most = 0;
        for (Fastening f : design.fastenings()) {
            if (pin != null && f.lug() != null && name(design, f.joint()).equals(name(design, joint))) {
                double allowed = Math.max(0.1 * pin.diameter(), 1.5e-3);
                most = Math.max(most, (lug(f).hole() - pin.diameter()) / allowed);
            }
        }
        return most;
    }

    /** A straight drive's tank pin is the actuator's moving end. */
    private static String name(Design design, String joint) {
        return design.drive() instanceof Straight && joint.equals(Drive.TANK_PIN) ? Drive.ROD_PIN : joint;
    }
}
