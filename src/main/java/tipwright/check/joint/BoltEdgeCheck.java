// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Limits;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.BoltHole;

/** Whether the holes for a bracket's bolts keep their distance from the edge of the steel that they are drilled into. */
public final class BoltEdgeCheck implements Check {
    static final String ID = "bolt-edge";

    /** Nearer to the edge than this share of what is wanted, the utilisation goes on in a straight line. */
    private static final double NEAREST = 0.1;

    /** What no tape tells from nothing, m. */
    private static final double SAME = 1e-7;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Bolts: steel around their holes";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Bolts at " + Titles.the(part) + ": steel around their holes";
    }

    @Override
    public String rule() {
        return "Every bolt of a bracket goes through steel that is drawn: a face, in the plane of the bolts, of a frame member, the"
                + " cross member, the tank, what is attached to it, or a link. From the middle of its hole to the nearest edge of"
                + " that face there is at least 1.2 times the hole. Bolts inside a welded rectangle go through the plate that it holds. Where nothing drawn lies in that plane, it cannot tell.";
    }

    @Override
    public String formula() {
        return "e >= 1.2 d0, along and across; d0 = d + 1 mm up to M14, + 2 mm up to M24, + 3 mm above, + 1/16 in of a bolt in inches";
    }

    @Override
    public String source() {
        return "EN 1993-1-8 table 3.3 (from memory); holes: EN 1090-2 table 11, AISC 360 table J3.3 (from memory)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.BOUNDS_MOUNTS, Trait.ASKED_LATE);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.LUG, PartKind.BEARING);
    }

    @Override
    public String bound(String id) {
        return "steel around the bolts";
    }

    @Override
    public Text says(Finding finding) {
        return finding.verdict() == Verdict.FAIL && !(finding.has() > 0)
                ? Text.words(Titles.part(finding.title()) + ": a hole has no steel around it")
                : Check.super.says(finding);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words(
                "a larger plate under the bolts, or bolts nearer to its middle; what is there but not drawn goes under"
                        + " frame: members");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        List<Finding> all = new ArrayList<>();
        for (Fastening f : analysis.design().fastenings()) {
            Bolts bolts = f.bolts();
            if (bolts != null) {
                all.add(one(make, analysis, f, bolts));
            }
        }
        return all;
    }

    private static Finding one(Findings make, Analysis analysis, Fastening fastening, Bolts bolts) {
        String name = fastening.joint();
        Foot foot = Foot.of(bolts, Foot.pin(analysis.design(), fastening));
        if (foot == null) {
            return make.cannot(name, "fastenings: bolts.normal: seen from the side their plane is not edge-on");
        }
        SteelFaces plate = plate(fastening.weld(), bolts, foot);
        DrawnSteel.Behind behind = plate != null
                ? new DrawnSteel.Behind(plate, "", false)
                : DrawnSteel.behind(analysis, fastening, "bolts", foot);
        if (!behind.why().isEmpty()) {
            return make.untold(name, Text.words(behind.why()), behind.missing());
        }
        double edge = Double.POSITIVE_INFINITY;
        int worst = 0;
        for (int i = 0; i < bolts.positions().size(); i++) {
            Vec2 bolt = bolts.positions().get(i);
            double here = behind.faces().toEdge(bolt);
            if (here < edge - SAME) {
                edge = here;
                worst = i + 1;
            }
        }
        double wanted = BoltHole.LEAST_EDGE * BoltHole.diameter(bolts.diameter());
        double there = Math.abs(edge - wanted) < SAME ? wanted : edge;
        return make.atLeast(
                name,
                Math.max(0, there),
                wanted,
                Kind.LENGTH,
                used(there, wanted),
                Extreme.NOWHERE,
                there >= wanted ? Verdict.PASS : Verdict.FAIL,
                Text.words("from the middle of bolt " + worst + "; in line with it: "
                        + behind.faces().names()));
    }

    /** The plate that is welded on around all the bolts, which go through it; null where there is none. */
    private static @Nullable SteelFaces plate(@Nullable FilletWeld weld, Bolts bolts, Foot foot) {
        FilletWeld.Rectangle round = weld == null ? null : weld.rectangle();
        if (weld == null
                || round == null
                || weld.normal().unit().cross(foot.axes().n()).norm() > SAME) {
            return null;
        }
        Vec3 off = weld.at().minus(bolts.at());
        double u = off.dot(foot.axes().u());
        double v = off.dot(foot.axes().v());
        if (Math.abs(off.dot(foot.axes().n())) > SteelFaces.GAP) {
            return null;
        }
        for (Vec2 bolt : bolts.positions()) {
            if (Math.abs(bolt.x() - u) > round.u() / 2 || Math.abs(bolt.y() - v) > round.v() / 2) {
                return null;
            }
        }
        SteelFaces plate = new SteelFaces(foot);
        plate.add(
                "the plate that is welded on",
                u - round.u() / 2,
                u + round.u() / 2,
                v - round.v() / 2,
                v + round.v() / 2);
        return plate;
    }

    private static double used(double there, double wanted) {
        double least = NEAREST * wanted;
        return there >= least ? wanted / there : 1 / NEAREST + (least - there) / least;
    }
}
