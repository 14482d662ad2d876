// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.JointPlan;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Sweep;
import tipwright.check.rule.Worked;
import tipwright.design.drive.Drive;
import tipwright.design.drive.Straight;
import tipwright.design.joint.PinJoint;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.strength.PinStress;

/** The actuator's pins and every other pin of the mechanism; the pivot has checks of its own. */
public final class PinCheck implements Check {
    @Override
    public String id() {
        return "pin";
    }

    @Override
    public String title() {
        return "Pin";
    }

    @Override
    public String rule() {
        return "Each pin of the mechanism bears its force in shear and in bending between lug and cheeks together; of two pins side by side each bears half.";
    }

    @Override
    public String formula() {
        return "double shear: M = F (a/4 + g/2 + b/8), V = F/2; single: M = F ((a+b)/2 + g)/2, V = F; sigma = 32 M/(pi d^3);"
                + " tau = 4 V/(3 A); sqrt(sigma^2 + 3 tau^2) <= yield / factor";
    }

    @Override
    public String source() {
        return "Shigley, Mechanical Engineering Design (pin between lug and cheeks); von Mises";
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        for (Part part : parts(analysis)) {
            PinJoint joint = analysis.design().drive().pinJoint(part.name());
            if (joint != null && finding.id().equals(id() + "/" + part.shown().replace(' ', '-'))) {
                Worked worked = new Worked(analysis, finding, units);
                return worked.row()
                        .map(r -> worked.pin(joint, part.load().applyAsDouble(Worked.worst(r, part.load()))))
                        .orElse("");
            }
        }
        return "";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design().limits());
        return parts(analysis).stream().map(p -> one(make, analysis, p)).toList();
    }

    /**
     * A pin.
     *
     * @param shown its name in the trade's words
     * @param name in the design
     * @param load that it bears, N
     */
    private record Part(String shown, String name, ToDoubleFunction<Balance> load) {}

    private static List<Part> parts(Analysis analysis) {
        Drive drive = analysis.design().drive();
        int sharing = drive.actuators().size();
        ToDoubleFunction<Balance> push = b -> Math.abs(b.force()) / sharing;
        List<Part> all = new ArrayList<>();
        all.add(new Part("frame pin", Drive.FRAME_PIN, push));
        all.add(new Part(drive instanceof Straight ? "tank pin" : "rod pin", Drive.ROD_PIN, push));
        List<JointPlan> joints = analysis.mechanism().joints();
        for (int i = 0; i < joints.size(); i++) {
            int joint = i;
            String name = joints.get(i).name();
            int pins = drive.paired(name) ? 2 : 1;
            if (i != analysis.mechanism().pivot() && !joints.get(i).slide()) {
                all.add(new Part(
                        name.replace('-', ' '), name, b -> b.joints().get(joint).norm() / pins));
            }
        }
        return all;
    }

    private static Finding one(Findings make, Analysis analysis, Part part) {
        Drive drive = analysis.design().drive();
        PinJoint joint = drive.pinJoint(part.name());
        double most = Sweep.balances(analysis, part.load()).value();
        String bears = "bears up to " + Quantities.show(most, Kind.FORCE, UnitSystem.METRIC);
        if (joint == null) {
            return make.missing(part.shown(), drive.pinKey(part.name()) + " missing; it " + bears);
        }
        Findings.Worst worst = Sweep.balances(
                analysis, b -> PinStress.combined(joint, part.load().applyAsDouble(b)));
        double factor = analysis.design().factors().pin();
        String note = "combined stress against yield; " + bears;
        return make.compare(part.shown(), worst.value(), joint.yield(), factor, Kind.PRESSURE, worst, note);
    }
}
