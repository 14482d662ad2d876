// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.List;

/** Builds the profile of a revolved tank from its shell and heads. */
final class Profile {
    private Profile() {}

    /**
     * The whole profile, stations rising, middle of the shell at station 0.
     *
     * @param diameter inside, m
     * @param shell length of the straight shell, m, 0 or more
     */
    static List<Stretch> of(double diameter, double shell, Head minusEnd, Head plusEnd) {
        List<Stretch> all = new ArrayList<>();
        List<Stretch> minus = head(minusEnd, diameter);
        for (int i = minus.size() - 1; i >= 0; i--) {
            all.add(minus.get(i).mirrored().moved(-0.5 * shell));
        }
        if (shell > 0) {
            all.add(new Line(-0.5 * shell, 0.5 * shell, 0.5 * diameter, 0.5 * diameter));
        }
        for (Stretch stretch : head(plusEnd, diameter)) {
            all.add(stretch.moved(0.5 * shell));
        }
        return all;
    }

    /** A head's profile from the tangent line (station 0) to the tip. */
    private static List<Stretch> head(Head head, double diameter) {
        double radius = 0.5 * diameter;
        double depth = head.depth(diameter);
        double quarter = 0.5 * Math.PI;
        if (head instanceof Head.Ellipsoidal) {
            return List.of(new ArcStretch(0, 0, depth, radius, 0, quarter));
        }
        if (head instanceof Head.Dished) {
            double sphere = (radius * radius + depth * depth) / (2 * depth);
            return List.of(
                    new ArcStretch(depth - sphere, 0, sphere, sphere, Math.asin((sphere - depth) / sphere), quarter));
        }
        if (head instanceof Head.Conical) {
            return List.of(new Line(0, depth, radius, 0));
        }
        if (head instanceof Head.Torispherical t) {
            double crown = t.crown() * diameter;
            double knuckle = t.knuckle() * diameter;
            double join = quarter - t.turn();
            return List.of(
                    new ArcStretch(0, radius - knuckle, knuckle, knuckle, 0, join),
                    new ArcStretch(depth - crown, 0, crown, crown, join, quarter));
        }
        return List.of();
    }
}
