// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.Verdict;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.Flange;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.BoltGroup;
import tipwright.strength.BoltedTee;

/** Plates that bolts pull at. */
public final class PryingCheck implements Check {
    @Override
    public String id() {
        return "prying";
    }

    @Override
    public String title() {
        return "Plate under the bolts: prying";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Plate under the bolts at " + Titles.the(part) + ": prying";
    }

    @Override
    public String rule() {
        return "Where a bolt is pulled, the plate that it holds bends and its edge presses on the seat, so that the bolt bears more than the pull. Plate and bolt give way in one of three ways: the plate along four lines, the plate along two and the bolt, or the bolt alone; each bolt is taken by itself with its own share of the plate.";
    }

    @Override
    public String formula() {
        return "FT = min(4 Mpl/m, (2 Mpl + n B)/(m + n), B), Mpl = l t^2 fy/4, l = min(2 pi m, 4 m + 1.25 e), n = min(e, 1.25 m); B = 0.9 fu As/1.25";
    }

    @Override
    public String source() {
        return "EN 1993-1-8 6.2.4 (draft on a public page, read); l of a bolt by itself: table 6.4 (from memory)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BEARS_DRIVE);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.LUG, PartKind.BEARING);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a thicker plate, gussets, or bolts nearer to the upright");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        List<Finding> all = new ArrayList<>();
        for (Fastening f : analysis.design().fastenings()) {
            Bolts bolts = f.bolts();
            JointLoad load =
                    bolts == null ? null : JointLoad.of(analysis, f, bolts.at().z());
            if (bolts != null && load != null) {
                all.add(one(make, f, bolts, load, analysis.design().factors()));
            }
        }
        return TwistedLinks.judged(make, analysis, all);
    }

    private static Finding one(Findings make, Fastening f, Bolts bolts, JointLoad load, Factors factors) {
        BoltGroup group = new BoltGroup(bolts);
        Extreme worst = load.worst(held -> group.pull(held.force(), held.at()));
        Flange flange = f.flange();
        if (flange == null) {
            return worst.value() > 0
                    ? make.missing(
                            f.joint(),
                            Text.of(
                                    "fastenings: flange missing; a bolt pulls with up to {}",
                                    Text.amount(worst.value(), Kind.FORCE, "kN", 1)))
                    : make.given(
                            f.joint(), 0, 1, 1, Kind.FORCE, 0, Extreme.NOWHERE, Verdict.PASS, "no bolt is ever pulled");
        }
        BoltedTee tee = tee(flange, group.pullStrength());
        Usage usage = new Usage(worst.value(), tee.resistance() / 2, factors.bolt(), Kind.FORCE);
        String how =
                switch (tee.governing()) {
                    case FLANGE -> "the plate gives way";
                    case BOTH -> "plate and bolt give way together";
                    case BOLTS -> "the bolt gives way";
                };
        return make.compare(f.joint(), usage, worst, Text.words("pull in one bolt; " + how));
    }

    /** A bolt with its share of the plate, and the same on the other side of the upright. */
    static BoltedTee tee(Flange flange, double bolt) {
        double m = flange.arm();
        double length = Math.min(2 * Math.PI * m, 4 * m + 1.25 * flange.edge());
        return new BoltedTee(flange.thickness(), flange.yield(), length, m, flange.edge(), 2 * bolt);
    }
}
