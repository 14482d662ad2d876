// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Extreme;
import tipwright.analysis.Forces;
import tipwright.analysis.MotionDirection;
import tipwright.check.actuator.HoldCheck;
import tipwright.check.bearing.BearingStaticCheck;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.joint.BallInsert;
import tipwright.design.tank.CaseName;
import tipwright.design.tank.Dump;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;
import tipwright.load.EmptyTank;
import tipwright.load.OpenDoors;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** A cake that lets go at once and is caught by the tank's end or door. */
public final class SlideCheck implements Check {
    @Override
    public String id() {
        return "slide";
    }

    @Override
    public String title() {
        return "Cake slides at once: blow on the machine";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : Text.capital(part) + ": blow when the cake slides at once";
    }

    @Override
    public String rule() {
        return "When all settled solids let go in one slide at the release tilt (dump.cake: one-slide), their weight, taken"
                + " times the shock factor, once where they lay and once where they come to rest, is within the actuators'"
                + " holding rating and the bearings' static rating. Apart from the other load cases, and conservative.";
    }

    @Override
    public String formula() {
        return "F with cake weight x 2 (shock factor), at rest";
    }

    @Override
    public String source() {
        return "load put on suddenly: twice the static one (energy balance of a spring, any text on strength of materials)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TUBE, PartKind.ROD, PartKind.BEARING);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("an actuator that holds more, bigger bearings, or wash the cake loose before you dump");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        if (design.dump().cake() != Dump.Cake.ONE_SLIDE) {
            return List.of();
        }
        Findings make = new Findings(this, design);
        Contents contents = new Contents(design);
        double cake = contents.cakeVolume();
        double release = design.slurry().release();
        double last = analysis.poses().get(analysis.poses().size() - 1).tilt();
        double first = analysis.poses().get(0).tilt();
        if (!(cake > 0) || release > last) {
            return List.of(make.given(
                    "",
                    0,
                    Double.NaN,
                    1,
                    Kind.FORCE,
                    0,
                    Extreme.NOWHERE,
                    Verdict.PASS,
                    "the cake does not let go within the tilt range, or there is none"));
        }
        try {
            double tilt = Math.max(first, release);
            return shocked(make, design, contents, tilt, Forces.of(design, new double[] {first, tilt}));
        } catch (CannotComputeException unreachable) {
            return List.of(make.cannot("", "the linkage does not reach the release tilt"));
        }
    }

    private static List<Finding> shocked(Findings make, Design design, Contents contents, double tilt, Forces forces) {
        int at = forces.count() - 1;
        double volume = contents.cakeVolume();
        double mass = volume * design.slurry().cakeDensity() * design.dump().shock();
        EmptyTank shut = EmptyTank.of(design, contents.solid());
        EmptyTank empty = new OpenDoors(design).raised(CaseName.CAKED.key(), shut, tilt);
        Vec3 stuck =
                contents.heap(contents.start(), volume, Double.NaN).moments().centroid();
        Vec3 slid = contents.heap(tilt, volume, Double.NaN).moments().centroid();
        List<Finding> all = new ArrayList<>();
        double push = 0;
        double pull = 0;
        List<Vec3> bearings = new ArrayList<>();
        for (Vec3 where : List.of(stuck, slid)) {
            double total = empty.mass() + mass;
            Vec3 centroid =
                    empty.centroid().times(empty.mass()).plus(where.times(mass)).times(1 / total);
            double force = forces.force(at, total, centroid, 0);
            push = Math.max(push, force);
            pull = Math.max(pull, -force);
            bearings.addAll(forces.bearings(at, total, centroid));
        }
        Extreme worst = new Extreme(Math.max(push, pull), tilt, "one slide", MotionDirection.RESTING);
        Text note =
                Text.words("all of the cake slides at once and lands hard: its weight is taken times the shock factor");
        all.add(
                HoldCheck.known(design)
                        ? make.compare(
                                "actuator", held(design, forces.length(at), forces.arm(at), push, pull), worst, note)
                        : make.missing("actuator", "actuator.hold missing"));
        Double c0 = c0(design);
        all.add(
                c0 == null
                        ? make.missing("bearings", "bearing.c0 missing or not a ball insert")
                        : make.compare("bearings", heaviest(bearings, c0, design.factors()), worst, note));
        return all;
    }

    /** The harder to hold of a push and a pull, N. */
    private static Usage held(Design design, double length, double arm, double push, double pull) {
        Usage pushed = HoldCheck.usage(push, HoldCheck.rated(design, length, arm, true), design.factors());
        Usage pulled = HoldCheck.usage(pull, HoldCheck.rated(design, length, arm, false), design.factors());
        return pulled.utilisation() > pushed.utilisation() ? pulled : pushed;
    }

    private static Usage heaviest(List<Vec3> loads, double c0, Factors factors) {
        return loads.stream()
                .map(load -> BearingStaticCheck.usage(load, c0, factors))
                .max(Comparator.comparingDouble(Usage::utilisation))
                .orElseThrow();
    }

    private static @Nullable Double c0(Design design) {
        double weakest = Double.POSITIVE_INFINITY;
        for (var support : design.pivot().bearings()) {
            Double c0 = support.bearing() instanceof BallInsert insert ? insert.c0() : null;
            if (c0 == null) {
                return null;
            }
            weakest = Math.min(weakest, c0);
        }
        return weakest;
    }
}
