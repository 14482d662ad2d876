// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.Support;
import tipwright.design.key.Copy;
import tipwright.geometry.Vec3;
import tipwright.quantity.Marks;
import tipwright.quantity.Text;

/** An actuator that sits to one side moved to the middle between the bearings. */
final class ActuatorToMiddle implements Proposer {
    private static final double LEAST = 0.005;

    @Override
    public String asked(Finding f) {
        return Asks.ofDrive(f) ? "middle" : "";
    }

    @Override
    public List<List<Proposal>> changes(Analysis analysis, String asked, Shop shop) {
        Design design = analysis.design();
        List<PlacedActuator> placed = design.drive().actuators();
        List<Support> bearings = design.pivot().bearings();
        double middle = Marks.rounded((bearings.get(0).z() + bearings.get(1).z()) / 2, shop.units());
        if (placed.size() != 1 || Math.abs(placed.get(0).z() - middle) < LEAST) {
            return List.of();
        }
        double from = placed.get(0).z();
        List<PlacedActuator> put = List.of(Copy.with(placed.get(0), "z", middle));
        Design moved = Shifted.fastenings(
                design.withDrive(design.drive().with(put)), f -> ofActuator(f), new Vec3(0, 0, middle - from));
        Text words = Text.of(
                "move the actuator by {} along the pivot, to the middle between the bearings",
                Text.mark(Math.abs(middle - from)));
        return List.of(List.of(new Proposal(words, Text.of("(z = {})", Text.mark(middle)), 0.15, moved)));
    }

    private static boolean ofActuator(Fastening f) {
        return f.joint().equals("frame-pin")
                || f.joint().equals("tank-pin")
                || f.joint().equals("rod-pin");
    }
}
