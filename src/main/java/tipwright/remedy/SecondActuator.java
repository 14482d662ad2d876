// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.Support;
import tipwright.design.key.Copy;
import tipwright.quantity.Marks;
import tipwright.quantity.Text;

/** A second actuator like the first, both as far from the middle between the bearings. */
final class SecondActuator implements Proposer {
    private static final double APART = 0.25;

    @Override
    public String asked(Finding f) {
        return Asks.ofDrive(f) || f.isOf("buckling") ? "second" : "";
    }

    @Override
    public List<List<Proposal>> changes(Analysis analysis, String asked, Shop shop) {
        Design design = analysis.design();
        List<PlacedActuator> placed = design.drive().actuators();
        if (placed.size() != 1) {
            return List.of();
        }
        List<Support> bearings = design.pivot().bearings();
        double middle = (bearings.get(0).z() + bearings.get(1).z()) / 2;
        double off = APART * Math.abs(bearings.get(1).z() - bearings.get(0).z());
        double left = Marks.rounded(middle - off, shop.units());
        double right = Marks.rounded(middle + off, shop.units());
        List<PlacedActuator> two = List.of(Copy.with(placed.get(0), "z", left), Copy.with(placed.get(0), "z", right));
        Text words = Text.of(
                "two of the same actuator side by side, at z = {} and {}, each on pins and lugs as they are drawn",
                Text.mark(left),
                Text.mark(right));
        return List.of(
                List.of(new Proposal(words, 1.0, design.withDrive(design.drive().with(two)))));
    }
}
