// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rod;
import tipwright.design.actuator.Tube;
import tipwright.design.around.Frame;
import tipwright.design.around.Ground;
import tipwright.design.around.SidePart;
import tipwright.design.around.Wheels;
import tipwright.design.drive.LinkPart;
import tipwright.design.tank.Attached;
import tipwright.design.tank.Tank;
import tipwright.design.tank.Wall;
import tipwright.geometry.Range;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Vessel;
import tipwright.outline.MachinePart.Basis;

/** The parts of a machine that can run into each other, as far as the design tells of them. */
public final class MachineParts {
    /** How far curved walls are off, over the height of the tank. */
    private static final double SAG_SHARE = 1.0 / 2000;

    private static final double FAR = 100;
    private static final Vec3 Z = new Vec3(0, 0, 1);

    private final Analysis analysis;
    private final Design design;
    private final List<MachinePart> all = new ArrayList<>();

    private MachineParts(Analysis analysis) {
        this.analysis = analysis;
        this.design = analysis.design();
    }

    /** Every part, those that move first. */
    public static List<MachinePart> of(Analysis analysis) {
        MachineParts parts = new MachineParts(analysis);
        parts.tank();
        parts.links();
        parts.actuators();
        parts.still();
        return parts.all;
    }

    private void tank() {
        int body = analysis.mechanism().tank();
        all.add(new MachinePart(
                PartKind.TANK,
                "tank",
                body,
                Basis.GIVEN,
                tank(design.tank(), analysis.vessel().in(design))));
        for (Attached part : design.tank().attached()) {
            for (Attached.Side side : part.sides()) {
                all.add(new MachinePart(
                        PartKind.ATTACHED,
                        part.name(),
                        body,
                        Basis.GIVEN,
                        Form.Drawn.of(side.outline(), ZRange.of(side.z()))));
            }
        }
    }

    /** The tank's outside: its own outline where the design gives one, else the inside swollen by the wall. */
    private static Form tank(Tank tank, Vessel vessel) {
        Solid solid = vessel.solid();
        Wall wall = tank.wall();
        double thick = wall == null ? 0 : wall.thickness();
        if (tank.outline().isEmpty()) {
            return vessel.kept(Form.Body.class, thick, () -> new Form.Body(inside(solid), solid.convex(), thick));
        }
        Range across = solid.extent(Z);
        return Form.Drawn.of(tank.outline(), new ZRange(across.low() - thick, across.high() + thick));
    }

    /** The inside as a mesh that is near enough to tell gaps. */
    static tipwright.geometry.Mesh inside(Solid solid) {
        Range tall = solid.extent(new Vec3(0, 1, 0));
        return solid.mesh(SAG_SHARE * tall.span());
    }

    private void links() {
        for (LinkPart part : design.links()) {
            List<String> bodies = analysis.mechanism().bodies();
            for (int body = 0; body < bodies.size(); body++) {
                if (bodies.get(body).equals(part.body())) {
                    all.add(new MachinePart(
                            body == 0 ? PartKind.FRAME : PartKind.LINK,
                            part.body(),
                            body,
                            Basis.GIVEN,
                            Form.Drawn.of(part.outline(), ZRange.of(part.z()))));
                }
            }
        }
    }

    private void actuators() {
        double shortest = analysis.lengths().low();
        double longest = analysis.lengths().high();
        List<PlacedActuator> actuators = design.drive().actuators();
        for (int i = 0; i < actuators.size(); i++) {
            PlacedActuator placed = actuators.get(i);
            String name = name(actuators, i);
            Tube tube = placed.actuator().tube();
            Rod rod = placed.actuator().rod();
            double rodHalf = rod == null ? 0 : rod.diameter() / 2;
            double tubeHalf = tube == null ? rodHalf : tube.outside() / 2;
            double tubeLength = Math.min(shortest, tube == null ? shortest : tube.length());
            double rodLength = Math.min(shortest, Math.max(longest - tubeLength, shortest / 2));
            Basis known = tube == null ? Basis.LEAST : Basis.GIVEN;
            half(PartKind.TUBE, name + " tube", known, 0, tubeLength, placed.z(), tubeHalf);
            half(PartKind.ROD, name + " rod", Basis.GIVEN, -rodLength, 0, placed.z(), rodHalf);
        }
    }

    static String name(List<PlacedActuator> actuators, int i) {
        return actuators.size() == 1 ? "actuator" : "actuator " + (i + 1);
    }

    private void half(PartKind kind, String name, Basis basis, double from, double to, double z, double half) {
        if (half > 0) {
            boolean tube = kind == PartKind.TUBE;
            int body = tube
                    ? analysis.mechanism().actuatorFrom()
                    : analysis.mechanism().actuatorTo();
            all.add(new MachinePart(kind, name, body, basis, bar(from, to, z, half)));
        }
    }

    /** A bar along the actuator's line. */
    static Form bar(double from, double to, double z, double half) {
        return Form.Drawn.of(OutlineGeometry.barCorners(from, to, half), ZRange.around(z, half));
    }

    private void still() {
        Frame frame = design.frame();
        if (frame != null) {
            frame.members().forEach(m -> still(m, m.rest() ? PartKind.REST : PartKind.FRAME));
            wheels(frame.wheels());
        }
        design.obstacles().forEach(o -> still(o, o.rest() ? PartKind.REST : PartKind.OBSTACLE));
        Ground ground = design.ground();
        if (ground != null) {
            double y = ground.y();
            List<Vec2> half =
                    List.of(new Vec2(-FAR, y - FAR), new Vec2(FAR, y - FAR), new Vec2(FAR, y), new Vec2(-FAR, y));
            all.add(new MachinePart(PartKind.GROUND, "ground", 0, Basis.GIVEN, Form.Drawn.of(half, ZRange.ALL)));
        }
    }

    private void wheels(@Nullable Wheels wheels) {
        if (wheels == null) {
            return;
        }
        int number = 0;
        for (double z : wheels.sides()) {
            number++;
            Form tyre = new Form.Round(wheels.axle(), wheels.diameter() / 2, ZRange.around(z, wheels.width() / 2));
            all.add(new MachinePart(PartKind.WHEEL, "wheel " + number, 0, Basis.GIVEN, tyre));
        }
    }

    private void still(SidePart part, PartKind kind) {
        all.add(new MachinePart(kind, part.name(), 0, Basis.GIVEN, Form.Drawn.of(part.outline(), ZRange.of(part.z()))));
    }

    /** Whether the design lists anything the moving parts could hit. */
    public static boolean any(Design design) {
        Frame frame = design.frame();
        return (frame != null && (!frame.members().isEmpty() || frame.wheels() != null))
                || !design.obstacles().isEmpty()
                || design.ground() != null;
    }
}
