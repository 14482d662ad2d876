// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.OtherFills;
import tipwright.analysis.Wind;
import tipwright.check.fault.WhatIfCheck;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.around.GroundSlope;
import tipwright.design.key.Copy;
import tipwright.design.supply.HandPump;
import tipwright.design.supply.Pump;
import tipwright.design.tank.Slurry;
import tipwright.load.Emptying;
import tipwright.load.Vessel;
import tipwright.time.CycleTimer;

/**
 * The conditions under which a machine has to work, at the tilts of a design: calm on the ground as stated, wind from each side, and,
 * where the site says that it may stand any way round, ground that slopes each way and half way between. A workspace.
 */
final class Conditions {
    private final OtherFills asStated;
    private final List<Wind> winds;
    private final Map<GroundSlope, OtherFills> slopes = new LinkedHashMap<>();

    /** Of a design. */
    Conditions(Design design, Emptying emptying, Vessel vessel) throws CannotComputeException {
        asStated = OtherFills.of(design, emptying, vessel);
        winds = Wind.of(design);
        for (GroundSlope ground : GroundSlope.anyWay(design.site())) {
            slopes.put(ground, OtherFills.of(design.withSite(ground.site()), emptying, vessel));
        }
    }

    /** What rules find with a slurry: of each finding the worst over all conditions, which it tells. */
    List<Finding> find(Slurry slurry, List<Check> rules) throws CannotComputeException {
        return find(calm(slurry), slurry, rules);
    }

    /** With a slurry, on the site's own ground and in no wind. */
    Analysis calm(Slurry slurry) throws CannotComputeException {
        return asStated.with(slurry);
    }

    /** The same of one that is known. */
    List<Finding> find(Analysis calm, Slurry slurry, List<Check> rules) throws CannotComputeException {
        List<Finding> worst = Checks.run(rules, blown(calm, winds));
        for (Map.Entry<GroundSlope, OtherFills> slope : slopes.entrySet()) {
            GroundSlope ground = slope.getKey();
            Analysis there = blown(slope.getValue().with(slurry), down(winds, ground));
            worst = worse(worst, Checks.run(rules, there), ground.words());
        }
        return worst;
    }

    /** Each of them with a slurry. */
    List<Condition> each(Slurry slurry) throws CannotComputeException {
        List<Condition> all = new ArrayList<>(Condition.of(calm(slurry), winds));
        for (Map.Entry<GroundSlope, OtherFills> slope : slopes.entrySet()) {
            all.addAll(Condition.of(slope.getValue().with(slurry), down(winds, slope.getKey())));
        }
        return all;
    }

    /** Those that blow down a slope: they push the same way as it does. */
    private static List<Wind> down(List<Wind> winds, GroundSlope ground) {
        return winds.stream().filter(w -> w.blowsTowards(ground.direction())).toList();
    }

    /** Every load calm and in each wind: a gust may be what turns a push into a pull. */
    private static Analysis blown(Analysis calm, List<Wind> winds) throws CannotComputeException {
        if (winds.isEmpty()) {
            return calm;
        }
        List<CaseResult> cases = new ArrayList<>(calm.cases());
        for (Wind wind : winds) {
            for (CaseResult load : Analyser.blown(calm, wind).cases()) {
                cases.add(new CaseResult(load.load().named(load.name() + ", " + wind.words()), load.rows()));
            }
        }
        return calm.with(cases);
    }

    /**
     * What needs the dump in time, in the wind that blows along it too, on ground that slopes to each side and to each end, and on each
     * ground and in each wind with the oil of the coldest and of the hottest day too; what goes wrong at rest half way between those
     * grounds too, for bearings and feet are loaded most there, and in the wind that blows across.
     */
    static List<Finding> inTime(Analysis analysis, List<Finding> calm) throws CannotComputeException {
        return inTime(analysis, calm, Fullness.TIMED);
    }

    /** The same of some of these rules. */
    static List<Finding> inTime(Analysis analysis, List<Finding> calm, List<Check> rules)
            throws CannotComputeException {
        Design design = analysis.design();
        List<WhatIfCheck> troubles = troubles(rules);
        List<Wind> winds = Wind.of(design);
        List<Wind> across = across(winds);
        List<Finding> worst =
                wrongIn(across, onItsDays(calm, analysis, along(winds), rules, ""), analysis, troubles, "");
        List<GroundSlope> grounds = GroundSlope.anyWay(design.site());
        for (int i = 0; i < grounds.size(); i++) {
            GroundSlope ground = grounds.get(i);
            boolean halfWay = i % 2 == 1;
            if (!halfWay || !troubles.isEmpty()) {
                Analysis there = Analyser.analyse(design.withSite(ground.site()), analysis.vessel());
                String where = ", " + ground.words();
                worst = halfWay
                        ? wrong(worst, there, down(along(winds), ground), troubles, ground.words())
                        : onItsDays(
                                worse(worst, timed(there, rules), ground.words()),
                                there,
                                down(along(winds), ground),
                                rules,
                                where);
                worst = wrongIn(down(across, ground), worst, there, troubles, where);
            }
        }
        return worst;
    }

    private static List<Wind> along(List<Wind> winds) {
        return winds.stream().filter(Wind::alongSideView).toList();
    }

