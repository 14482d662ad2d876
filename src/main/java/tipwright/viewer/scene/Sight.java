// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.List;
import java.util.Optional;
import tipwright.analysis.BodyPosition;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachinePart;
import tipwright.outline.MachinePose;
import tipwright.outline.PartKind;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.editor.PartOfMachine;

/** Which part a line of sight meets first. */
final class Sight {
    private static final double EPS = 1e-12;

    private final MachineOutline machine;
    private final Mesh inside;

    /**
     * Of a machine.
     *
     * @param inside of the tank, m
     */
    Sight(MachineOutline machine, Mesh inside) {
        this.machine = machine;
        this.inside = inside;
    }

    /**
     * The part; the contents where the sight goes through the tank's wall into them.
     *
     * @param from where the eye is, m
     * @param way of the sight
     */
    Optional<PartOfMachine> first(Vec3 from, Vec3 way, MachineState now) {
        MachinePose pose = now.configuration(false);
        MachinePart nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (MachinePart part : machine.parts()) {
            if (part.kind().limit() || part.kind() == PartKind.GROUND) {
                continue;
            }
            BodyPosition axes = pose.axes(part);
            double far = meets(part.form().bodies(machine.across()), from, way, axes);
            if (far < least) {
                least = far;
                nearest = part;
            }
        }
        if (nearest == null) {
            return Optional.empty();
        }
        boolean load = nearest.kind() == PartKind.TANK && load(from, way, now);
        return Optional.of(load ? PartOfMachine.LOAD : part(nearest.kind()));
    }

    /** Whether it gets into the contents. */
    private boolean load(Vec3 from, Vec3 way, MachineState now) {
        var fill = now.fill();
        if (fill == null) {
            return false;
        }
        Mesh lying = tipwright.geometry.MeshCut.below(inside, fill.surface());
        BodyPosition tank = now.tank();
        return Double.isFinite(meets(List.of(lying), from, way, tank));
    }

    /** How far to the first triangle, in lengths of the way; infinite when it meets none. */
    private static double meets(List<Mesh> meshes, Vec3 from, Vec3 way, BodyPosition axes) {
        Vec2 eye = axes.stowed(from.xy());
        Vec2 flat = way.xy().tilted(-axes.turn());
        Vec3 o = new Vec3(eye.x(), eye.y(), from.z());
        Vec3 d = new Vec3(flat.x(), flat.y(), way.z());
        double least = Double.POSITIVE_INFINITY;
        for (Mesh mesh : meshes) {
            int[] corners = mesh.corners();
            for (int i = 0; i < corners.length; i += 3) {
                double far =
                        meets(o, d, mesh.vertex(corners[i]), mesh.vertex(corners[i + 1]), mesh.vertex(corners[i + 2]));
                least = Math.min(least, far);
            }
        }
        return least;
    }

    /** Source: T. Moeller and B. Trumbore, Fast, minimum storage ray/triangle intersection (1997), from memory. */
    private static double meets(Vec3 o, Vec3 d, Vec3 a, Vec3 b, Vec3 c) {
        Vec3 ab = b.minus(a);
        Vec3 ac = c.minus(a);
        Vec3 p = d.cross(ac);
        double det = ab.dot(p);
        if (Math.abs(det) < EPS) {
            return Double.POSITIVE_INFINITY;
        }
        Vec3 t = o.minus(a);
        double u = t.dot(p) / det;
        Vec3 q = t.cross(ab);
        double v = d.dot(q) / det;
        double far = ac.dot(q) / det;
        return u < 0 || v < 0 || u + v > 1 || far <= 0 ? Double.POSITIVE_INFINITY : far;
    }

    /** As a builder speaks of it. */
    static PartOfMachine part(PartKind kind) {
        return switch (kind) {
            case TANK, ATTACHED, OPENING, DOOR, CRADLE -> PartOfMachine.TANK;
            case CONTENTS -> PartOfMachine.LOAD;
            case BEARING, SHAFT -> PartOfMachine.PIVOT;
            case TUBE, ROD, LINK, SPRING, WEIGHT -> PartOfMachine.ACTUATOR;
            case PIN, LUG -> PartOfMachine.JOINTS;
            default -> PartOfMachine.FRAME;
        };
    }
}
