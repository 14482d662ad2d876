// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import tipwright.analysis.Analysis;
import tipwright.analysis.BodyPosition;
import tipwright.design.Design;
import tipwright.design.around.GroundSlope;
import tipwright.design.around.Site;
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
 * stands open at that tilt; every place on its way counts. One that hangs is looked at plumb, swung out by what runs past it, and
 * as far as it swings when it is let go. It stays open all the way back.
 */
final class SwingingDoors {
    private static final double LEVEL = 1e-6;
    private static final double NEARLY = 1e-9;

    private SwingingDoors() {}

    /** A door and its way. */
    record Swing(MachinePart door, Motions.Path path) {}

    /** The doors that hinge along the pivot, each once for every way that it swings. */
    static List<Swing> doors(Analysis analysis, Motions motions) {
        List<Swing> all = new ArrayList<>();
        int body = analysis.mechanism().tank();
        for (Opening opening : analysis.design().tank().openings()) {
            Door door = opening.door();
            if (door != null && alongPivot(door)) {
                Form form = new Form.Pieces(List.of(DoorSwing.plate(opening)));
                int opens = opens(motions, opening);
                for (Vec3 up : ups(analysis.design().site())) {
                    for (Way way : ways(motions, body, opening, door, opens, up)) {
                        MachinePart part = new MachinePart(PartKind.DOOR, name(opening), body, Basis.LEAST, form);
                        all.add(new Swing(part, swing(motions, body, door, way)));
                    }
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

    /**
     * How it stands, shut before a pose.
     *
     * @param from the pose from which on it is open
     * @param first how far it has swung there, rad
     * @param then the same at later poses
     */
    private record Way(int from, ToDoubleFunction<BodyPosition> first, ToDoubleFunction<BodyPosition> then) {
        double angle(int pose, BodyPosition tank) {
            return pose < from ? 0 : pose == from ? first.applyAsDouble(tank) : then.applyAsDouble(tank);
        }
    }

    /** Against gravity on the ground as stated and, where it may stand any way round, on what slopes most to either end. */
    private static List<Vec3> ups(Site site) {
        List<Vec3> ups = new ArrayList<>(List.of(site.up()));
        for (GroundSlope ground : GroundSlope.anyWay(site)) {
            if (Math.abs(Math.sin(ground.direction())) < LEVEL) {
                ups.add(ground.site().up());
            }
        }
        return ups;
    }

    /** The pose at which it has opened, or past the last. */
    private static int opens(Motions motions, Opening opening) {
        int i = 1;
        while (i <= motions.last() && motions.tilt(i) < opening.opensAt() - NEARLY) {
            i++;
        }
        return i;
    }

    private static List<Way> ways(Motions motions, int body, Opening opening, Door door, int opens, Vec3 up) {
        ToDoubleFunction<BodyPosition> out = DoorSwing.opener(opening, door, up);
        ToDoubleFunction<BodyPosition> plumb = DoorSwing.plumb(opening, door, up);
        ToDoubleFunction<BodyPosition> letGo = DoorSwing.letGo(opening, door, up);
        Motions.Path tank = motions.body(body);
        List<Way> ways = new ArrayList<>(List.of(new Way(opens, out, out)));
        if (IntStream.rangeClosed(0, motions.last())
                .mapToObj(tank::at)
                .anyMatch(t -> out.applyAsDouble(t) != plumb.applyAsDouble(t))) {
            ways.add(new Way(opens, plumb, plumb));
        }
        if (opens > 1 && opens <= motions.last()) {
            ways.add(new Way(0, plumb, plumb));
        }
        if (opens <= motions.last()) {
            BodyPosition there = tank.at(opens);
            if (Math.abs(letGo.applyAsDouble(there)) > Math.abs(out.applyAsDouble(there))) {
                ways.add(new Way(opens, letGo, plumb));
            }
        }
        return ways;
    }

    private static Motions.Path swing(Motions motions, int body, Door door, Way way) {
        Motions.Path tank = motions.body(body);
        return pose -> {
            int i = (int) Math.min(pose, motions.last());
            BodyPosition before = swung(tank.at(i), door, way.angle(i, tank.at(i)));
            return pose > i
                    ? before.towards(swung(tank.at(i + 1), door, way.angle(i + 1, tank.at(i + 1))), pose - i)
                    : before;
        };
    }

    private static BodyPosition swung(BodyPosition tank, Door door, double angle) {
        // the hinge axis points to the reader or away; a swing about it is the other way round than a tilt
        double turn = tank.turn() - Math.signum(door.hingeAxis().z()) * angle;
        Vec2 hinge = door.hinge().xy();
        return new BodyPosition(tank.body(), tank.place(hinge).minus(hinge.tilted(turn)), turn);
    }
}
