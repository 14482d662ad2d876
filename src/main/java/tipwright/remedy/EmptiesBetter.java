// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.NumberedPlace;
import tipwright.design.drive.TiltRange;
import tipwright.design.key.Copy;
import tipwright.design.tank.Opening;
import tipwright.geometry.NotConvergedException;
import tipwright.geometry.Vec3;
import tipwright.load.Emptying;
import tipwright.quantity.Text;

/**
 * What more than another tilt lets a tank run empty: the tilt that it takes together with a pin moved, so that the actuator gets there,
 * or an opening that reaches lower. A lining is not tried: what lies under the grit's own slope stays on any.
 */
final class EmptiesBetter implements Proposer {
    private static final double STEP = Math.toRadians(5);
    private static final double STEEPEST = Math.toRadians(175);
    private static final int TILTS = 3;
    private static final double UPRIGHT = 0.9;

    @Override
    public String asked(Finding f) {
        return f.isOf("empties") ? "empties" : "";
    }

    @Override
    public List<List<Proposal>> changes(Analysis analysis, String asked, Shop shop) {
        Design design = analysis.design();
        List<List<Proposal>> ladder = new ArrayList<>();
        double[] steps = MovedPins.steps(shop.units());
        for (double by : steps) {
            List<Proposal> rung = new ArrayList<>();
            for (Opening o : design.tank().openings()) {
                Proposal p = lower(design, o, by);
                if (p != null) {
                    rung.add(p);
                }
            }
            ladder.add(rung);
        }
        double needed = needed(analysis.emptying());
        for (double by : steps) {
            for (int i = 0; i < TILTS; i++) {
                double to = (Math.ceil(needed / STEP - 1e-9) + i) * STEP;
                if (to > design.tilt().to() && to <= STEEPEST) {
                    ladder.add(steeper(design, to, by, shop));
                }
            }
        }
        return ladder.stream().filter(rung -> !rung.isEmpty()).toList();
    }

    /** The tilt from which on no more stays in than is allowed, rad; infinite: none does. */
    private static double needed(Emptying emptying) {
        Emptying.Residue cake = emptying.cake();
        Double liquid = emptying.liquid().tiltNeeded();
        Double solids = cake == null ? Double.valueOf(0) : cake.tiltNeeded();
        return liquid == null || solids == null ? Double.POSITIVE_INFINITY : Math.max(liquid, solids);
    }

    private static List<Proposal> steeper(Design design, double to, double by, Shop shop) {
        List<Proposal> rung = new ArrayList<>();
        TiltRange tilt = design.tilt();
        for (NumberedPlace place : NumberedPlace.of(design)) {
            for (Proposal p : MovedPins.around(design, place, by, shop.units())) {
                Design steep = p.design().withTilt(new TiltRange(tilt.from(), to, tilt.step()));
                if (reaches(steep)) {
                    rung.add(new Proposal(
                            Text.words("tilt it to ")
                                    .plus(Text.degrees(to, 0))
                                    .plus(" and ")
                                    .plus(p.words()),
                            p.detail(),
                            p.change() + to - tilt.to(),
                            steep));
                }
            }
        }
        return rung;
    }

    /** Whether it gets there by what bounds where the pins may be, at a few tilts: the whole check would turn down the rest. */
    private static boolean reaches(Design design) {
        List<Check> bounds = Checks.all().stream()
                .filter(c -> c.traits().contains(Trait.BOUNDS_MOUNTS))
                .filter(c -> c.traits().stream().noneMatch(Set.of(Trait.ASKED_LATE, Trait.NEEDS_TIME)::contains))
                .toList();
        TiltRange t = design.tilt();
        try {
            Analysis few = Analyser.analyse(design.withTilt(new TiltRange(t.from(), t.to(), (t.to() - t.from()) / 4)));
            return Checks.run(bounds, few).stream().noneMatch(f -> f.verdict() == Verdict.FAIL);
        } catch (CannotComputeException | NotConvergedException e) {
            return false;
        }
    }

    /** A rim in an upright wall, without a door, whose lower edge is so much lower; null where there is no room for it. */
    private static @Nullable Proposal lower(Design design, Opening o, double by) {
        Vec3 up = new Vec3(0, 1, 0);
        Vec3 out = o.normal();
        Vec3 centre = o.centre();
        if (o.door() != null
                || out == null
                || centre == null
                || Math.abs(out.unit().dot(up)) > 1 - UPRIGHT) {
            return null;
        }
        double floor = design.tank().interior().solid().extent(up).low();
        if (o.lip(up) - by < floor) {
            return null;
        }
        Double height = o.height();
        Opening put = height == null
                ? Copy.with(o, "centre", centre.minus(up.times(by)))
                : Copy.with(Copy.with(o, "height", height + by), "centre", centre.minus(up.times(by / 2)));
        List<Opening> openings = design.tank().openings().stream()
                .map(p -> p.equals(o) ? put : p)
                .toList();
        return new Proposal(
                Text.words("the lower edge of the " + o.name() + " ")
                        .plus(Text.mark(by))
                        .plus(" lower"),
                0.1 + 2 * by,
                Copy.with(design, "tank", Copy.with(design.tank(), "openings", openings)));
    }
}
