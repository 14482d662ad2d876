// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.Analysis;
import tipwright.analysis.BodyPosition;
import tipwright.design.Design;
import tipwright.design.tank.Door;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.DoorSwing;
import tipwright.outline.Form;
import tipwright.outline.MachinePart;
import tipwright.outline.MachinePart.Basis;
import tipwright.outline.PartKind;

/**
 * Doors that swing in the side view. A door that opens swings from shut to where it hangs or
 * stands open at that tilt; every place on its way counts. One that hangs is looked at plumb, and swung out by what runs past it.
 */
final class SwingingDoors {
    private static final double LEVEL = 1e-6;
    private static final double NEARLY = 1e-9;

    private SwingingDoors() {}

    /** A door and its way. */
    record Swing(MachinePart door, Motions.Path path) {}

    /** The doors that hinge along the pivot; one that hangs has two ways. */
    static List<Swing> doors(Analysis analysis, Motions motions) {
        List<Swing> all = new ArrayList<>();
        int body = analysis.mechanism().tank();
        for (Opening opening : analysis.design().tank().openings()) {
            Door door = opening.door();
            if (door != null && alongPivot(door)) {
                Form form = new Form.Pieces(List.of(DoorSwing.plate(opening)));
                for (ToDoubleFunction<BodyPosition> opener : openers(analysis, opening, door)) {
                    MachinePart part = new MachinePart(PartKind.DOOR, name(opening), body, Basis.LEAST, form);
                    all.add(new Swing(part, swing(motions, body, opening, door, opener)));
                }
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

    /** How it swings open: swung out a little and, where it hangs at some tilt, plumb as well. */
    private static List<ToDoubleFunction<BodyPosition>> openers(Analysis analysis, Opening opening, Door door) {
        ToDoubleFunction<BodyPosition> out = DoorSwing.opener(opening, door);
        ToDoubleFunction<BodyPosition> plumb = DoorSwing.plumb(opening, door);
        int body = analysis.mechanism().tank();
        boolean hangs = analysis.poses().stream()
                .map(pose -> pose.bodies().get(body))
                .anyMatch(tank -> out.applyAsDouble(tank) != plumb.applyAsDouble(tank));
        return hangs ? List.of(out, plumb) : List.of(out);
    }

    private static Motions.Path swing(
            Motions motions, int body, Opening opening, Door door, ToDoubleFunction<BodyPosition> opener) {
        Motions.Path tank = motions.body(body);
        double opens = opening.opensAt();
        return pose -> {
            int i = (int) Math.min(pose, motions.last());
            BodyPosition before = swung(tank.at(i), opener, door, i > 0 && motions.tilt(i) >= opens - NEARLY);
            if (!(pose > i)) {
                return before;
            }
            boolean open = motions.tilt(i + 1) >= opens - NEARLY;
            return before.towards(swung(tank.at(i + 1), opener, door, open), pose - i);
        };
    }

    private static BodyPosition swung(
            BodyPosition tank, ToDoubleFunction<BodyPosition> opener, Door door, boolean open) {
        if (!open) {
            return tank;
        }
        // the hinge axis points to the reader or away; a swing about it is the other way round than a tilt
        double turn = tank.turn() - Math.signum(door.hingeAxis().z()) * opener.applyAsDouble(tank);
        Vec2 hinge = door.hinge().xy();
        return new BodyPosition(tank.body(), tank.place(hinge).minus(hinge.tilted(turn)), turn);
    }
}
