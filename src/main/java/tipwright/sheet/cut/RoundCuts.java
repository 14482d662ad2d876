// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Mechanism;
import tipwright.design.Design;
import tipwright.design.drive.Drive;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Shaft;
import tipwright.design.joint.Support;
import tipwright.design.key.NameId;
import tipwright.design.steel.Steel;
import tipwright.quantity.Text;

/** Pins and the pivot shaft. */
final class RoundCuts {
    /** Of a pin beyond its cheeks, both ends together, over its diameter: washers and split pins. Common practice, no source. */
    private static final double BEYOND = 1.5;

    private RoundCuts() {}

    static Text section(double diameter) {
        return Text.of("round bar {}", Text.size(diameter));
    }

    private static double perMetre(double diameter) {
        return Math.PI / 4 * diameter * diameter * Steel.DENSITY;
    }

    /**
     * Adds them.
     *
     * @param proposed with the pins that are proposed
     */
    static void to(Analysis analysis, Design proposed, List<CutPiece> pieces) {
        Design design = analysis.design();
        Drive drive = design.drive();
        int actuators = drive.actuators().size();
        List<String> names = new ArrayList<>();
        pin(Drive.FRAME_PIN, Drive.FRAME_PIN, actuators, design, proposed, pieces);
        pin(drive.rodPinName(), Drive.ROD_PIN, actuators, design, proposed, pieces);
        names.add(Drive.FRAME_PIN);
        names.add(Drive.ROD_PIN);
        Mechanism mechanism = analysis.mechanism();
        for (int i = 0; i < mechanism.joints().size(); i++) {
            JointPlan joint = mechanism.joints().get(i);
            if (i != mechanism.pivot() && !joint.slide() && !names.contains(joint.name())) {
                int twice = drive.paired(joint.name()) ? 2 : 1;
                pin(joint.name(), joint.name(), twice, design, proposed, pieces);
            }
        }
        shaft(design, pieces);
    }

    private static void pin(
            String shown, String pin, int count, Design design, Design proposed, List<CutPiece> pieces) {
        PinJoint joint = proposed.drive().pinJoint(pin);
        if (joint == null) {
            return;
        }
        boolean single = joint.shear() == PinJoint.Shear.SINGLE;
        double grip = joint.lug() + (single ? 1 : 2) * (joint.gap() + joint.cheek());
        Text note = Text.of("grips {}", Text.size(grip));
        boolean known = design.drive().pinJoint(pin) != null;
        pieces.add(CutPiece.square(
                NameId.words(shown),
                section(joint.diameter()),
                grip + BEYOND * joint.diameter(),
                count,
                perMetre(joint.diameter()),
                known ? note : note.plus("; proposed")));
    }

    private static void shaft(Design design, List<CutPiece> pieces) {
        Shaft shaft = design.pivot().shaft();
        if (shaft == null) {
            return;
        }
        List<Support> bearings = design.pivot().bearings();
        double apart = Math.abs(bearings.get(1).z() - bearings.get(0).z());
        boolean through = !shaft.carriedAt().isEmpty();
        pieces.add(CutPiece.square(
                through ? "pivot shaft" : "stub of the pivot",
                section(shaft.diameter()),
                through ? apart + 2 * shaft.diameter() : Double.NaN,
                through ? 1 : 2,
                perMetre(shaft.diameter()),
                through
                        ? Text.words("its diameter beyond the middle of each bearing")
                        : Text.of(
                                "{} from the bearing's middle to the tank, and what both take",
                                Text.size(shaft.overhang()))));
    }
}
