// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.design.Drive;
import tipwright.design.PinJoint;
import tipwright.quantity.Kind;

/** The actuator's pins at frame and tank. */
final class PinCheck implements Check {
    @Override
    public String id() {
        return "pin";
    }

    @Override
    public String title() {
        return "Actuator pin";
    }

    @Override
    public String rule() {
        return "The pin at each end of the actuator bears its force in shear and in bending between lug and cheeks together.";
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
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design().limits());
        Drive drive = analysis.design().drive();
        return List.of(
                one(make, analysis, "frame pin", drive.framePinJoint(), "drive: frame-pin-joint missing"),
                one(make, analysis, "tank pin", drive.tankPinJoint(), "drive: tank-pin-joint missing"));
    }

    private static Finding one(
            Findings make, Analysis analysis, String part, @Nullable PinJoint joint, String missing) {
        if (joint == null) {
            return make.missing(part, missing);
        }
        int sharing = analysis.design().drive().actuators().size();
        Findings.Worst worst = Sweep.balances(analysis, b -> PinStress.combined(joint, Math.abs(b.force()) / sharing));
        double factor = analysis.design().factors().pin();
        return make.compare(
                part, worst.value(), joint.yield(), factor, Kind.PRESSURE, worst, "combined stress against yield");
    }
}
