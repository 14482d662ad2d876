// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.Pose;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Limits;
import tipwright.design.around.GroundSlope;
import tipwright.design.key.NameId;
import tipwright.load.Emptying;
import tipwright.load.LoadTable;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** What stays in the tank at full tilt. */
public final class EmptiesCheck implements Check {
    private static final String POCKETS = "forces with pockets";

    /** What pockets may keep beside the loads, as a share of what was in the tank: as exact as the loads are, with some to spare. */
    private static final double LITTLE = 0.01;

    @Override
    public String id() {
        return "empties";
    }

    @Override
    public String title() {
        return "Tank: what stays in";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : part.equals(POCKETS) ? "Tank: " + POCKETS : title() + ", " + part;
    }

    @Override
    public String shortly(Finding finding) {
        return ofPockets(finding) ? POCKETS : Check.super.shortly(finding);
    }

    @Override
    public String rule() {
        return "At full tilt no more than the allowed share of the slurry is left, in pockets too, as liquid and as settled solids at their"
                + " angle of repose, on each ground on which it may stand. Forces are worked out with one surface in the tank; where a pocket"
                + " keeps some beyond a ridge on the way, they cannot be told.";
    }

    @Override
    public String formula() {
        return "V(below the lip, and in pockets, at full tilt) / V(filled)";
    }

    @Override
    public String source() {
        return "hydrostatics; angle of repose of the settled solids (common practice, no source for wet grit)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of();
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TANK);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        if (ofPockets(finding)) {
            return Text.words("an inside without a ridge or a sump beside the outlet");
        }
        return Text.words("more tilt, a steeper floor, or an opening that reaches lower");
    }

    @Override
    public Text takes(Finding finding) {
        return Text.words("it has to tilt further, have a steeper floor or let the load out lower down (")
                .plus(finding.note())
                .plus(")");
    }

    @Override
    public Text says(Finding finding) {
        String what = finding.partId().isEmpty() ? "load" : NameId.words(finding.partId());
        return finding.verdict() == Verdict.NOT_CHECKED
                ? finding.note()
                : Text.of(
                        "left in the tank at full tilt: {} of the " + what + ", {} allowed",
                        finding.needed(),
                        finding.there());
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        if (analysis.design().tank().openings().isEmpty()) {
            return List.of(make.missing("", "tank.openings missing: nothing can leave"));
        }
        List<Finding> all = of(make, analysis, analysis.emptying());
        Emptying.Pocket pocket = analysis.emptying().pocket();
        double[] tilts = analysis.poses().stream().mapToDouble(Pose::tilt).toArray();
        for (GroundSlope ground : GroundSlope.anyWay(analysis.design().site())) {
            Emptying there = LoadTable.emptying(analysis.design().withSite(ground.site()), tilts, analysis.vessel());
            pocket = there.pocket().share() > pocket.share() ? there.pocket() : pocket;
            List<Finding> more = of(make, analysis, there);
            for (int i = 0; i < all.size(); i++) {
                Finding worse = more.get(i);
                all.set(i, worse.clearlyWorseThan(all.get(i)) ? worse.under(ground.words()) : all.get(i));
            }
        }
        if (pocket.share() > LITTLE) {
            all.add(make.cannot(
                    POCKETS,
                    Text.of(
                            "at {} of tilt pockets of the inside still keep {} of the load beyond a ridge; what that does to the forces"
                                    + " is not worked out",
                            Text.degrees(pocket.tilt(), 0),
                            Text.amount(pocket.share(), Kind.RATIO, "%", 0))));
        }
        return all;
    }

    private static boolean ofPockets(Finding finding) {
        return finding.partId().equals(NameId.of(POCKETS));
    }

    private static List<Finding> of(Findings make, Analysis analysis, Emptying emptying) {
        List<Finding> all = new ArrayList<>();
        all.add(one(make, analysis, "liquid", emptying.liquid()));
        Emptying.Residue cake = emptying.cake();
        if (cake != null) {
            all.add(one(make, analysis, "settled solids", cake));
        }
        return all;
    }

    private static Finding one(Findings make, Analysis analysis, String part, Emptying.Residue residue) {
        Limits limits = analysis.design().limits();
        Double needed = residue.tiltNeeded();
        Text note = needed == null
                ? Text.words("no tilt up to 180 deg empties it that far")
                : needed > 0
                        ? Text.of("empty from {} of tilt on", Text.degrees(needed, 1))
                        : Text.words("empty before it tilts");
        double last = analysis.poses().get(analysis.poses().size() - 1).tilt();
        Extreme at = Extreme.at(residue.share(), last);
        if (residue.share() == 0) {
            return make.given(part, 0, limits.residue(), 1, Kind.RATIO, 0, at, Verdict.PASS, note);
        }
        return make.compare(part, residue.share(), limits.residue(), 1, Kind.RATIO, at, note);
    }
}
