// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.design.Limits;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.Seat;
import tipwright.design.tank.CylinderInterior;
import tipwright.design.tank.Wall;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.OutOfRangeException;

/** The wall of a round tank where brackets, lugs and cradles sit on it. */
public final class ShellCheck implements Check {
    private final WallInfluences memo;

    /**
     * The check.
     *
     * @param memo what is known of walls
     */
    public ShellCheck(WallInfluences memo) {
        this.memo = memo;
    }

    @Override
    public String id() {
        return "shell";
    }

    @Override
    public String title() {
        return "Tank wall at a bracket: stress";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Tank wall at " + Titles.the(part) + ": stress";
    }

    @Override
    public String shortly(Finding finding) {
        return "tank wall at a bracket";
    }

    @Override
    public String rule() {
        return "Where a bracket, lug or cradle sits on the wall of a round tank, its force square to the wall and both moments bend the wall, which is round between ends that keep it so. The most that the wall sees under the footprint, with a pad plate also at the pad, stays below yield. Forces along the wall are left out: it is stiff that way. Told only while the wall gives way by no more than its thickness.";
    }

    @Override
    public String formula() {
        return "sigma of Morley's shell equation, Fourier series around, closed sum along; von Mises <= yield / factor; pad: s^2 = (t^3 + p^3)/max(t, p)";
    }

    @Override
    public String source() {
        return "L. Morley 1959 (from memory), held against the pinched cylinder of Lindberg, Olson and Cowper 1969; pad and factor: common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BEARS_DRIVE, Trait.BOUNDS_MOUNTS, Trait.ASKED_LATE);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TANK);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words(
                "a pad plate or a larger one, a longer bracket, a thicker wall, or the pin nearer to the wall");
    }

    @Override
    public String bound(String id) {
        return "tank wall";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        boolean any = analysis.design().fastenings().stream().anyMatch(f -> f.seat() != null);
        if (!(analysis.design().tank().interior() instanceof CylinderInterior tank)) {
            return any
                    ? List.of(make.cannot("", "the tank is not round; a flat wall under a bracket is not worked out"))
                    : List.of();
        }
        if (!any && analysis.design().cradle() != null) {
            return List.of();
        }
        if (!any) {
            return List.of(make.missing(
                    "", "fastenings: seat missing (where brackets and cradle sit on the tank's wall), or cradle"));
        }
        Wall wall = analysis.design().tank().wall();
        if (wall == null) {
            return List.of(make.missing("", "tank.wall missing"));
        }
        return FasteningParts.each(
                make,
                analysis,
                "seat",
                Fastening::seat,
                s -> s.at().z(),
                (name, seat, load) -> List.of(one(make, name, analysis, tank, wall, seat, load)));
    }

    private Finding one(
            Findings make,
            String name,
            Analysis analysis,
            CylinderInterior tank,
            Wall wall,
            Seat seat,
            JointLoad load) {
        if (!load.onTank()) {
            return make.missing(name, "fastenings: 'on: tank' missing beside the seat");
        }
        SeatWall under;
        try {
            under = SeatWall.of(tank, wall.thickness(), seat, memo);
        } catch (OutOfRangeException e) {
            return make.cannot(
                    name,
                    Text.words("fastenings: seat is out of the rule's range: ").plus(e.reason()));
        }
        Extreme worst = under.worst(load);
        JointLoad.Held held = load.at(worst);
        double moved = held == null ? Double.NaN : under.worst(under.load(held)).moved();
        Usage usage = new Usage(
                worst.value(), wall.yield(), analysis.design().factors().wall(), Kind.PRESSURE);
        Text note = Text.of(
                "bending of the wall under it; the wall gives way by {}", Text.amount(moved, Kind.LENGTH, "mm", 1));
        if (!(moved <= wall.thickness()) && usage.utilisation() <= 1) {
            return make.cannot(
                    name,
                    Text.words("the wall gives way by more than its thickness, where the rule does not hold; ")
                            .plus(note));
        }
        return make.compare(name, usage, worst, note);
    }
}
