// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.List;
import tipwright.geometry.Range;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/** A point far from the tank is most often a slip between inches and millimetres. */
final class FarRules {
    private static final double FAR = 5;
    private static final List<Vec3> AXES = List.of(new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1));

    private FarRules() {}

    static void check(Facts facts) {
        Solid solid = facts.solid();
        if (solid == null) {
            return;
        }
        List<Range> rooms = new ArrayList<>();
        double size = 0;
        for (Vec3 axis : AXES) {
            Range room = solid.extent(axis);
            rooms.add(room);
            size = Math.max(size, room.span());
        }
        for (Bound.Found<Vec2> point : facts.bound().all(Vec2.class)) {
            if (!point.path().endsWith(".base")) {
                look(
                        facts,
                        point.path(),
                        new double[] {point.value().x(), point.value().y()},
                        rooms,
                        size);
            }
        }
        for (Bound.Found<Vec3> point : facts.bound().all(Vec3.class)) {
            if (point.path().endsWith(".centre")
                    || point.path().endsWith(".hinge")
                    || point.path().endsWith(".latch")) {
                Vec3 p = point.value();
                look(facts, point.path(), new double[] {p.x(), p.y(), p.z()}, rooms, size);
            }
        }
    }

    private static void look(Facts facts, String path, double[] point, List<Range> rooms, double size) {
        double worst = 0;
        for (int i = 0; i < point.length; i++) {
            Range room = rooms.get(i);
            worst = Math.max(worst, Math.max(room.low() - point[i], point[i] - room.high()));
        }
        if (worst > FAR * size) {
            facts.odd(path, Facts.say(worst, Kind.LENGTH) + " away from the tank; is the unit right?");
        }
    }
}
