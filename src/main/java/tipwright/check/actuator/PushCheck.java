// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.Verdict;
import tipwright.check.rule.WorkedFormula;
import tipwright.design.Design;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** Largest push while moving, friction included. */
public final class PushCheck implements Check {
    @Override
    public String id() {
        return "push";
    }

    @Override
    public String title() {
        return "Actuator: push";
    }

    @Override
    public String rule() {
        return "The largest push over all load cases and tilts, with friction either way, is within the rated push;"
                + " actuators side by side share it equally; a telescopic cylinder at the area of the stage that moves; a cylinder at the pump's relief"
                + " setting where that is lower than its own.";
    }

    @Override
    public String formula() {
        return "F_push / (n F_rated / service factor)";
    }

    @Override
    public String source() {
        return "maker's rating; virtual work F = W (dh/dtilt) / (dL/dtilt)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BOUNDS_MOUNTS, Trait.TELLS_RATING);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TUBE, PartKind.ROD);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Fix.force("push", finding, limits);
    }

    @Override
    public Text says(Finding finding) {
        return !(finding.demand() > 0)
                ? Text.words("the actuator never pushes")
                : finding.has() > 0
                        ? Text.of("the actuator must push {} and is good for {}", finding.needed(), finding.there())
                        : Text.of("the actuator must push {} and cannot push", finding.needed());
    }

    @Override
    public String bound(String id) {
        return "push";
    }

    @Override
    public String opener() {
        return "{more} push than {actuator} has";
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        return new WorkedFormula(analysis, finding, units).force();
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        Extreme most = Extreme.largest(analysis.cases(), (row, b) -> b.force());
        if (!(most.value() > 0) && Ratings.byRope(analysis.design())) {
            return List.of(make.given(
                    "", 0, 0, 1, Kind.FORCE, 0, Extreme.NOWHERE, Verdict.PASS, "the rope is never asked to push"));
        }
        // every push is infinitely many times what a rope can: the largest is told
        Extreme worst = Ratings.byRope(analysis.design())
                ? most
                : Extreme.largest(
                        analysis.cases(),
                        (row, b) -> b.force()
                                / Ratings.push(analysis.design(), row.pose().length()));
        Usage usage = Findings.at(
                analysis, worst, (row, b) -> usage(b.force(), row.pose().length(), analysis.design()));
        String note = Ratings.byRope(analysis.design())
                ? "a rope cannot push: it goes slack and the tank falls into it"
                : worst.value() > 0 ? "largest push, going up" : "the actuator never pushes";
        return List.of(make.compare("", usage, worst, Text.words(note)));
    }

    /**
     * Actuators that share a force in N, positive pushes.
     *
     * @param length pin to pin, m
     */
    static Usage usage(double force, double length, Design design) {
        return usage(force, Ratings.push(design, length), design.factors());
    }

    /** Actuators that push with a force in N against what they are rated for together, N; or that pull. */
    public static Usage usage(double force, double rated, Factors factors) {
        return new Usage(Math.max(0, force), rated, factors.service(), Kind.FORCE);
    }
}
