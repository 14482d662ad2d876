// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import java.util.ArrayList;
import java.util.List;
import tipwright.geometry.Vec2;

/**
 * A planar mechanism with one degree of freedom, as drawn with the tank stowed.
 *
 * @param bodies names; number 0 is the frame, which does not move
 * @param tank number of the body that tilts
 * @param joints pins and slides; the one named 'pivot', if any, carries the tank in the bearings
 * @param actuator the member that drives it
 */
public record Skeleton(List<String> bodies, int tank, List<Joint> joints, Strut actuator) {
    public static final String PIVOT = "pivot";

    private static final double SAME = 1e-6;

    /** Copies the lists. */
    public Skeleton {
        bodies = List.copyOf(bodies);
        joints = List.copyOf(joints);
    }

    /** The tank turns on the pivot; the actuator goes straight from frame to tank. */
    public static Skeleton straight(Vec2 pivot, Vec2 framePin, Vec2 tankPin) {
        return new Skeleton(
                List.of("frame", "tank"),
                1,
                List.of(new Joint.Pin(PIVOT, 0, 1, pivot)),
                new Strut("actuator", 0, framePin, 1, tankPin));
    }

    /** Whether the tank turns about a pivot that stands still: the pin of that name holds it on the frame. */
    public boolean turnsOnPivot() {
        return joints.stream()
                .anyMatch(j -> j.name().equals(PIVOT) && Math.min(j.a(), j.b()) == 0 && Math.max(j.a(), j.b()) == tank);
    }

    /**
     * The two pins of a link: the places, stowed, in m, that all its joints and the actuator share; empty when the body slides or
     * has fewer or more of them.
     *
     * @param body by number
     */
    public List<Vec2> twoPins(int body) {
        List<Vec2> places = new ArrayList<>();
        for (Joint j : joints) {
            if (j.a() == body || j.b() == body) {
                add(places, j.at());
            }
        }
        if (actuator.a() == body) {
            add(places, actuator.onA());
        }
        if (actuator.b() == body) {
            add(places, actuator.onB());
        }
        return places.size() == 2 && !slides(body) ? List.copyOf(places) : List.of();
    }

    /** Whether a body, by number, slides on another, or another on it. */
    public boolean slides(int body) {
        return joints.stream().anyMatch(j -> j instanceof Joint.Slide && (j.a() == body || j.b() == body));
    }

    private static void add(List<Vec2> places, Vec2 at) {
        if (places.stream().noneMatch(p -> p.minus(at).norm() < SAME)) {
            places.add(at);
        }
    }
}
