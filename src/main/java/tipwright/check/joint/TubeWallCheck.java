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
import tipwright.design.Design;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.around.CrossMember;
import tipwright.design.around.Frame;
import tipwright.design.drive.Drive;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec3;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.OutOfRangeException;
import tipwright.strength.TubeFace;

/** The face of the hollow cross member under the bracket that is welded to it. */
public final class TubeWallCheck implements Check {
    @Override
    public String id() {
        return "tube-wall";
    }

    @Override
    public String title() {
        return "Wall of the cross member: pressed in by the bracket";
    }

    @Override
    public String title(String part) {
        return part.isEmpty()
                ? title()
                : "Wall of the cross member at " + Titles.the(part) + ": pressed in by the bracket";
    }

    @Override
    public String rule() {
        return "A bracket on the face of a hollow section pushes, pulls and bends it: the face yields along lines, or the bracket punches through; a bracket nearly as wide as the face, or wider, loads the side walls, whose yielding then counts. A moment counts as twice itself over the bracket's size, which is on the safe side of the rule for moments.";
    }

    @Override
    public String formula() {
        return "N + 2 Mu/u + 2 Mv/v <= NRd / factor; NRd = fy t^2 (2 eta/(1 - beta) + 4/sqrt(1 - beta)), beta = b/b0 to 0.85; from 1 on fy t (2 u + 10 t); between them a straight line; punching fy/sqrt(3) t (2 u + 2 bep)";
    }

    @Override
    public String source() {
        return "EN 1993-1-8 table 7.11 (face: public page, read; side walls and punching from memory)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BEARS_DRIVE);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.CROSS_MEMBER);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a bracket or pad about as wide as the face, a longer one, or a thicker tube");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        Frame frame = design.frame();
        CrossMember tube = frame == null ? null : frame.crossMember();
        if (tube == null) {
            return List.of();
        }
        return FasteningParts.each(
                make,
                analysis,
                "weld",
                f -> f.joint().equals(Drive.FRAME_PIN) ? f.weld() : null,
                w -> w.at().z(),
                (name, weld, load) -> List.of(one(make, name, tube, weld, load, design.factors())));
    }

    private static Finding one(
            Findings make, String name, CrossMember tube, FilletWeld weld, JointLoad load, Factors factors) {
        Vec3 n = weld.normal().unit();
        boolean onTop = Math.abs(n.y()) > 0.999;
        if (!onTop && Math.abs(n.x()) < 0.999) {
            return make.cannot(
                    name, "the bracket is on no face of the tube: fastenings: weld.normal is neither x nor y");
        }
        double face = onTop ? tube.width() : tube.height();
        double side = onTop ? tube.height() : tube.width();
        double middle = onTop ? tube.at().y() : tube.at().x();
        double at = onTop ? weld.at().y() : weld.at().x();
        if (Math.abs(Math.abs(at - middle) - side / 2) > side / 4) {
            return make.cannot(name, "the weld does not lie on a face of frame.cross-member");
        }
        Size size = Size.of(weld);
        double bears;
        try {
            bears = strength(tube, face, side, size);
        } catch (OutOfRangeException e) {
            return make.cannot(name, Text.words("out of the rule's range: ").plus(e.reason()));
        }
        Extreme worst = load.worst(held -> pull(held, weld, n, size));
        String how = size.across() > TubeFace.WIDEST * face
                ? "its side walls; the bracket is about as wide as the face"
                : "its face";
        return make.compare(name, new Usage(worst.value(), bears, factors.wall(), Kind.FORCE), worst, Text.words(how));
    }

    /**
     * Footprint of a bracket.
     *
     * @param across the tube, in the side view, m
     * @param along the tube, m
     */
    record Size(double across, double along) {
        static Size of(FilletWeld weld) {
            double u = 0;
            double v = 0;
            for (FilletWeld.Seam s : weld.seams()) {
                u = Math.max(u, 2 * Math.max(Math.abs(s.from().x()), Math.abs(s.to().x())));
                v = Math.max(v, 2 * Math.max(Math.abs(s.from().y()), Math.abs(s.to().y())));
            }
            return new Size(u, v);
        }
    }

    /** Force square to the face that counts for a load, N. */
    static double pull(JointLoad.Held held, FilletWeld weld, Vec3 n, Size size) {
        Vec3 moment = held.at().minus(weld.at()).cross(held.force());
        double aboutAlong = Math.abs(moment.z());
        double aboutAcross = Math.abs(n.y()) > 0.5 ? Math.abs(moment.x()) : Math.abs(moment.y());
        return Math.abs(held.force().dot(n)) + 2 * aboutAlong / size.across() + 2 * aboutAcross / size.along();
    }

    /**
     * Force square to the face that the tube bears, N.
     *
     * @param face its width, m
     * @param side its other size, m
     * @throws OutOfRangeException out of the rule's range
     */
    static double strength(CrossMember tube, double face, double side, Size size) {
        if (side / tube.wall() > 35) {
            throw new OutOfRangeException(Text.words("the side is more than 35 walls high"));
        }
        TubeFace rule = new TubeFace(face, tube.wall(), tube.yield());
        double beta = size.across() / face;
        double walls = tube.yield() * tube.wall() * (2 * size.along() + 10 * tube.wall());
        if (beta >= 1) {
            return walls;
        }
        double width = Math.min(size.across(), widest(face));
        double yields = rule.yielding(width, size.along(), 1);
        double share = Math.max(0, (beta - TubeFace.WIDEST) / (1 - TubeFace.WIDEST));
        double bent = yields + share * (walls - yields);
        return Math.min(bent, rule.punching(width, size.along()));
    }

    /** The widest patch, m, that the rule of a face goes for; rounding must not put it out of that rule's range. */
    private static double widest(double face) {
        double widest = TubeFace.WIDEST * face;
        return widest / face > TubeFace.WIDEST ? Math.nextDown(widest) : widest;
    }
}
