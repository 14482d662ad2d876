// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import tipwright.design.Design;
import tipwright.design.NumberedPlace;
import tipwright.design.drive.Drive;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Shaft;
import tipwright.geometry.Vec2;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.linkage.Strut;

/**
 * What is to be marked out of a mechanism: every place that is drilled or welded, and which are measured from which.
 *
 * @param spots as the list of places has them
 * @param spans pairs of them that are on one part, so that a tape can tell whether the part came out right
 */
public record Marking(List<Spot> spots, List<Span> spans) {
    private static final double UNKNOWN = 0.006;
    /** Stands for the actuator among the bodies. */
    static final int ACTUATOR = -1;

    /**
     * A place.
     *
     * @param bodies numbers of the parts that are pinned there
     * @param hole its diameter, m; a small ring where it is not known
     */
    public record Spot(NumberedPlace place, TreeSet<Integer> bodies, double hole) {
        int number() {
            return place.number();
        }

        String name() {
            return place.name();
        }

        Vec2 at() {
            return place.at();
        }
    }

    /**
     * Two places on one part.
     *
     * @param part whether that part is a link or the actuator, not only the frame or the tank
     */
    public record Span(Spot a, Spot b, boolean part) {
        public double length() {
            return b.at().minus(a.at()).norm();
        }
    }

    /** All of a design. */
    public static Marking of(Design design) {
        Vec2 pivot = design.pivot().at();
        Drive drive = design.drive();
        Skeleton skeleton = drive.skeleton(pivot);
        Strut strut = skeleton.actuator();
        List<Spot> spots = new ArrayList<>();
        for (NumberedPlace place : NumberedPlace.of(design)) {
            TreeSet<Integer> bodies = new TreeSet<>();
            if (place.is(strut.onA())) {
                bodies.addAll(List.of(strut.a(), ACTUATOR));
            }
            if (place.is(strut.onB())) {
                bodies.addAll(List.of(strut.b(), ACTUATOR));
            }
            for (Joint joint : skeleton.joints()) {
                if (place.is(joint.at())) {
                    bodies.addAll(List.of(joint.a(), joint.b()));
                }
            }
            PinJoint known = place.joint();
            spots.add(new Spot(
                    place, bodies, place.pivot() ? shaft(design) : known == null ? UNKNOWN : known.diameter()));
        }
        return new Marking(List.copyOf(spots), spans(spots, skeleton.tank()));
    }

    private static List<Span> spans(List<Spot> spots, int tank) {
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            for (int k = i + 1; k < spots.size(); k++) {
                TreeSet<Integer> shared = new TreeSet<>(spots.get(i).bodies());
                shared.retainAll(spots.get(k).bodies());
                boolean part = shared.stream().anyMatch(b -> b != 0 && b != tank);
                if (!shared.isEmpty()) {
                    spans.add(new Span(spots.get(i), spots.get(k), part));
                }
            }
        }
        return List.copyOf(spans);
    }

    private static double shaft(Design design) {
        Shaft shaft = design.pivot().shaft();
        return shaft == null ? design.pivot().bearings().get(0).bearing().bore() : shaft.diameter();
    }
}
