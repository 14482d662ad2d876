// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.Verdict;
import tipwright.design.Limits;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Whether the load turns an actuator's screw back when the motor is off. */
public final class BackDriveCheck implements Check {
    @Override
    public String id() {
        return "back-drive";
    }

    @Override
    public String title() {
        return "Screw of the actuator: driven back by the load";
    }

    @Override
    public String rule() {
        return "With the motor off the friction in the thread keeps the load from turning the screw; where it does not, a brake has to. Shaking lowers friction, so the least friction counts. An actuator with a rated holding force is not asked: its maker vouches for it.";
    }

    @Override
    public String formula() {
        return "lead / (pi d) <= friction / cos(flank)";
    }

    @Override
    public String source() {
        return "R. Budynas and K. Nisbett, Shigley's Mechanical Engineering Design, 8-2 (from memory)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of();
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TUBE, PartKind.ROD);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a brake on the motor, a finer thread, or an actuator with a rated holding force");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        List<Finding> all = new ArrayList<>();
        List<PlacedActuator> actuators = analysis.design().drive().actuators();
        for (int i = 0; i < actuators.size(); i++) {
            String part = actuators.size() > 1 ? "actuator " + (i + 1) : "";
            if (actuators.get(i).actuator() instanceof ElectricActuator e) {
                ElectricActuator.Screw screw = e.screw();
                if (screw != null && !e.brake()) {
                    all.add(one(make, part, screw));
                } else if (e.brake()) {
                    all.add(make.given(
                            part, 0, 1, 1, Kind.RATIO, 0, Extreme.NOWHERE, Verdict.PASS, "a brake holds the screw"));
                } else if (e.hold() == null) {
                    all.add(make.missing(part, "actuator.hold, actuator.screw or actuator.brake missing"));
                }
            }
        }
        return all;
    }

    private static Finding one(Findings make, String part, ElectricActuator.Screw screw) {
        Usage usage = usage(screw);
        String note = usage.utilisation() > 1
                ? "the load turns the screw: a brake must hold it"
                : "slope of the thread against its friction";
        return make.compare(part, usage, Extreme.NOWHERE, Text.words(note));
    }

    /** Slope of a thread, and the least friction that holds on it. */
    static Usage usage(ElectricActuator.Screw screw) {
        double slope = screw.lead() / (Math.PI * screw.diameter());
        return new Usage(slope, screw.friction() / Math.cos(screw.flank()), 1, Kind.RATIO);
    }
}
