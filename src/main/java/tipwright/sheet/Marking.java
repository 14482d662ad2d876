// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
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
 * @param spots the pivot, the actuator's ends, then the others
 * @param spans pairs of them that are on one part, so that a tape can tell whether the part came out right
 */
record Marking(List<Spot> spots, List<Span> spans) {
    private static final double SAME = 1e-6;
    private static final double UNKNOWN = 0.006;
    /** Stands for the actuator among the bodies. */
    static final int ACTUATOR = -1;

    /**
     * A place.
     *
     * @param at m, stowed
     * @param bodies numbers of the parts that are pinned there
     * @param slide whether it is the middle of a carriage, not a pin
     * @param joint what is known of the pin
     * @param hole its diameter, m; a small ring where it is not known
     */
    record Spot(String name, Vec2 at, TreeSet<Integer> bodies, boolean slide, @Nullable PinJoint joint, double hole) {}

    /**
     * Two places on one part.
     *
     * @param part whether that part is a link or the actuator, not only the frame or the tank
     */
    record Span(Spot a, Spot b, boolean part) {
        double length() {
            return b.at().minus(a.at()).norm();
        }
    }

    static Marking of(Design design) {
        Vec2 pivot = design.pivot().at();
        Drive drive = design.drive();
        Skeleton skeleton = drive.skeleton(pivot);
        Strut strut = skeleton.actuator();
        List<Spot> spots = new ArrayList<>();
        add(spots, new Spot(Skeleton.PIVOT, pivot, new TreeSet<>(), false, null, shaft(design)));
        drive.places(pivot).forEach((name, at) -> {
            if (name.equals(Drive.FRAME_PIN)) {
                end(spots, name, at, strut.a(), drive.framePinJoint());
            } else if (name.equals(drive.rodPinName())) {
                end(spots, name, at, strut.b(), drive.tankPinJoint());
            }
            for (Joint j : skeleton.joints()) {
                if (j.at().equals(at)) {
                    PinJoint known = drive.pinJoint(j.name());
                    boolean slide = j instanceof Joint.Slide;
                    TreeSet<Integer> bodies = new TreeSet<>(List.of(j.a(), j.b()));
                    add(spots, new Spot(name.replace('-', ' '), at, bodies, slide, known, hole(known)));
                }
            }
        });
        return new Marking(List.copyOf(spots), spans(spots, skeleton.tank()));
    }

    private static void end(List<Spot> spots, String name, Vec2 at, int body, @Nullable PinJoint joint) {
        add(
                spots,
                new Spot(
                        name.replace('-', ' '), at, new TreeSet<>(List.of(body, ACTUATOR)), false, joint, hole(joint)));
    }

    /** Adds a place, or what it says to the one that is there already. */
    private static void add(List<Spot> spots, Spot spot) {
        for (Spot s : spots) {
            if (s.at().minus(spot.at()).norm() < SAME) {
                s.bodies().addAll(spot.bodies());
                return;
            }
        }
        spots.add(spot);
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

    private static double hole(@Nullable PinJoint joint) {
        return joint == null ? UNKNOWN : joint.diameter();
    }

    private static double shaft(Design design) {
        Shaft shaft = design.pivot().shaft();
        return shaft == null ? design.pivot().bearings().get(0).bearing().bore() : shaft.diameter();
    }
}
