// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.drive.Assist;
import tipwright.design.drive.Counterweight;
import tipwright.design.drive.LineSpring;
import tipwright.design.joint.Support;
import tipwright.design.tank.Door;
import tipwright.design.tank.Opening;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.MeshCut;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;
import tipwright.load.HungDoor;
import tipwright.outline.MachinePart.Basis;

/** The outlines of a machine at any tilt, from the side, from above and from the dump end. Owned by one caller. */
public final class MachineOutline {
    private static final double MARGIN = 0.05;
    private static final int ROUND = 16;

    private final Analysis analysis;
    private final Design design;
    private final List<MachinePart> parts = new ArrayList<>();
    private final ZRange across;
    private final Room room;
    private final Solid inside;
    private @Nullable Mesh mesh;

    /** Of an analysed design. */
    public MachineOutline(Analysis analysis) {
        this.analysis = analysis;
        design = analysis.design();
        inside = design.tank().interior().solid();
        parts.addAll(MachineParts.of(analysis));
        parts.addAll(FittingParts.of(analysis));
        across = width();
        room = Room.of(analysis, parts, across);
        parts.addAll(SketchedParts.of(analysis, room));
    }

    /**
     * A part where it is.
     *
     * @param kind what it is
     * @param name in the builder's words
     * @param body number of the body that it moves with
     * @param basis how far the design tells its shape
     * @param lines of its outline in the view, those behind first, m
     */
    public record Seen(PartKind kind, String name, int body, Basis basis, List<Contour> lines) {
        /** Copies the list. */
        public Seen {
            lines = List.copyOf(lines);
        }

        /** Whether its shape is made up. */
        public boolean sketched() {
            return basis == Basis.SKETCHED;
        }

        /** Points that tell how much room it takes, m. */
        public List<Vec2> corners() {
            return lines.stream().flatMap(c -> c.corners().stream()).toList();
        }
    }

    /** The parts whose shape does not change with the tilt, in their own axes. */
    public List<MachinePart> parts() {
        return List.copyOf(parts);
    }

    /** What 'all the way across' means in its pictures. */
    public ZRange across() {
        return across;
    }

    /** The room that it takes at all tilts. */
    public Room room() {
        return room;
    }

    /** All its parts at a tilt, those behind first. */
    public List<Seen> at(MachinePose now, View view) {
        List<Seen> all = new ArrayList<>();
        for (MachinePart part : parts) {
            if (part.basis() != Basis.LEAST) {
                all.add(seen(part, view, p -> now.place(part, p)));
            }
        }
        all.addAll(changing(now, view));
        return layered(all);
    }

    /** The parts that keep their shape, from the side, each in its own axes: the actuator's halves in theirs, those behind first. */
    public List<Seen> fixed() {
        return layered(parts.stream()
                .filter(part -> part.basis() != Basis.LEAST)
                .map(part -> seen(part, View.SIDE, p -> p))
                .toList());
    }

    /** The parts whose shape changes with the tilt: contents, doors, stages, springs; those behind first. */
    public List<Seen> changing(MachinePose now, View view) {
        List<Seen> all = new ArrayList<>();
        contents(now, view, all);
        doors(now, view, all);
        stages(now, view, all);
        for (Assist assist : design.assists()) {
            assist(assist, now, view, all);
        }
        return layered(all);
    }

    private Seen seen(MachinePart part, View view, UnaryOperator<Vec3> place) {
        List<Contour> lines = part.form().seen(view, place, across);
        return new Seen(part.kind(), part.name(), part.body(), part.basis(), lines);
    }

    /** Those behind first. */
    private static List<Seen> layered(List<Seen> parts) {
        return parts.stream()
                .sorted(Comparator.comparingInt(seen -> seen.kind().layer()))
                .toList();
    }

    /** The tank's outline at a tilt, seen from the side, m; its holes after it. */
    public List<List<Vec2>> tank(MachinePose now) {
        return parts.stream()
                .filter(p -> p.kind() == PartKind.TANK)
                .flatMap(p -> p.form().seen(View.SIDE, q -> now.place(p, q), across).stream())
                .map(Contour::corners)
                .toList();
    }

    private ZRange width() {
        ZRange all = new ZRange(-MARGIN, MARGIN);
        for (MachinePart part : parts) {
            // what goes all the way across reaches from rail to rail, not to the outside of the wheels
            all = part.kind() == PartKind.WHEEL ? all : all.with(part.form().z());
        }
        for (Support s : design.pivot().bearings()) {
            all = all.with(ZRange.around(s.z(), MARGIN));
        }
        for (Assist assist : design.assists()) {
            if (assist instanceof LineSpring line) {
                all = all.with(ZRange.around(line.z(), MARGIN));
            } else if (assist instanceof Counterweight weight) {
                all = all.with(ZRange.around(weight.centre().z(), AssistOutline.edge(weight) / 2));
            }
        }
        for (PlacedActuator a : design.drive().actuators()) {
            all = all.with(ZRange.around(a.z(), MARGIN));
        }
        return all;
    }

