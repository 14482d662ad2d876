// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.JointPlan;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.around.Footing;
import tipwright.design.around.Frame;
import tipwright.design.around.SidePart;
import tipwright.design.around.Wheels;
import tipwright.design.drive.LinkPart;
import tipwright.design.joint.Support;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Strut;
import tipwright.outline.MachinePart.Basis;

/** What a picture needs and a design does not give: a cradle, links as bars, a stand, feet, an actuator's tube. Nothing of it is checked. */
final class SketchedParts {
    private static final Vec3 ACROSS = new Vec3(0, 0, 1);
    private static final Vec3 ALONG = new Vec3(1, 0, 0);
    private static final int ROUND = 16;

    private final Analysis analysis;
    private final Design design;
    private final Room room;
    private final double bar;
    private final Strut strut;
    private final List<MachinePart> all = new ArrayList<>();

    private SketchedParts(Analysis analysis, Room room) {
        this.analysis = analysis;
        this.room = room;
        design = analysis.design();
        bar = room.bar();
        strut = design.drive().skeleton(design.pivot().at()).actuator();
    }

    static List<MachinePart> of(Analysis analysis, Room room) {
        SketchedParts parts = new SketchedParts(analysis, room);
        parts.bodies();
        parts.tubes();
        parts.stand();
        parts.feet();
        parts.all.addAll(Hangers.of(analysis, room.bar()));
        return parts.all;
    }

    private void add(PartKind kind, String name, int body, List<Mesh> pieces) {
        if (!pieces.isEmpty()) {
            all.add(new MachinePart(kind, name, body, Basis.SKETCHED, new Form.Pieces(pieces)));
        }
    }

    /** A cradle between the tank's pins, and bars for links whose outline is not given. */
    private void bodies() {
        List<String> names = analysis.mechanism().bodies();
        for (int body = 1; body < names.size(); body++) {
            boolean tank = body == analysis.mechanism().tank();
            String name = names.get(body);
            if (tank || design.links().stream().map(LinkPart::body).noneMatch(name::equals)) {
                add(tank ? PartKind.CRADLE : PartKind.LINK, tank ? "cradle" : name, body, bars(body, tank));
            }
        }
    }

    private List<Mesh> bars(int body, boolean tank) {
        List<Vec2> pins = pins(body);
        List<Mesh> bars = new ArrayList<>();
        double[] sides = sides(tank ? bar : 2.4 * bar);
        List<Vec3> wall = tank ? wall() : List.of();
        for (double z : sides) {
            for (int i = 0; i < pins.size(); i++) {
                for (int j = i + 1; j < pins.size(); j++) {
                    beam(bars, at(pins.get(i), z), at(pins.get(j), z));
                }
                if (tank) {
                    beam(bars, at(pins.get(i), z), nearest(wall, at(pins.get(i), z)));
                }
            }
        }
        for (Vec2 p : pins) {
            bars.add(Forms.rod(at(p, sides[0]), at(p, sides[1]), 0.3 * bar, ROUND));
        }
        return bars;
    }

    private void beam(List<Mesh> bars, Vec3 a, Vec3 b) {
        if (b.minus(a).norm() > 1e-6) {
            bars.add(Forms.beam(a, b, 0.5 * bar, bar, ACROSS));
        }
    }

    private List<Vec2> pins(int body) {
        List<Vec2> pins = new ArrayList<>();
        for (JointPlan joint : analysis.mechanism().joints()) {
            if (joint.a() == body || joint.b() == body) {
                pins.add(joint.at());
            }
        }
        if (strut.a() == body) {
            pins.add(strut.onA());
        }
        if (strut.b() == body) {
            pins.add(strut.onB());
        }
        return pins;
    }

