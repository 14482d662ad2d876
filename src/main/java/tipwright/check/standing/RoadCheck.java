// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Concerned;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.design.Design;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.around.Footing;
import tipwright.design.around.Road;
import tipwright.design.joint.BallInsert;
import tipwright.design.joint.Support;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.EmptyTank;
import tipwright.load.Gravity;
import tipwright.load.LoadState;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.EquivalentLoad;
import tipwright.strength.InsertGrip;
import tipwright.strength.RoadLoad;

/** Whether the tank stays down and in its bearings on the road. */
public final class RoadCheck implements Check {
    private static final RoadLoad LOAD = RoadLoad.EUROPE;

    @Override
    public String id() {
        return "road";
    }

    @Override
    public String title() {
        return "On the road: holding the tank down";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "On the road: " + part;
    }

    @Override
    public String rule() {
        return "Tank stowed: 0.8 of its weight along the machine, whichever way it drives, and half of it across, each by itself with its whole weight down. Its own weight and what ties it down keep it from lifting off its rest; an actuator is no tie. The bearings bear the pull along together with the weight, one of them the push across.";
    }

    @Override
    public String formula() {
        return "0.8 W h <= (W d + lock) / factor about the pivot; P0 = W hypot(0.8, 1) / 2 <= C0 / s0; 0.5 W <= grip";
    }

    @Override
    public String source() {
        return "practice of load securing: 0.8 g forward, 0.5 g across (49 CFR 393.102; guide of the German insurers, both read); lever rule";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.ABOUT_STANDING);
    }

    @Override
    public Concerned concerned(Analysis analysis, Finding finding) {
        return Concerned.named(Set.of(PartKind.BEARING), finding);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words(
                "a hook or pin that ties the tank down (road.lock), a shoulder on the shaft, or driving it empty");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        Road road = design.road();
        if (road == null) {
            Footing footing = design.supports();
            return footing != null && footing.vehicle() != null ? List.of(make.missing("", "road missing")) : List.of();
        }
        List<LoadState> states = states(analysis, road);
        double heaviest = states.stream().mapToDouble(LoadState::mass).max().orElse(0) * Gravity.G;
        List<Finding> all = new ArrayList<>();
        all.add(lift(make, design, road, states));
        List<Support> supports = design.pivot().bearings();
        for (int i = 0; i < supports.size(); i++) {
            if (supports.get(i).bearing() instanceof BallInsert insert) {
                all.add(rests(make, "bearing " + (i + 1), insert, heaviest, design.factors()));
            }
        }
        all.add(across(make, supports, heaviest));
        return all;
    }

    /** Stowed: empty, and with every load when it is driven so. */
    private static List<LoadState> states(Analysis analysis, Road road) {
        List<LoadState> all = new ArrayList<>();
        EmptyTank empty = EmptyTank.of(analysis.design(), analysis.vessel().solid());
        all.add(new LoadState(empty.mass(), empty.centroid(), null, 0));
        if (road.loaded()) {
            for (CaseResult load : analysis.cases()) {
                if (load.load().normalAt(load.rows().get(0).tilt())) {
                    all.add(load.rows().get(0).load());
                }
            }
        }
        return all;
    }

    private static Finding lift(Findings make, Design design, Road road, List<LoadState> states) {
        Vec2 pivot = design.pivot().at();
        double factor = design.factors().road();
        double tie = tie(road, pivot);
        Usage worst = new Usage(0, 1, factor, Kind.MOMENT);
        boolean weightAlone = true;
        for (LoadState s : states) {
            Vec2 off = s.centroid().xy().minus(pivot);
            Usage alone = lifting(s.mass() * Gravity.G, off, 0, factor);
            weightAlone &= alone.utilisation() <= 1;
            Usage tied = lifting(s.mass() * Gravity.G, off, tie, factor);
            worst = tied.utilisation() >= worst.utilisation() ? tied : worst;
        }
        if (!weightAlone && road.lock() != null && road.rating() == null) {
            return make.missing("lift", "road.rating missing; the tank's weight alone does not keep it down");
        }
        String note = weightAlone
                ? "its weight alone keeps it down"
                : road.lock() == null ? "nothing but the actuator ties it down" : "with what ties it down";
        return make.compare("lift", worst, Extreme.NOWHERE, Text.words(note));
    }

    /** What ties the tank down, about the pivot, N m. */
    private static double tie(Road road, Vec2 pivot) {
        Vec3 lock = road.lock();
        Double rating = road.rating();
        return lock == null || rating == null ? 0 : road.locks() * rating * Math.max(0, pivot.x() - lock.x());
    }

    /**
     * The pull along that lifts the tank against what keeps it down.
     *
     * @param weight N
     * @param off centre of mass from the pivot, m
     * @param tie moment of what ties it down, N m
     */
    static Usage lifting(double weight, Vec2 off, double tie, double factor) {
        double holds = Math.max(0, -off.x() * weight) + tie;
        double over = Math.max(0, off.x() * weight);
        return new Usage(LOAD.greatest() * weight * Math.abs(off.y()) + over, holds, factor, Kind.MOMENT);
    }

    private static Finding rests(Findings make, String part, BallInsert insert, double weight, Factors factors) {
        Double c0 = insert.c0();
        if (c0 == null) {
            return make.missing(part, "bearing.c0 missing");
        }
        double load = weight / 2 * Math.hypot(LOAD.greatest(), LOAD.down());
        return make.compare(
                part,
                new Usage(EquivalentLoad.ofRest(load, 0), c0, factors.bearingStatic(), Kind.FORCE),
                Extreme.NOWHERE,
                Text.words("half of the pull along with half of the weight"));
    }

    private static Finding across(Findings make, List<Support> supports, double weight) {
        Support locating =
                supports.stream().filter(Support::locating).findFirst().orElse(supports.get(0));
        Double grip = locating.bearing() instanceof BallInsert insert ? InsertGrip.of(insert) : null;
        double push = LOAD.sideways() * weight;
        if (grip == null) {
            return make.missing(
                    "across",
                    Text.of(
                            "what the locating bearing holds along the shaft is not known; {} push on it",
                            Text.amount(push, Kind.FORCE)));
        }
        return make.compare(
                "across",
                new Usage(push, grip, 1, Kind.FORCE),
                Extreme.NOWHERE,
                Text.words("push along the shaft on the locating bearing"));
    }
}
