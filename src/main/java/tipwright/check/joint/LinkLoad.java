// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.JointPlan;
import tipwright.analysis.LinkPlan;
import tipwright.analysis.Mechanism;
import tipwright.analysis.Pose;
import tipwright.design.drive.Counterweight;
import tipwright.geometry.Vec2;
import tipwright.load.Gravity;

/**
 * What a link between two pins bears along its line, and what its own weight bends it with; of links on both sides: one of them. For
 * one thread.
 */
final class LinkLoad {
    private final Analysis analysis;
    private final TwinLinks twins;
    private final LinkPlan link;
    private final int sides;
    private final List<Integer> joints = new ArrayList<>();
    private final List<Weight> weights;
    private final IdentityHashMap<Pose, Line> known = new IdentityHashMap<>();

    /** A weight on the link: its centre on it, m, and its pull, N. */
    private record Weight(Vec2 centre, Vec2 pull) {}

    /**
     * The link at one pose, whatever the load.
     *
     * @param along unit vector to its other end
     * @param pull of its weights along it, N
     * @param bend moment of its weights, N m
     */
    private record Line(Vec2 along, double pull, double bend) {}

    /**
     * A load of one link.
     *
     * @param squeeze largest compression between its pins, N; negative when the link is always in tension
     * @param draw largest tension, N; negative: it is pressed all along
     * @param bend largest moment of its own weight between or beyond its pins, N m
     */
    record Borne(double squeeze, double draw, double bend) {}

    LinkLoad(Analysis analysis, LinkPlan link) {
        this.analysis = analysis;
        this.twins = new TwinLinks(analysis);
        this.link = link;
        boolean twice = true;
        Mechanism mechanism = analysis.mechanism();
        for (int i = 0; i < mechanism.joints().size(); i++) {
            JointPlan joint = mechanism.joints().get(i);
            if (joint.a() == link.body() || joint.b() == link.body()) {
                twice &= i == mechanism.pivot() || analysis.design().drive().paired(joint.name());
            }
            if (link.endAt(joint)) {
                joints.add(i);
            }
        }
        this.sides = twice ? 2 : 1;
        String name = mechanism.bodies().get(link.body());
        Vec2 up = analysis.design().site().up().xy();
        this.weights = analysis.design().assists().stream()
                .filter(a -> a instanceof Counterweight w && w.body().equals(name))
                .map(Counterweight.class::cast)
                .map(w -> new Weight(w.centre().xy(), up.times(-w.mass() * Gravity.G)))
                .toList();
    }

    /** How many of it there are, one on each side or one alone. */
    int sides() {
        return sides;
    }

    /** The load at one pose. The end without the actuator tells the forces; the weights give the other end's. */
    Borne at(Pose pose, Balance balance) {
        Line line = known.computeIfAbsent(pose, this::line);
        double near = 0;
        for (int i : joints) {
            boolean first = analysis.mechanism().joints().get(i).a() == link.body();
            near += (first ? 1 : -1) * balance.joints().get(i).dot(line.along());
        }
        double far = near + line.pull();
        double more = sides == 2 ? twins.extra(link.body(), pose, balance) : 0;
        return new Borne(Math.max(near, far) / sides + more, Math.max(-near, -far) / sides + more, line.bend() / sides);
    }

    private Line line(Pose pose) {
        BodyPosition placed = pose.bodies().get(link.body());
        Vec2 from = placed.place(link.end());
        Vec2 along = placed.place(link.other()).minus(from).unit();
        double with = 0;
        double bend = 0;
        for (Weight w : weights) {
            Vec2 pull = w.pull();
            Vec2 place = placed.place(w.centre()).minus(from);
            with += pull.dot(along);
            bend += bending(place.dot(along), along.cross(place), along.cross(pull), pull.dot(along));
        }
        return new Line(along, with, bend);
    }

    /** Largest moment of a load at a place along and beside the line, by its parts across and along it, N m. */
    private double bending(double along, double beside, double across, double with) {
        double length = link.length();
        double moment = along < 0
                ? -along * across
                : along > length ? (along - length) * across : across * along * (length - along) / length;
        return Math.abs(moment) + Math.abs(with * beside);
    }
}