    /** Those that blow across: they do no work as the tank moves, so the dump in time is the same in them. */
    private static List<Wind> across(List<Wind> winds) {
        return winds.stream().filter(w -> !w.alongSideView()).toList();
    }

    /**
     * What happens at rest if something goes wrong, calm and in each wind, and on each ground of a site that may slope any way, there
     * in the wind that blows down the slope.
     */
    static List<Finding> ifSomethingGoesWrong(Analysis analysis, WhatIfCheck troubles) throws CannotComputeException {
        Design design = analysis.design();
        List<Wind> winds = Wind.of(design);
        List<Finding> worst = wrongIn(winds, troubles.atRest(Worn.of(analysis)), analysis, List.of(troubles), "");
        for (GroundSlope ground : GroundSlope.anyWay(design.site())) {
            Analysis there = Analyser.analyse(design.withSite(ground.site()), analysis.vessel());
            worst = wrong(worst, there, down(winds, ground), List.of(troubles), ground.words());
        }
        return worst;
    }

    private static List<WhatIfCheck> troubles(List<Check> rules) {
        return rules.stream()
                .filter(WhatIfCheck.class::isInstance)
                .map(WhatIfCheck.class::cast)
                .toList();
    }

    /** The same with what is worse on one ground if something goes wrong at rest, calm and in each wind. */
    private static List<Finding> wrong(
            List<Finding> known, Analysis ground, List<Wind> winds, List<WhatIfCheck> troubles, String where)
            throws CannotComputeException {
        List<Finding> worst = known;
        for (WhatIfCheck trouble : troubles) {
            worst = worse(worst, trouble.atRest(Worn.of(ground)), where);
        }
        return wrongIn(winds, worst, ground, troubles, ", " + where);
    }

    /** The same in each wind alone. */
    private static List<Finding> wrongIn(
            List<Wind> winds, List<Finding> known, Analysis calm, List<WhatIfCheck> troubles, String where)
            throws CannotComputeException {
        List<Finding> worst = known;
        for (Wind wind : troubles.isEmpty() ? List.<Wind>of() : winds) {
            Analysis blown = Worn.of(Analyser.blown(calm, wind));
            for (WhatIfCheck trouble : troubles) {
                worst = worse(worst, trouble.atRest(blown), wind.words() + where);
            }
        }
        return worst;
    }

    /** On one ground: in each wind, on the coldest and on the hottest day, and in each wind of such a day. */
    private static List<Finding> onItsDays(
            List<Finding> known, Analysis ground, List<Wind> winds, List<Check> rules, String where)
            throws CannotComputeException {
        List<Finding> worst = blown(known, ground, winds, rules, where);
        Design design = ground.design();
        for (Map.Entry<String, Double> day : days(design).entrySet()) {
            Design then = design.withSite(Copy.with(design.site(), "temperature", day.getValue()));
            String words = day.getKey() + where;
            worst = worse(worst, timed(ground.of(then), rules), words);
            worst = blown(worst, ground.of(then), winds, rules, ", " + words);
        }
        return worst;
    }

    private static List<Finding> blown(
            List<Finding> known, Analysis calm, List<Wind> winds, List<Check> rules, String where)
            throws CannotComputeException {
        List<Finding> worst = known;
        for (Wind wind : winds) {
            worst = worse(worst, timed(Analyser.blown(calm, wind), rules), wind.words() + where);
        }
        return worst;
    }

    /** Days with other oil in the return line, thick or thin, with their temperature, K. */
    private static Map<String, Double> days(Design design) {
        Map<String, Double> days = new LinkedHashMap<>();
        boolean line = (design.supply() instanceof Pump p && p.returnLine() != null)
                || (design.supply() instanceof HandPump h && h.returnLine() != null);
        double usual = design.site().temperature();
        if (line && design.coldest() < usual) {
            days.put("on the coldest day", design.coldest());
        }
        if (line && design.site().hottest() > usual) {
            days.put("on the hottest day", design.site().hottest());
        }
        return days;
    }

    private static List<Finding> timed(Analysis analysis, List<Check> rules) {
        return Checks.run(rules, analysis, CycleTimer.time(analysis));
    }

    /**
     * Findings, with others that are clearly worse under a condition put in their place, and behind them those of parts that are
     * asked for under that condition alone.
     */
    static List<Finding> worse(List<Finding> own, List<Finding> others, String condition) {
        Map<String, Finding> byId = new LinkedHashMap<>();
        others.forEach(f -> byId.putIfAbsent(f.id(), f));
        List<Finding> all = new ArrayList<>(own.size());
        for (Finding f : own) {
            Finding other = byId.get(f.id());
            all.add(other != null && takesOver(other, f) ? other.under(condition) : f);
        }
        own.forEach(f -> byId.remove(f.id()));
        byId.values().stream()
                .filter(f -> f.verdict() != Verdict.NOT_CHECKED)
                .forEach(f -> all.add(f.under(condition)));
        return all;
    }

    /** Whether what is found under a condition is told in place of a finding: what passes under it does not make known what is not. */
    static boolean takesOver(Finding other, Finding own) {
        boolean known = own.verdict() != Verdict.NOT_CHECKED || other.verdict() != Verdict.PASS;
        return known && other.clearlyWorseThan(own);
    }
}
