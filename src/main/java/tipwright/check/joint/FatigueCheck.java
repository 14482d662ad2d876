// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Concerned;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.design.joint.Seat;
import tipwright.design.tank.CylinderInterior;
import tipwright.design.tank.Wall;
import tipwright.geometry.Vec3;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.FatigueCurve;
import tipwright.strength.OutOfRangeException;
import tipwright.strength.PatchLoad;
import tipwright.strength.WeldGroup;

/** Welds and brackets over all dumps of the machine's life. */
public final class FatigueCheck implements Check {
    /** Cracks are not looked for, and a break may maim. */
    private static final double FACTOR = FatigueCurve.factor(false, true);

    private final WallInfluences memo;

    /**
     * The check.
     *
     * @param memo what is known of walls
     */
    public FatigueCheck(WallInfluences memo) {
        this.memo = memo;
    }

    @Override
    public String id() {
        return "fatigue";
    }

    @Override
    public String title() {
        return "Welds and tank wall: fatigue over its life";
    }

    @Override
    public String title(String part) {
        return part.isEmpty()
                ? title()
                : (part.startsWith("weld ")
                                ? "Weld at " + Titles.the(part.substring("weld ".length()))
                                : "Tank wall at " + Titles.the(part.replaceFirst("^wall ", "")))
                        + ": fatigue over its life";
    }

    @Override
    public String shortly(Finding finding) {
        return "fatigue over its life";
    }

    @Override
    public String rule() {
        return "Each dump swings the stress in a weld once: from nothing through all loads of the normal dump and back. That range, so often over the life, stays within what the welded detail bears: the root of a fillet weld by category 36, whichever way it is loaded; the tank's wall beside a bracket by the bracket's length. As welded, push counts like pull. Shaking on the road is not in it.";
    }

    @Override
    public String formula() {
        return "range of the stress <= category / gamma x (2e6 / N)^(1/3), from 5e6 dumps on ^(1/5); gamma = 1.35; N = dumps an hour x hours a year x years";
    }

    @Override
    public String source() {
        return "EN 1993-1-9 7.1 (worked values of a public library, read), tables 3.1, 8.4 and 8.5 (from memory)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL);
    }

    @Override
    public Concerned concerned(Analysis analysis, Finding finding) {
        return Concerned.named(Set.of(PartKind.PIN, PartKind.LUG, PartKind.BEARING), finding);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("larger or longer welds, a larger pad, fewer dumps, or cracks looked for every year");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        if (design.fastenings().stream().allMatch(f -> f.weld() == null && f.seat() == null)) {
            return List.of();
        }
        Double dumps = design.use().dumps();
        if (dumps == null) {
            return List.of(make.missing("", "use: dumps-per-hour, hours-a-year or years missing"));
        }
        List<Finding> all = new ArrayList<>();
        for (Fastening f : design.fastenings()) {
            FilletWeld weld = f.weld();
            JointLoad load =
                    weld == null ? null : JointLoad.of(analysis, f, weld.at().z());
            if (weld != null && load != null) {
                double range = weldRange(weld, load);
                all.add(one(make, "weld " + f.joint(), range, FatigueCurve.FILLET_ROOT, dumps));
            }
            Finding wall = wall(make, analysis, f, dumps);
            if (wall != null) {
                all.add(wall);
            }
        }
        return TwistedLinks.judged(make, analysis, all);
    }

    private static Finding one(Findings make, String part, double range, double category, double dumps) {
        double bears = new FatigueCurve(category, false, FACTOR).bearable(dumps);
        return make.compare(
                part,
                range,
                bears,
                1,
                Kind.PRESSURE,
                Extreme.NOWHERE,
                Text.of(
                        "range of stress in a dump, {} dumps; detail of category {}",
                        Text.number(dumps, 0),
                        Text.number(category / 1e6, 0)));
    }

    /** Range of the stress on the throat, Pa: at each end of a seam, each part of it between its least and its most. */
    private static double weldRange(FilletWeld weld, JointLoad load) {
        WeldGroup group = new WeldGroup(weld);
        Vec3 at = load.place();
        List<Vec3> byX = group.along(new Vec3(1, 0, 0), at);
        List<Vec3> byY = group.along(new Vec3(0, 1, 0), at);
        List<Vec3> byZ = group.along(new Vec3(0, 0, 1), at);
        Box[] ends = new Box[group.ends()];
        Arrays.setAll(ends, i -> new Box());
        load.normal(held -> {
            Vec3 f = held.force();
            for (int i = 0; i < ends.length; i++) {
                ends[i].take(f, byX.get(i), byY.get(i), byZ.get(i));
            }
        });
        double most = 0;
        for (Box end : ends) {
            most = Math.max(most, end.span().norm());
        }
        return most / (WeldGroup.THROAT * weld.leg());
    }

    private @Nullable Finding wall(Findings make, Analysis analysis, Fastening f, double dumps) {
        Seat seat = f.seat();
        Wall wall = analysis.design().tank().wall();
        JointLoad load =
                seat == null ? null : JointLoad.of(analysis, f, seat.at().z());
        if (seat == null
                || load == null
                || wall == null
                || !load.onTank()
                || !(analysis.design().tank().interior() instanceof CylinderInterior tank)) {
            return null;
        }
        String part = "wall " + f.joint();
        SeatWall under;
        try {
            under = SeatWall.of(tank, wall.thickness(), seat, memo);
        } catch (OutOfRangeException e) {
            return make.cannot(
                    part,
                    Text.words("fastenings: seat is out of the rule's range: ").plus(e.reason()));
        }
        Box box = new Box();
        load.normal(held -> {
            PatchLoad p = under.load(held);
            box.take(new Vec3(p.force(), p.around(), p.along()));
        });
        Vec3 span = box.span();
        double range = 0;
        for (int signs = 0; signs < 4; signs++) {
            PatchLoad swing = new PatchLoad(
                    span.x(), (signs & 1) == 0 ? span.y() : -span.y(), (signs & 2) == 0 ? span.z() : -span.z());
            range = Math.max(range, under.worst(swing).direct());
        }
        return one(make, part, range, FatigueCurve.attachmentAlong(Math.max(seat.along(), seat.around())), dumps);
    }

    /** Least and most of three numbers, nothing included. */
    private static final class Box {
        private final double[] low = new double[3];
        private final double[] high = new double[3];

        /** The sum of three vectors, each so many times. */
        void take(Vec3 times, Vec3 a, Vec3 b, Vec3 c) {
            take(0, times.x() * a.x() + times.y() * b.x() + times.z() * c.x());
            take(1, times.x() * a.y() + times.y() * b.y() + times.z() * c.y());
            take(2, times.x() * a.z() + times.y() * b.z() + times.z() * c.z());
        }

        void take(Vec3 v) {
            take(0, v.x());
            take(1, v.y());
            take(2, v.z());
        }

        private void take(int i, double value) {
            low[i] = Math.min(low[i], value);
            high[i] = Math.max(high[i], value);
        }

        Vec3 span() {
            return new Vec3(high[0] - low[0], high[1] - low[1], high[2] - low[2]);
        }
    }
}
