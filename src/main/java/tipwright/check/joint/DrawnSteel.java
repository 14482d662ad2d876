// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.design.Design;
import tipwright.design.around.CrossMember;
import tipwright.design.around.Frame;
import tipwright.design.around.SidePart;
import tipwright.design.drive.LinkPart;
import tipwright.design.joint.Fastening;
import tipwright.design.tank.Attached;
import tipwright.design.tank.BoxInterior;
import tipwright.design.tank.CylinderInterior;
import tipwright.design.tank.Inset;
import tipwright.design.tank.Opening;
import tipwright.design.tank.PrismInterior;
import tipwright.design.tank.Tank;
import tipwright.design.tank.Wall;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.ZRange;

/** What a design draws of a body that a bracket may stand on: frame members and cross member, tank and what is attached to it, links. */
final class DrawnSteel {
    /** A round wall bends away under a foot; half a foot may be so wide, as a share of the wall's radius. */
    private static final double WIDEST = 0.5;

    /** Cosine of the angle up to which a plane lies on a round wall, or an axis in the side view or square to it. */
    private static final double SQUARE = 0.99;

    /** The rim of an opening may be drawn this far inside the face of its wall, m: no wall is thicker. */
    private static final double THROUGH = 0.03;

    private final SteelFaces faces;
    private final Foot foot;
    private final Design design;
    private boolean any;

    private DrawnSteel(Foot foot, Design design) {
        this.foot = foot;
        this.design = design;
        faces = new SteelFaces(foot);
    }

    /**
     * What is known of the steel behind a foot.
     *
     * @param faces those in the foot's plane
     * @param why they tell nothing; empty: they do
     * @param missing whether something that is not drawn would tell
     */
    record Behind(SteelFaces faces, String why, boolean missing) {}

    /**
     * What is behind the foot of a fastening.
     *
     * @param what stands there, as the file calls it: 'weld'
     */
    static Behind behind(Analysis analysis, Fastening fastening, String what, Foot foot) {
        DrawnSteel steel = new DrawnSteel(foot, analysis.design());
        JointLoad load = JointLoad.of(analysis, fastening, foot.at().z());
        if (load == null) {
            return new Behind(steel.faces, FasteningParts.unknown(analysis, fastening), false);
        }
        int body = load.body();
        boolean tank = body == analysis.mechanism().tank();
        String name = analysis.mechanism().bodies().get(body);
        if (body == 0) {
            steel.frame();
        }
        if (tank) {
            steel.tank();
        }
        for (LinkPart link : analysis.design().links()) {
            if (link.body().equals(name)) {
                steel.add(name, link.outline(), link.z());
            }
        }
        if (!steel.faces.none()) {
            boolean opening = tank && opening(foot, analysis.design());
            return new Behind(steel.faces, opening ? "an opening of the tank is too near to the " + what : "", false);
        }
        String key = body == 0 ? "frame.members" : tank ? "tank.attached" : "links";
        String why = steel.any ? key + ": no face in line with the " + what + " is drawn" : key + " missing";
        return new Behind(steel.faces, why, true);
    }

    private void add(String name, List<Vec2> outline, List<Double> z) {
        any = true;
        ZRange across = ZRange.of(z);
        faces.add(name, outline, across.from(), across.to());
    }

    private void frame() {
        Frame frame = design.frame();
        if (frame == null) {
            return;
        }
        for (SidePart member : frame.members()) {
            add(member.name(), member.outline(), member.z());
        }
        CrossMember tube = frame.crossMember();
        if (tube != null) {
            add("cross member", tube.outline(), tube.z());
        }
    }

    private static List<Vec2> rectangle(Vec2 middle, double width, double height) {
        Vec2 up = new Vec2(width / 2, height / 2);
        Vec2 down = new Vec2(width / 2, -height / 2);
        return List.of(middle.minus(up), middle.plus(down), middle.plus(up), middle.minus(down));
    }

    private void tank() {
        Tank tank = design.tank();
        for (Attached part : tank.attached()) {
            for (Attached.Side side : part.sides()) {
                add(part.name(), side.outline(), side.z());
            }
        }
        Wall wall = tank.wall();
        double thick = wall == null ? 0 : wall.thickness();
        if (tank.interior() instanceof CylinderInterior round) {
            any = true;
            round(round, round.diameter() / 2 + thick);
        } else if (tank.interior() instanceof BoxInterior box) {
            Vec3 size = box.size();
            wall(
                    rectangle(box.centre().xy(), size.x() + 2 * thick, size.y() + 2 * thick),
                    box.centre().z(),
                    size.z() / 2 + thick);
        } else if (tank.interior() instanceof PrismInterior prism) {
            wall(Inset.of(prism.outline(), -thick), prism.z(), prism.width() / 2 + thick);
        }
    }

    private void wall(List<Vec2> outside, double z, double half) {
        List<Vec2> outline =
                design.tank().outline().isEmpty() ? outside : design.tank().outline();
        add("tank", outline, List.of(z - half, z + half));
    }

    /** The straight part of a round wall, where the plane lies on it: a plate that is cut to fit it reaches into its bend. */
    private void round(CylinderInterior tank, double radius) {
        Vec3 n = foot.axes().n();
        Vec3 axis = tank.axis().unit();
        Vec3 off = foot.at().minus(tank.centre());
        double along = off.dot(axis);
        Vec3 across = off.minus(axis.times(along));
        double out = across.dot(n);
        boolean upright = Math.abs(axis.dot(foot.axes().v())) > SQUARE;
        boolean lying = Math.abs(axis.dot(foot.axes().u())) > SQUARE;
        double half = foot.half(upright);
        if (!(upright || lying)
                || Math.abs(out) < SQUARE * across.norm()
                || out * foot.side() < 0
                || half > WIDEST * radius) {
            return;
        }
        double bend = radius - Math.sqrt(radius * radius - half * half);
        if (Math.abs(out) < radius - bend - SteelFaces.GAP || Math.abs(out) > radius + SteelFaces.GAP) {
            return;
        }
        double middle = -along
                * Math.signum(axis.dot(upright ? foot.axes().v() : foot.axes().u()));
        double end = tank.length() / 2;
        double wide = WIDEST * radius;
        if (upright) {
            faces.add("tank", -wide, wide, middle - end, middle + end);
        } else {
            faces.add("tank", middle - end, middle + end, -wide, wide);
        }
    }

    /** Whether the room that an opening's rim takes up reaches into that of the foot. */
    private static boolean opening(Foot foot, Design design) {
        for (Opening opening : design.tank().openings()) {
            if (meets(foot, opening.rimPoints())) {
                return true;
            }
        }
        return false;
    }

    private static boolean meets(Foot foot, List<Vec3> rim) {
        if (rim.isEmpty()) {
            return false;
        }
        Vec3[] ways = {foot.axes().u(), foot.axes().v(), foot.axes().n()};
        double[] low = {foot.low().x(), foot.low().y(), -THROUGH};
        double[] high = {foot.high().x(), foot.high().y(), THROUGH};
        for (int i = 0; i < ways.length; i++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (Vec3 p : rim) {
                double at = p.minus(foot.at()).dot(ways[i]);
                least = Math.min(least, at);
                most = Math.max(most, at);
            }
            if (least > high[i] + SteelFaces.GAP || most < low[i] - SteelFaces.GAP) {
                return false;
            }
        }
        return true;
    }
}
