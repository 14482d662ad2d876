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
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.around.Site;
import tipwright.design.tank.Slurry;
import tipwright.load.Emptying;
import tipwright.load.Vessel;
import tipwright.time.CycleTimer;

/**
 * The conditions under which a machine has to work, at the tilts of a design: calm on the ground as stated, wind from each side, and,
 * where the site says that it may stand any way round, ground that slopes each way and half way between. A workspace.
 */
final class Conditions {
    private static final int WAYS = 8;
    private static final String[] DOWN = {
        "the dump side", "the dump side and +z", "+z", "the far side and +z",
        "the far side", "the far side and -z", "-z", "the dump side and -z"
    };

    private final OtherFills asStated;
    private final List<Wind> winds;
    private final Map<String, OtherFills> slopes = new LinkedHashMap<>();

    /** Of a design. */
    Conditions(Design design, Emptying emptying, Vessel vessel) throws CannotComputeException {
        asStated = OtherFills.of(design, emptying, vessel);
        winds = Wind.of(design);
        double slope = design.site().anyWay();
        for (int i = 0; i < WAYS && slope > 0; i++) {
            Design there = design.withSite(sloping(design.site(), slope, 2 * Math.PI * i / WAYS));
            slopes.put(ground(i), OtherFills.of(there, emptying, vessel));
        }
    }

    /** A site that slopes down by an angle towards a direction, rad from +x to +z. */
    static Site sloping(Site site, double slope, double direction) {
        double steep = Math.tan(slope);
        return site.leaning(Math.atan(steep * Math.cos(direction)), Math.atan(steep * Math.sin(direction)));
    }

    /** Share of the inside that the design's own slurry fills, 0 to 1. */
    double stated() {
        return asStated.stated();
    }

    /** What rules find with a slurry: of each finding the worst over all conditions, which it tells. */
    List<Finding> find(Slurry slurry, List<Check> rules) throws CannotComputeException {
        Analysis calm = asStated.with(slurry);
        List<Finding> worst = Checks.run(rules, winds.isEmpty() ? calm : blown(calm));
        for (Map.Entry<String, OtherFills> slope : slopes.entrySet()) {
            worst = worse(worst, Checks.run(rules, slope.getValue().with(slurry)), slope.getKey());
        }
        return worst;
    }

    /** Every load calm and in each wind: a gust may be what turns a push into a pull. */
    private Analysis blown(Analysis calm) throws CannotComputeException {
        List<CaseResult> cases = new ArrayList<>(calm.cases());
        for (Wind wind : winds) {
            for (CaseResult load : Analyser.blown(calm, wind).cases()) {
                cases.add(new CaseResult(load.load().named(load.name() + ", " + wind.words()), load.rows()));
            }
        }
        return calm.with(cases);
    }

    /** What needs the dump in time, also in the wind that blows along it and on ground that slopes along it. */
    static List<Finding> inTime(Analysis analysis, List<Finding> calm) throws CannotComputeException {
        return inTime(analysis, calm, Fullness.TIMED);
    }

    /** The same of some of these rules. */
    static List<Finding> inTime(Analysis analysis, List<Finding> calm, List<Check> rules)
            throws CannotComputeException {
        List<Finding> worst = calm;
        for (Wind wind : Wind.of(analysis.design())) {
            if (wind.alongSideView()) {
                worst = worse(worst, timed(Analyser.blown(analysis, wind), rules), wind.words());
            }
        }
        Site site = analysis.design().site();
        for (int i = 0; i < WAYS && site.anyWay() > 0; i += WAYS / 2) {
            Design there = analysis.design().withSite(sloping(site, site.anyWay(), 2 * Math.PI * i / WAYS));
            worst = worse(worst, timed(Analyser.analyse(there, analysis.vessel()), rules), ground(i));
        }
        return worst;
    }

    private static List<Finding> timed(Analysis there, List<Check> rules) {
        return Checks.run(rules, there, CycleTimer.time(there));
    }

    private static String ground(int way) {
        return "ground down to " + DOWN[way];
    }

    /** Findings, with others that are clearly worse under a condition put in their place. */
    static List<Finding> worse(List<Finding> own, List<Finding> others, String condition) {
        Map<String, Finding> byId = new LinkedHashMap<>();
        others.forEach(f -> byId.putIfAbsent(f.id(), f));
        List<Finding> all = new ArrayList<>(own.size());
        for (Finding f : own) {
            Finding other = byId.get(f.id());
            all.add(other != null && other.clearlyWorseThan(f) ? other.under(condition) : f);
        }
        return all;
    }
}
