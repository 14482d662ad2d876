// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.Stop;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Limits;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Whether the linkage gets to the full tilt at all. */
public final class ReachCheck implements Check {
    @Override
    public String id() {
        return "reach";
    }

    @Override
    public String title() {
        return "Linkage: jamming before full tilt";
    }

    @Override
    public String rule() {
        return "The linkage moves over the whole tilt range without jamming, locking or passing a dead centre.";
    }

    @Override
    public String formula() {
        return "the constraint Jacobian stays regular and dL/dtilt keeps its sign";
    }

    @Override
    public String source() {
        return "kinematics of planar mechanisms (from memory)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.BOUNDS_MOUNTS);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.LINK, PartKind.TUBE, PartKind.ROD);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("an actuator of another length or stroke, or " + Fix.NEARER);
    }

    @Override
    public String bound(String id) {
        return "dead centre or locked";
    }

    @Override
    public Text says(Finding finding) {
        return finding.verdict() == Verdict.PASS
                ? Text.words("the tank reaches full tilt")
                : Text.of("the tank gets to {} and not to {}: ", finding.there(), finding.needed())
                        .plus(finding.note());
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        double wanted = analysis.design().tilt().to();
        Stop stop = analysis.stop();
        double reached = stop == null ? wanted : stop.tilt();
        double from = analysis.design().tilt().from();
        double utilisation = stop == null ? 0 : 1 + (wanted - reached) / (wanted - from);
        Verdict verdict = stop == null ? Verdict.PASS : Verdict.FAIL;
        Extreme at = Extreme.at(reached, reached);
        String note = stop == null ? "no dead centre, no jam" : stop.why();
        return List.of(make.given("", wanted, reached, 1, Kind.ANGLE, utilisation, at, verdict, note));
    }
}
