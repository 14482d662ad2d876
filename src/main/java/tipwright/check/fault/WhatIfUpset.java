// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.check.actuator.HoldCheck;
import tipwright.check.actuator.Ratings;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.around.Footing;
import tipwright.design.around.Site;
import tipwright.design.drive.Assist;
import tipwright.design.drive.GasSpring;
import tipwright.design.key.Copy;
import tipwright.design.tank.CaseName;
import tipwright.design.tank.Tank;
import tipwright.load.TiltGrid;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/**
 * Loads that come about only if something goes wrong: each takes the place of all load cases, and every check that looks at the load
 * is asked again. Half of the cake stuck along one side is looked at with the ground sloping down to that side too, as steep as the
 * site says that it may. What freezes the load makes gas springs cold too, so it is looked at with them so as well.
 */
final class WhatIfUpset {
    private static final double APART = Math.toRadians(2.4);
    /** At which water freezes, K. */
    private static final double FROST = 273.15;

    private static final Map<String, String> WORDS = Map.of(
            "frozen", "frozen solid",
            "brim", "full of rainwater",
            "bridged", "outlet blocks on the way",
            "stuck-plus-z", "cake stuck along the +z side",
            "stuck-minus-z", "cake stuck along the -z side");

    private final List<Check> rules;

    private WhatIfUpset(List<Check> rules) {
        this.rules = rules.stream()
                .filter(c -> c.traits().contains(Trait.DEPENDS_ON_FILL))
                .filter(c -> !c.traits().contains(Trait.ABOUT_SURROUNDINGS))
                .filter(c -> !c.traits().contains(Trait.SLOW) && !c.traits().contains(Trait.NEEDS_TIME))
                .toList();
    }

    static List<Finding> find(Findings make, Analysis analysis, List<Check> rules) {
        WhatIfUpset upset = new WhatIfUpset(rules);
        List<Finding> all = new ArrayList<>();
        try {
            Analysis some = thinned(analysis);
            for (CaseResult load : Analyser.upsets(some)) {
                List<Finding> found = new ArrayList<>(upset.under(some, load));
                double side = side(load);
                Site site = analysis.design().site();
                if (side != 0 && site.anyWay() > 0) {
                    Site lower = site.leaning(site.grade(), side * Math.max(site.anyWay(), side * site.crossSlope()));
                    Analysis there = WhatIfWheel.leaning(analysis.design().withSite(lower), analysis);
                    for (CaseResult same : Analyser.upsets(there)) {
                        if (same.name().equals(load.name())) {
                            found.addAll(upset.under(there, same));
                        }
                    }
                }
                found.addAll(upset.onSoftFeet(some, load));
                if (load.name().equals(CaseName.FROZEN.key())) {
                    found.addAll(upset.onColdSprings(some));
                }
                found.removeIf(f -> f.verdict() == Verdict.NOT_CHECKED);
                if (!found.isEmpty()) {
                    Finding worst = WorstOfAll.of(make, WORDS.getOrDefault(load.name(), load.name()), found);
                    Tank tank = analysis.design().tank();
                    all.add(
                            load.name().equals(CaseName.BRIDGED.key()) && tank.pours()
                                    ? worst.titled(Text.capital(CaseName.BRIDGED.poured()) + WhatIfCheck.WORST)
                                    : worst);
                }
            }
        } catch (CannotComputeException stuck) {
            String why = String.valueOf(stuck.getMessage());
            all.add(make.given("upset loads", 1, 0, 1, Kind.RATIO, 2, Extreme.NOWHERE, Verdict.FAIL, why));
        }
        return all;
    }

    /** At some of its tilts: both sides of what changes at once, and no more than some degrees from one to the next. */
    private static Analysis thinned(Analysis all) {
        List<Pose> poses = all.poses();
        List<Pose> kept = new ArrayList<>();
        for (int i = 0; i < poses.size(); i++) {
            double tilt = poses.get(i).tilt();
            boolean end = i == 0 || i == poses.size() - 1;
            boolean side = (i > 0 && TiltGrid.sides(poses.get(i - 1).tilt(), tilt))
                    || (!end && TiltGrid.sides(tilt, poses.get(i + 1).tilt()));
            if (end || side || tilt - kept.get(kept.size() - 1).tilt() > APART) {
                kept.add(poses.get(i));
            }
        }
        return all.over(kept, List.of());
    }

    /** +1 or -1 for cake that sticks along a side. */
    private static double side(CaseResult load) {
        return load.name().equals("stuck-plus-z") ? 1 : load.name().equals("stuck-minus-z") ? -1 : 0;
    }

    /** How it stands where the feet or tyres under the side where the cake sticks have gone soft. */
    private List<Finding> onSoftFeet(Analysis some, CaseResult load) {
        Footing footing = some.design().supports();
        double side = side(load);
        if (side == 0 || footing == null || footing.stiffness().isEmpty()) {
            return List.of();
        }
        Design soft = Copy.with(some.design(), "supports", footing.softOn((int) side));
        Analysis only = alone(some, load).of(soft);
        return rules.stream()
                .filter(c -> c.traits().contains(Trait.ABOUT_STANDING))
                .flatMap(c -> c.run(only).stream())
                .toList();
    }

    /** Frozen, where the frost has met gas springs that had lost gas before. */
    private List<Finding> onColdSprings(Analysis some) throws CannotComputeException {
        Design design = some.design();
        if (design.assists().stream().noneMatch(GasSpring.class::isInstance)) {
            return List.of();
        }
        double coldest = Math.min(FROST, design.coldest());
        List<Assist> cold = WhatIfHelper.gas(design, coldest, design.whatIf().gasLost());
        Analysis there = some.of(Copy.with(design, "assists", cold));
        List<Finding> all = new ArrayList<>();
        for (CaseResult load : Analyser.upsets(there)) {
            if (load.name().equals(CaseName.FROZEN.key())) {
                under(there, load).forEach(f -> all.add(f.under("gas springs cold and worn")));
            }
        }
        return all;
    }

    private List<Finding> under(Analysis analysis, CaseResult load) {
        Analysis only = alone(analysis, load);
        boolean holds = !Ratings.byRope(analysis.design()) && holds(only);
        return rules.stream()
                .flatMap(c -> c.run(only).stream())
                .map(f -> holds ? stalled(f) : f)
                .toList();
    }

    private static Analysis alone(Analysis analysis, CaseResult load) {
        return analysis.over(load.rows().stream().map(Row::pose).toList(), List.of(load));
    }

    /** Whether the actuators are known to hold the load where it is. */
    private static boolean holds(Analysis analysis) {
        Extreme worst = HoldCheck.worst(analysis);
        return worst != null && HoldCheck.usage(analysis, worst).utilisation() <= 1;
    }

    /** An actuator that is too weak for a push but holds it only stalls; a rope that would have to push holds nothing. */
    private static Finding stalled(Finding f) {
        if (f.verdict() != Verdict.FAIL || !f.id().equals("push")) {
            return f;
        }
        return f.judged(Verdict.CLOSE);
    }
}
