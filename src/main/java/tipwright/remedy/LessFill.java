// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.tank.Slurry;
import tipwright.load.Contents;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Less in the tank. */
final class LessFill implements Proposer {
    private static final double STEP = 0.05;
    private static final double LEAST = 0.3;

    @Override
    public String asked(Finding f) {
        return Asks.ofFill(f) ? "fill" : "";
    }

    @Override
    public List<List<Proposal>> changes(Analysis analysis, String asked, Shop shop) {
        Design design = analysis.design();
        Slurry slurry = design.slurry();
        double room = new Contents(design).capacity();
        double now = slurry.volumeIn(room) / room;
        List<List<Proposal>> ladder = new ArrayList<>();
        for (int i = (int) Math.ceil(now / STEP - 1e-9) - 1; i * STEP >= LEAST - 1e-9; i--) {
            double share = i * STEP;
            Text detail = Text.of(
                    "({} in place of {})",
                    Text.amount(share * room, Kind.VOLUME),
                    Text.amount(now * room, Kind.VOLUME));
            ladder.add(List.of(new Proposal(
                    Text.of("fill it to {} % at most", Text.number(100 * share, 0)),
                    detail,
                    0.1 + (now - share) / now,
                    design.withSlurry(slurry.withFill(share)))));
        }
        return ladder;
    }
}
