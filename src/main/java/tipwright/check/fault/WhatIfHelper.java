// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Then;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.drive.Assist;
import tipwright.design.drive.Counterweight;
import tipwright.design.drive.GasSpring;
import tipwright.design.key.Copy;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** A spring that helps the actuator breaks, each in turn, or the gas springs are cold and have lost gas, or hot and new: every check
 * is made anew. */
final class WhatIfHelper {
    private final Findings make;
    private final Analysis analysis;
    private final List<Check> rules;
    private final Map<String, Finding> before;

    private WhatIfHelper(Findings make, Analysis analysis, List<Check> rules) {
        this.make = make;
        this.analysis = analysis;
        this.rules =
                rules.stream().filter(c -> !c.traits().contains(Trait.SLOW)).toList();
        this.before = found(analysis).stream().collect(Collectors.toMap(Finding::id, f -> f, (a, b) -> a));
    }

    static List<Finding> find(Findings make, Analysis analysis, List<Check> rules) {
        Design design = analysis.design();
        List<Assist> helpers = design.assists();
        if (helpers.stream().allMatch(a -> a instanceof Counterweight)) {
            return List.of();
        }
        WhatIfHelper helper = new WhatIfHelper(make, analysis, rules);
        List<Finding> all = new ArrayList<>();
        for (int i = 0; i < helpers.size(); i++) {
            if (!(helpers.get(i) instanceof Counterweight)) {
                List<Assist> left = new ArrayList<>(helpers);
                Assist lost = left.remove(i);
                all.add(helper.anew(lost.name() + " breaks", left));
            }
        }
        if (helpers.stream().anyMatch(a -> a instanceof GasSpring)) {
            List<Assist> weak = gas(design, design.coldest(), design.whatIf().gasLost());
            all.add(helper.anew("gas springs cold and worn", weak));
            double hottest = Math.max(design.site().hottest(), design.site().temperature());
            all.add(helper.anew("gas springs hot and new", gas(design, hottest, 0)));
        }
        return all;
    }

    /** What helps, the gas springs at a temperature, K, and with a share of their gas lost. */
    static List<Assist> gas(Design design, double kelvin, double gone) {
        return design.assists().stream()
                .map(a -> a instanceof GasSpring spring ? spring.at(kelvin, gone) : a)
                .toList();
    }

    private List<Finding> found(Analysis of) {
        return rules.stream().flatMap(c -> c.run(of).stream()).toList();
    }

    /** The worst of what gets worse by it. */
    private Finding anew(String part, List<Assist> left) {
        Analysis without;
        try {
            without = Analyser.again(Copy.with(analysis.design(), "assists", left), analysis);
        } catch (CannotComputeException stuck) {
            String why = String.valueOf(stuck.getMessage());
            return make.given(part, 1, 0, 1, Kind.RATIO, 2, Extreme.NOWHERE, Verdict.FAIL, why);
        }
        List<Finding> worse = found(without).stream().filter(this::isWorse).toList();
        if (worse.isEmpty()) {
            return make.given(part, 0, 1, 1, Kind.RATIO, 0, Extreme.NOWHERE, Verdict.PASS, "nothing gets worse by it");
        }
        Finding worst = worse.get(0);
        for (Finding f : worse) {
            worst = f.worseThan(worst) ? f : worst;
        }
        return make.of(part, new Then(worst, Text.NONE, List.of()), worst.worst());
    }

    private boolean isWorse(Finding now) {
        Finding then = before.get(now.id());
        return now.verdict() != Verdict.NOT_CHECKED && (then == null || now.clearlyWorseThan(then));
    }
}
