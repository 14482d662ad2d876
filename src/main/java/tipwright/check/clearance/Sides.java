// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rod;
import tipwright.design.actuator.Tube;
import tipwright.design.around.Frame;
import tipwright.design.around.Ground;
import tipwright.design.around.SidePart;
import tipwright.design.drive.LinkPart;
import tipwright.design.tank.Attached;
import tipwright.design.tank.Tank;
import tipwright.design.tank.Wall;
import tipwright.geometry.Mesh;
import tipwright.geometry.Range;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Gathers all the parts of a design that can run into each other. */
final class Sides {
    private static final double SAG_SHARE = 1.0 / 2000;
    private static final double FAR = 100;
    private static final Vec3 Z = new Vec3(0, 0, 1);

    private final Analysis analysis;
    private final Design design;
    private final Motions motions;
    private final List<Solo> all = new ArrayList<>();

    private Sides(Analysis analysis, Motions motions) {
        this.analysis = analysis;
        this.design = analysis.design();
        this.motions = motions;
    }

    /** Every part, those that move first. */
    static List<Solo> of(Analysis analysis, Motions motions) {
        Sides sides = new Sides(analysis, motions);
        sides.tank();
        sides.links();
        sides.actuators();
        sides.still();
        return sides.all;
    }

    private void tank() {
        int body = analysis.mechanism().tank();
        Tank tank = design.tank();
        Solid solid = tank.interior().solid();
        Range across = solid.extent(Z);
        Wall wall = tank.wall();
        double thick = wall == null ? 0 : wall.thickness();
        Zone zone = new Zone(across.low() - thick, across.high() + thick);
        Solo.Outline outline = tank.outline().isEmpty() ? outside(solid, thick) : fixed(tank.outline());
        all.add(new Solo("tank", Solo.Kind.TANK, body, outline, zone, motions.body(body)));
        for (Attached part : tank.attached()) {
            if (!part.outline().isEmpty()) {
                all.add(new Solo(
                        part.name(),
                        Solo.Kind.TANK,
                        body,
                        fixed(part.outline()),
                        Zone.of(part.z()),
                        motions.body(body)));
            }
        }
    }

    /** The inside's silhouette swollen by the wall, by the zone that is looked at. */
    private static Solo.Outline outside(Solid solid, double wall) {
        Range tall = solid.extent(new Vec3(0, 1, 0));
        Mesh mesh = solid.mesh(SAG_SHARE * tall.span());
        boolean convex = solid.convex();
        Map<Zone, Geometry> made = new HashMap<>();
        return zone -> made.computeIfAbsent(
                zone, z -> Flat.thick(Flat.silhouette(mesh, new Zone(z.from() - wall, z.to() + wall), convex), wall));
    }

    private static Solo.Outline fixed(List<Vec2> corners) {
        Geometry polygon = Flat.polygon(corners);
        return zone -> polygon;
    }

    private void links() {
        for (LinkPart part : design.links()) {
            for (int body : motions.named(part.body())) {
                all.add(new Solo(
                        part.body(),
                        body == 0 ? Solo.Kind.FRAME : Solo.Kind.LINK,
                        body,
                        fixed(part.outline()),
                        Zone.of(part.z()),
                        motions.body(body)));
            }
        }
    }

    private void actuators() {
        List<Pose> poses = analysis.poses();
        double shortest = poses.stream().mapToDouble(Pose::length).min().orElse(0);
        double longest = poses.stream().mapToDouble(Pose::length).max().orElse(0);
        List<PlacedActuator> actuators = design.drive().actuators();
        for (int i = 0; i < actuators.size(); i++) {
            PlacedActuator placed = actuators.get(i);
            String name = actuators.size() == 1 ? "actuator" : "actuator " + (i + 1);
            Tube tube = placed.actuator().tube();
            Rod rod = placed.actuator().rod();
            double rodHalf = rod == null ? 0 : rod.diameter() / 2;
            double tubeHalf = tube == null ? rodHalf : tube.outside() / 2;
            double tubeLength = Math.min(shortest, tube == null ? shortest : tube.length());
            double rodLength = Math.min(shortest, Math.max(longest - tubeLength, shortest / 2));
            half(name + " tube", Solo.Kind.TUBE, Flat.bar(0, tubeLength, tubeHalf), placed.z(), tubeHalf);
            half(name + " rod", Solo.Kind.ROD, Flat.bar(-rodLength, 0, rodHalf), placed.z(), rodHalf);
        }
    }

    private void half(String name, Solo.Kind kind, Geometry bar, double z, double half) {
        if (half > 0) {
            boolean tube = kind == Solo.Kind.TUBE;
            int body = tube
                    ? analysis.mechanism().actuatorFrom()
                    : analysis.mechanism().actuatorTo();
            Motions.Path path = tube ? motions.tube() : motions.rod();
            all.add(new Solo(name, kind, body, zone -> bar, Zone.around(z, half), path));
        }
    }

    private void still() {
        Frame frame = design.frame();
        if (frame != null) {
            frame.members().forEach(m -> still(m, m.rest() ? Solo.Kind.REST : Solo.Kind.FRAME));
        }
        design.obstacles().forEach(o -> still(o, o.rest() ? Solo.Kind.REST : Solo.Kind.OBSTACLE));
        Ground ground = design.ground();
        if (ground != null) {
            double y = ground.y();
            List<Vec2> half =
                    List.of(new Vec2(-FAR, y - FAR), new Vec2(FAR, y - FAR), new Vec2(FAR, y), new Vec2(-FAR, y));
            all.add(new Solo("ground", Solo.Kind.GROUND, 0, fixed(half), Zone.ALL, motions.body(0)));
        }
    }

    private void still(SidePart part, Solo.Kind kind) {
        all.add(new Solo(part.name(), kind, 0, fixed(part.outline()), Zone.of(part.z()), motions.body(0)));
    }

    /** Whether the design lists anything the moving parts could hit. */
    static boolean any(Design design) {
        Frame frame = design.frame();
        return (frame != null && !frame.members().isEmpty())
                || !design.obstacles().isEmpty()
                || design.ground() != null;
    }
}