    /** Where the two rails run: inside the bearings. */
    private double[] sides(double inner) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Support s : design.pivot().bearings()) {
            low = Math.min(low, s.z());
            high = Math.max(high, s.z());
        }
        double step = Math.min(1.6 * inner, 0.4 * (high - low));
        return new double[] {low + step, high - step};
    }

    /** Points of the tank's wall, m. */
    private List<Vec3> wall() {
        Mesh inside = MachineParts.inside(design.tank().interior().solid());
        List<Vec3> points = new ArrayList<>();
        for (int i = 0; i < inside.xyz().length / 3; i++) {
            points.add(inside.vertex(i));
        }
        return points;
    }

    /** The point of the wall straight above, or else the nearest: where a strut to it would end. */
    private static Vec3 nearest(List<Vec3> wall, Vec3 from) {
        Vec3 best = from;
        double least = Double.POSITIVE_INFINITY;
        for (Vec3 p : wall) {
            Vec3 d = p.minus(from);
            double off = d.x() * d.x() + 0.3 * d.y() * d.y() + d.z() * d.z();
            if (off < least && d.norm() > 1e-6) {
                least = off;
                best = p;
            }
        }
        return best;
    }

    /** Tubes as thick as such a tube commonly is. */
    private void tubes() {
        List<PlacedActuator> actuators = design.drive().actuators();
        for (int i = 0; i < actuators.size(); i++) {
            PlacedActuator placed = actuators.get(i);
            Actuator a = placed.actuator();
            if (a.tube() == null) {
                Form form = MachineParts.bar(0, ActuatorShape.tubeLength(a), placed.z(), ActuatorShape.tubeRadius(a));
                String name = MachineParts.name(actuators, i) + " tube";
                all.add(new MachinePart(PartKind.TUBE, name, strut.a(), Basis.SKETCHED, form));
            }
        }
    }

    /** From the pins that the frame carries down to the ground; only where no member of a frame is given. */
    private void stand() {
        Frame frame = design.frame();
        if (frame != null && !frame.members().isEmpty()) {
            return;
        }
        double z0 = design.pivot().bearings().get(0).z();
        double z1 = design.pivot().bearings().get(1).z();
        double floor = room.ground();
        Vec2 framePin = strut.onA();
        List<Vec2> grounded = new ArrayList<>();
        for (JointPlan j : analysis.mechanism().joints()) {
            if (j.a() == 0 || j.b() == 0) {
                grounded.add(j.at());
            }
        }
        double quarter = room.low().x() + 0.25 * (room.high().x() - room.low().x());
        double left = Math.min(framePin.x(), quarter);
        double right = left;
        for (Vec2 p : grounded) {
            right = Math.max(right, p.x());
            left = Math.min(left, p.x());
        }
        double rail = floor + bar / 2;
        List<Mesh> bars = new ArrayList<>();
        for (double z : new double[] {z0, z1}) {
            bars.add(Forms.beam(at(left - bar, rail, z), at(right + 2 * bar, rail, z), bar, bar, ACROSS));
            for (Vec2 p : grounded) {
                post(bars, p, z, floor, left);
            }
        }
        for (double x : new double[] {left, right}) {
            bars.add(Forms.beam(at(x, rail, z0), at(x, rail, z1), bar, bar, ALONG));
        }
        if (strut.a() == 0) {
            bars.add(Forms.beam(at(framePin.x(), rail, z0), at(framePin.x(), rail, z1), 1.6 * bar, bar, ALONG));
            for (PlacedActuator a : design.drive().actuators()) {
                double half = 1.9 * ActuatorShape.tubeRadius(a.actuator());
                for (double side : new double[] {-half, half}) {
                    Vec3 foot = at(framePin.x(), rail, a.z() + side);
                    Vec3 top = at(framePin.x(), framePin.y() + 0.03, a.z() + side);
                    bars.add(Forms.beam(foot, top, 0.012, 0.09, ACROSS));
                }
            }
        }
        add(PartKind.STAND, "stand", 0, bars);
    }

    private void post(List<Mesh> bars, Vec2 p, double z, double floor, double left) {
        double top = p.y() - 0.06;
        bars.add(Forms.beam(at(p.x(), floor + bar, z), at(p.x(), top, z), bar, 1.2 * bar, ACROSS));
        double back = Math.max(left, p.x() - 0.6 * (top - floor));
        double high = floor + 0.85 * (top - floor);
        bars.add(Forms.beam(at(back, floor + bar, z), at(p.x(), high, z), 0.6 * bar, 0.6 * bar, ACROSS));
    }

    /** From each support to the nearest place under the longest member of the frame. */
    private void feet() {
        Footing footing = design.supports();
        Frame frame = design.frame();
        if (footing == null || frame == null || frame.members().isEmpty()) {
            return;
        }
        SidePart rail =
                Collections.max(frame.members(), Comparator.comparingDouble(part -> end(part, 1) - end(part, -1)));
        double top = rail.outline().stream().mapToDouble(Vec2::y).min().orElse(0);
        double wide = 0;
        for (SidePart part : frame.members()) {
            for (double z : part.z()) {
                wide = Math.max(wide, Math.abs(z));
            }
        }
        Double given = footing.y();
        double floor = given == null ? room.ground() : given;
        int number = 0;
        for (Vec2 foot : footing.outline()) {
            number++;
            List<Mesh> leg = new ArrayList<>();
            Vec3 base = new Vec3(foot.x(), floor, foot.y());
            double x = Math.max(end(rail, -1), Math.min(end(rail, 1), foot.x()));
            double z = Math.max(-wide, Math.min(wide, foot.y()));
            leg.add(Forms.rod(base, base.plus(new Vec3(0, 0.02, 0)), 0.09, 20));
            if (top > floor + 0.03 && !onWheel(frame.wheels(), foot)) {
                leg.add(Forms.rod(base, new Vec3(x, top, z), 0.028, ROUND));
            }
            add(PartKind.FOOT, MachinePart.support(number), 0, leg);
        }
    }

    /** Whether a support is one of the wheels, which is drawn as such. */
    private static boolean onWheel(@Nullable Wheels wheels, Vec2 foot) {
        return wheels != null
                && Math.abs(foot.x() - wheels.axle().x()) < wheels.diameter() / 4
                && wheels.sides().stream().anyMatch(z -> Math.abs(z - foot.y()) < wheels.width());
    }

    /** Largest (1) or smallest (-1) x of a part, m. */
    private static double end(SidePart part, int side) {
        return side
                * part.outline().stream().mapToDouble(p -> side * p.x()).max().orElse(0);
    }

    private static Vec3 at(Vec2 p, double z) {
        return new Vec3(p.x(), p.y(), z);
    }

    private static Vec3 at(double x, double y, double z) {
        return new Vec3(x, y, z);
    }
}
