// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.BodyPosition;
import tipwright.design.Design;
import tipwright.design.around.Receiver;
import tipwright.design.tank.Door;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.DoorSwing;
import tipwright.outline.Form;
import tipwright.outline.MachinePart;
import tipwright.outline.MachinePart.Basis;
import tipwright.outline.PartKind;
import tipwright.outline.ZRange;

/**
 * Doors that swing in the side view, and the edges of the receiver's mouth. A door that opens swings from shut to where it hangs or
 * stands open at that tilt; every place on its way counts.
 */
final class DoorAndPit {
    private static final double LEVEL = 1e-6;
    private static final double NEARLY = 1e-9;
    /** Thickness of an edge, on the far side of it, m. */
    private static final double THIN = 1e-3;

    private DoorAndPit() {}

    /** The doors that hinge along the pivot, each with its way. */
    static Map<MachinePart, Motions.Path> doors(Analysis analysis, Motions motions) {
        Map<MachinePart, Motions.Path> all = new LinkedHashMap<>();
        int body = analysis.mechanism().tank();
        for (Opening opening : analysis.design().tank().openings()) {
            Door door = opening.door();
            if (door != null && alongPivot(door)) {
                Form form = new Form.Pieces(List.of(DoorSwing.plate(opening)));
                all.put(
                        new MachinePart(PartKind.DOOR, name(opening), body, Basis.LEAST, form),
                        swing(motions, body, opening, door));
            }
        }
        return all;
    }

    /** Openings whose door hinges some other way, so that the side view does not show its swing. */
    static List<String> aside(Design design) {
        List<String> all = new ArrayList<>();
        for (Opening opening : design.tank().openings()) {
            Door door = opening.door();
            if (door != null && !alongPivot(door)) {
                all.add(name(opening));
            }
        }
        return all;
    }

    private static boolean alongPivot(Door door) {
        Vec3 axis = door.hingeAxis().unit();
        return Math.hypot(axis.x(), axis.y()) < LEVEL;
    }

    private static String name(Opening opening) {
        return opening.name().endsWith("door") ? opening.name() : opening.name() + " door";
    }

    private static Motions.Path swing(Motions motions, int body, Opening opening, Door door) {
        Motions.Path tank = motions.body(body);
        double opens = opening.opensAt();
        return pose -> {
            int i = (int) Math.min(pose, motions.last());
            BodyPosition before = swung(tank.at(i), opening, door, i > 0 && motions.tilt(i) >= opens - NEARLY);
            if (!(pose > i)) {
                return before;
            }
            boolean open = motions.tilt(i + 1) >= opens - NEARLY;
            return Motions.between(before, swung(tank.at(i + 1), opening, door, open), pose - i);
        };
    }

    private static BodyPosition swung(BodyPosition tank, Opening opening, Door door, boolean open) {
        if (!open) {
            return tank;
        }
        // the hinge axis points to the reader or away; a swing about it is the other way round than a tilt
        double turn = tank.turn() - Math.signum(door.hingeAxis().z()) * DoorSwing.open(opening, door, tank);
        Vec2 hinge = door.hinge().xy();
        return new BodyPosition(tank.body(), tank.place(hinge).minus(hinge.tilted(turn)), turn);
    }

    /** The two edges of the receiver's mouth, down to the ground where they stand above it. */
    static List<MachinePart> edges(Design design) {
        Receiver receiver = design.receiver();
        if (receiver == null) {
            return List.of();
        }
        Vec2 along = receiver.far().minus(receiver.near()).unit();
        return List.of(
                edge(design, receiver.name() + " near edge", receiver.near(), along.times(-THIN)),
                edge(design, receiver.name() + " far edge", receiver.far(), along.times(THIN)));
    }

    private static MachinePart edge(Design design, String name, Vec2 at, Vec2 away) {
        @Nullable
        Double ground = design.ground() == null ? null : design.ground().y();
        double foot = Math.min(at.y() - THIN, ground == null ? at.y() - THIN : ground);
        Vec2 down = new Vec2(0, foot - at.y());
        List<Vec2> outline = List.of(at, at.plus(down), at.plus(down).plus(away), at.plus(away));
        return new MachinePart(PartKind.RECEIVER, name, 0, Basis.GIVEN, Form.Drawn.of(outline, ZRange.ALL));
    }
}
