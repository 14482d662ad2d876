// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.quantity.Kind;

/** Largest push while moving, friction included. */
final class PushCheck implements Check {
    @Override
    public String id() {
        return "push";
    }

    @Override
    public String title() {
        return "Push of the actuator";
    }

    @Override
    public String rule() {
        return "The largest push over all load cases and tilts, with friction either way, is within the rated push;"
                + " actuators side by side share it equally.";
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
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design().limits());
        Findings.Worst worst = Sweep.balances(analysis, b -> b.force());
        double rated = Ratings.together(analysis.design(), a -> a.ratedPush());
        return List.of(make.compare(
                "",
                Math.max(0, worst.value()),
                rated,
                analysis.design().factors().service(),
                Kind.FORCE,
                worst,
                worst.value() > 0 ? "rod in compression" : "the actuator never pushes"));
    }
}
