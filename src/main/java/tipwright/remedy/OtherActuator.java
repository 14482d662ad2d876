// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.placement.PartsBox;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Another actuator of the parts box, on the pins where they are. */
final class OtherActuator implements Proposer {
    @Override
    public String asked(Finding f) {
        return Asks.ofDrive(f) || f.isOf("stroke") || f.isOf("buckling") ? "box" : "";
    }

    @Override
    public List<List<Proposal>> changes(Analysis analysis, String asked, Shop shop) {
        Design design = analysis.design();
        Actuator drawn = design.drive().actuators().get(0).actuator();
        List<Proposal> all = new ArrayList<>();
        for (ListedActuator part : shop.actuators()) {
            if (PartsBox.suits(design, part.actuator()) && !part.actuator().equals(drawn)) {
                all.add(proposal(design, drawn, part));
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(Proposal::change))
                .map(List::of)
                .toList();
    }

    private static Proposal proposal(Design design, Actuator drawn, ListedActuator part) {
        Actuator put = part.actuator();
        int n = design.drive().actuators().size();
        Text words =
                Text.words((n > 1 ? n + " actuators" : "the actuator") + " '" + part.name() + "' of the parts box");
        Text detail = Text.of(
                "(push {}, stroke {}, closed {} pin to pin)",
                Text.amount(put.ratedPush(), Kind.FORCE),
                Text.mark(put.stroke()),
                Text.mark(put.closed()));
        double change = 0.2
                + 0.3 * Math.abs(Math.log(put.ratedPush() / drawn.ratedPush()))
                + Math.abs(put.stroke() - drawn.stroke())
                + Math.abs(put.closed() - drawn.closed());
        return new Proposal(
                words, detail, change, design.withDrive(design.drive().with(put)));
    }
}
