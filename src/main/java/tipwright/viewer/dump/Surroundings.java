// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.around.Frame;
import tipwright.design.around.Ground;
import tipwright.design.around.SidePart;
import tipwright.design.drive.Assist;
import tipwright.design.drive.Counterweight;
import tipwright.design.drive.LineSpring;
import tipwright.design.joint.Support;
import tipwright.geometry.Hull;
import tipwright.geometry.Mesh;
import tipwright.geometry.Range;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.sheet.AssistSketch;

/**
 * The room that the dump takes up.
 *
 * @param low smallest x, y and z of anything at any tilt, m; y is the ground, or as drawn where the design gives none
 * @param high largest x, y and z, m
 * @param outline of the tank in the side view, stowed, convex, m
 * @param outermost the stowed points of the tank that sweep farthest, m
 */
public record Surroundings(Vec3 low, Vec3 high, List<Vec2> outline, List<Vec2> outermost) {
    private static final double GAP = 0.12;
    private static final int LOOKS = 24;

    /** The room of a dump around a tank's mesh. */
    public static Surroundings of(Dump dump, Mesh tank) {
        List<Vec2> points = new ArrayList<>();
        for (int i = 0; i < tank.xyz().length; i += 3) {
            points.add(new Vec2(tank.xyz()[i], tank.xyz()[i + 1]));
        }
        List<Vec2> outline = Hull.around(points);
        double[] box = {1e9, 1e9, -1e9, -1e9};
        for (int k = 0; k <= LOOKS; k++) {
            double tilt = dump.first() + (dump.last() - dump.first()) * k / LOOKS;
            List<Placement> placed = dump.placements(tilt);
            Placement turned = placed.get(dump.skeleton().tank());
            for (Vec2 p : outline) {
                grow(box, turned.of(p));
            }
            dump.skeleton().joints().forEach(j -> grow(box, placed.get(j.a()).of(j.at())));
            assists(dump, placed).forEach(p -> grow(box, p));
            var strut = dump.skeleton().actuator();
            grow(box, placed.get(strut.a()).of(strut.onA()));
            grow(box, placed.get(strut.b()).of(strut.onB()));
        }
        Design design = dump.design();
        List<SidePart> still = new ArrayList<>(design.obstacles());
        Frame frame = design.frame();
        if (frame != null) {
            still.addAll(frame.members());
        }
        still.forEach(part -> part.outline().forEach(p -> grow(box, p)));
        Ground ground = design.ground();
        Range z = across(design, tank);
        double floor = ground == null ? box[1] - GAP : ground.y();
        return new Surroundings(
                new Vec3(box[0], floor, z.low()),
                new Vec3(box[2], box[3], z.high()),
                outline,
                outermost(dump, outline));
    }

    /** Points of springs and weights in the side view, m. */
    private static List<Vec2> assists(Dump dump, List<Placement> placed) {
        List<Vec2> points = new ArrayList<>();
        AssistSketch.of(dump.design(), (body, stowed) -> placed.get(body).of(stowed))
                .forEach(s -> points.addAll(s.points()));
        return points;
    }

    private static void grow(double[] box, Vec2 p) {
        box[0] = Math.min(box[0], p.x());
        box[1] = Math.min(box[1], p.y());
        box[2] = Math.max(box[2], p.x());
        box[3] = Math.max(box[3], p.y());
    }

    private static Range across(Design design, Mesh tank) {
        Range z = tank.extent(new Vec3(0, 0, 1));
        double low = z.low();
        double high = z.high();
        for (Support s : design.pivot().bearings()) {
            low = Math.min(low, s.z() - 0.05);
            high = Math.max(high, s.z() + 0.05);
        }
        for (Assist assist : design.assists()) {
            if (assist instanceof LineSpring line) {
                low = Math.min(low, line.z() - 0.05);
                high = Math.max(high, line.z() + 0.05);
            } else if (assist instanceof Counterweight weight) {
                double half = AssistSketch.edge(weight) / 2;
                low = Math.min(low, weight.centre().z() - half);
                high = Math.max(high, weight.centre().z() + half);
            }
        }
        for (PlacedActuator a : design.drive().actuators()) {
            low = Math.min(low, a.z() - 0.05);
            high = Math.max(high, a.z() + 0.05);
        }
        return new Range(low, high);
    }

    /** The corner that gets highest, and the one that reaches farthest to the dump side. */
    private static List<Vec2> outermost(Dump dump, List<Vec2> outline) {
        Vec2 highest = outline.get(0);
        Vec2 farthest = outline.get(0);
        double top = -1e9;
        double reach = -1e9;
        for (int k = 0; k <= LOOKS; k++) {
            double tilt = dump.first() + (dump.last() - dump.first()) * k / LOOKS;
            Placement turned = dump.placements(tilt).get(dump.skeleton().tank());
            for (Vec2 p : outline) {
                Vec2 at = turned.of(p);
                if (at.y() > top) {
                    top = at.y();
                    highest = p;
                }
                if (at.x() > reach) {
                    reach = at.x();
                    farthest = p;
                }
            }
        }
        return highest.equals(farthest) ? List.of(highest) : List.of(highest, farthest);
    }

    /** Height of the ground as drawn, m. */
    public double ground() {
        return low.y();
    }

    /** Middle of the room, m. */
    public Vec3 middle() {
        return low.plus(high).times(0.5);
    }

    /** Half the diagonal of the room, m. */
    public double radius() {
        return high.minus(low).norm() / 2;
    }
}