    private void contents(MachinePose now, View view, List<Seen> all) {
        Fill fill = now.fill();
        if (fill == null) {
            return;
        }
        Mesh whole = mesh == null ? MachineParts.inside(inside).welded() : mesh;
        mesh = whole;
        Mesh part = MeshCut.below(whole, fill.surface());
        if (fill.slope() != null && part.triangles() > 0) {
            part = MeshCut.below(part, fill.slope());
        }
        if (part.triangles() > 0) {
            MachinePart tank = new MachinePart(
                    PartKind.CONTENTS,
                    fill.stuff() == Fill.Stuff.CAKE ? "grit" : "slurry",
                    analysis.mechanism().tank(),
                    Basis.GIVEN,
                    new Form.Body(part, inside.convex(), 0));
            List<Contour> lines = tank.form().seen(view, p -> now.place(tank, p), across);
            all.add(new Seen(tank.kind(), tank.name(), tank.body(), tank.basis(), lines));
        }
    }

    private void doors(MachinePose now, View view, List<Seen> all) {
        int body = analysis.mechanism().tank();
        for (Opening opening : design.tank().openings()) {
            Door door = opening.door();
            if (door == null || opening.rimPoints().size() < 3) {
                continue;
            }
            double angle = DoorSwing.angle(opening, door, body, now);
            HungDoor hung = HungDoor.of(opening, door, opening.middle());
            Form plate = new Form.Pieces(List.of(DoorSwing.plate(opening)));
            MachinePart part = new MachinePart(PartKind.DOOR, opening.name() + " door", body, Basis.SKETCHED, plate);
            List<Contour> lines = plate.seen(view, p -> now.place(part, hung.swung(p, angle)), across);
            all.add(new Seen(part.kind(), part.name(), body, part.basis(), lines));
        }
    }

    /** Stages of telescopic cylinders, and rods that are not given; the part that is out of the tube. */
    private void stages(MachinePose now, View view, List<Seen> all) {
        List<PlacedActuator> actuators = design.drive().actuators();
        double length = now.tankPin().minus(now.framePin()).norm();
        for (int i = 0; i < actuators.size(); i++) {
            PlacedActuator placed = actuators.get(i);
            if (placed.actuator().rod() != null) {
                continue;
            }
            for (ActuatorShape.Piece piece : ActuatorShape.out(placed.actuator(), length)) {
                Form form = MachineParts.bar(piece.from() - length, piece.to() - length, placed.z(), piece.radius());
                String name = MachineParts.name(actuators, i) + " rod";
                MachinePart rod =
                        new MachinePart(PartKind.ROD, name, analysis.mechanism().actuatorTo(), Basis.SKETCHED, form);
                List<Contour> lines = form.seen(view, p -> now.place(rod, p), across);
                all.add(new Seen(rod.kind(), name, rod.body(), rod.basis(), lines));
            }
        }
    }

    private void assist(Assist assist, MachinePose now, View view, List<Seen> all) {
        boolean weight = assist instanceof Counterweight;
        PartKind kind = weight ? PartKind.WEIGHT : PartKind.SPRING;
        int body = weight ? body(((Counterweight) assist).body()) : 0;
        List<Contour> lines = view == View.SIDE
                ? AssistOutline.of(design, assist, now::place)
                : new Form.Pieces(List.of(solid(assist, now))).seen(view, p -> p, across);
        all.add(new Seen(kind, assist.name(), body, Basis.SKETCHED, lines));
    }

    private int body(String name) {
        return Math.max(0, analysis.mechanism().bodies().indexOf(name));
    }

    /** About how thick it is, for the views in which its windings do not show. */
    private Mesh solid(Assist assist, MachinePose now) {
        if (assist instanceof LineSpring line) {
            Vec2 a = now.place(body(line.from().body()), line.from().at());
            Vec2 b = now.place(body(line.to().body()), line.to().at());
            double radius = AssistOutline.radius(line);
            return Forms.rod(new Vec3(a.x(), a.y(), line.z()), new Vec3(b.x(), b.y(), line.z()), radius, ROUND);
        }
        if (assist instanceof Counterweight weight) {
            Vec2 c = now.place(body(weight.body()), weight.centre().xy());
            double half = AssistOutline.edge(weight) / 2;
            Vec3 middle = new Vec3(c.x(), c.y(), weight.centre().z());
            Vec3 up = new Vec3(0, half, 0);
            return Forms.beam(middle.minus(up), middle.plus(up), 2 * half, 2 * half, new Vec3(0, 0, 1));
        }
        List<Vec2> wound = AssistOutline.of(design, assist, now::place).get(0).corners();
        Vec2 pin = wound.stream().reduce(Vec2.ZERO, Vec2::plus).times(1.0 / wound.size());
        double z = design.pivot().bearings().get(0).z();
        return Forms.rod(new Vec3(pin.x(), pin.y(), z), new Vec3(pin.x(), pin.y(), z + 2 * MARGIN), MARGIN, ROUND);
    }
}
