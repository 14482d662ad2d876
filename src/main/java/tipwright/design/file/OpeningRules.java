// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.design.tank.Attached;
import tipwright.design.tank.Door;
import tipwright.design.tank.Opening;
import tipwright.geometry.Plane;
import tipwright.geometry.Range;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/** Each opening needs the keys of its rim, must lie on the tank, its latches must not sit on the hinge, and its door weighs one thing. */
final class OpeningRules {
    private static final Map<Opening.Rim, List<String>> NEEDED = needed();
    private static final List<String> RIM_KEYS = List.of("diameter", "width", "height", "centre", "normal", "points");
    private static final double FAR = 0.1;
    private static final double FLAT = 0.02;
    private static final double ON_THE_HINGE = 1e-3;
    private static final double BEHIND = 0.25;
    private static final double ALIKE = 0.01;

    private OpeningRules() {}

    private static Map<Opening.Rim, List<String>> needed() {
        Map<Opening.Rim, List<String>> map = new EnumMap<>(Opening.Rim.class);
        map.put(Opening.Rim.CIRCLE, List.of("diameter", "centre", "normal"));
        map.put(Opening.Rim.RECTANGLE, List.of("width", "height", "centre", "normal"));
        map.put(Opening.Rim.POLYGON, List.of("points"));
        return map;
    }

    static void check(Facts facts) {
        for (Bound.Found<Opening.Rim> rim : facts.bound().all(Opening.Rim.class)) {
            keys(facts, Paths.above(rim.path()), rim.value());
        }
        List<String> names = new ArrayList<>();
        for (Bound.Found<Opening> opening : facts.bound().all(Opening.class)) {
            names.add(opening.value().name());
            if (complete(opening.value())) {
                rim(facts, opening.path(), opening.value(), facts.solid());
            }
            door(facts, opening.path(), opening.value().door());
            weighed(facts, opening.path(), opening.value());
            Double to = facts.number("tilt.to");
            if (Facts.is(to, t -> opening.value().opensAt() > t)) {
                facts.odd(opening.path() + ".opens-at", "past the end of the tilt range: it never opens");
            }
        }
        Names.unique(facts, "tank.openings", names);
    }

    private static void keys(Facts facts, String path, Opening.Rim rim) {
        List<String> needed = NEEDED.getOrDefault(rim, List.of());
        String word = Shape.fileWord(rim);
        for (String key : RIM_KEYS) {
            boolean given = facts.sources().find(path + "." + key) != null;
            if (needed.contains(key) && !given) {
                facts.problems()
                        .add(
                                facts.sources().nearest(path + ".rim"),
                                path,
                                "'" + key + "' is missing; a rim that is a " + word + " needs "
                                        + ErrorText.and(needed));
            } else if (given && !needed.contains(key)) {
                facts.problems()
                        .add(
                                facts.sources().key(path + "." + key),
                                path + "." + key,
                                "does not go with a rim that is a " + word + "; it needs " + ErrorText.and(needed));
            }
        }
    }

    private static boolean complete(Opening opening) {
        return switch (opening.rim()) {
            case CIRCLE -> opening.diameter() != null && opening.centre() != null && opening.normal() != null;
            case RECTANGLE -> opening.width() != null
                    && opening.height() != null
                    && opening.centre() != null
                    && opening.normal() != null;
            case POLYGON -> !opening.points().isEmpty();
        };
    }

    private static void rim(Facts facts, String path, Opening opening, @Nullable Solid solid) {
        String key = path + (opening.rim() == Opening.Rim.POLYGON ? ".points" : ".centre");
        List<Vec3> points = opening.rimPoints();
        if (points.size() < 3) {
            facts.wrong(key, points.size() + " points; an outline needs 3 or more");
            return;
        }
        Vec3 middle = opening.middle();
        Vec3 area = opening.areaVector();
        double size = 0;
        for (Vec3 p : points) {
            size = Math.max(size, p.minus(middle).norm());
        }
        if (!(area.norm() > 1e-6 * size * size)) {
            facts.wrong(key, "the outline encloses no area; its points lie on one line or cross over");
            return;
        }
        Vec3 normal = area.unit();
        for (Vec3 p : points) {
            if (Math.abs(p.minus(middle).dot(normal)) > FLAT * size) {
                facts.wrong(key, "the outline is not flat; all points of a rim lie in one plane");
                return;
            }
        }
        if (solid != null) {
            onTheTank(facts, key, points, solid);
            outOfTheTank(facts, path, opening, solid);
        }
    }

    /** Nearly all of the inside lies before a normal that points inwards; of a tank with a bend some may lie before any. */
    private static void outOfTheTank(Facts facts, String path, Opening opening, Solid solid) {
        Plane plane = Plane.through(opening.middle(), opening.outward());
        if (opening.rim() != Opening.Rim.POLYGON
                && solid.below(plane).volume() < BEHIND * solid.whole().volume()) {
            facts.wrong(path + ".normal", "the tank lies on that side; the direction is straight out of the tank");
        }
    }

    private static void onTheTank(Facts facts, String key, List<Vec3> points, Solid solid) {
        double worst = 0;
        double size = 0;
        for (Vec3 axis : List.of(new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1))) {
            Range room = solid.extent(axis);
            size = Math.max(size, room.span());
            for (Vec3 p : points) {
                worst = Math.max(worst, Math.max(room.low() - axis.dot(p), axis.dot(p) - room.high()));
            }
        }
        if (worst > FAR * size) {
            facts.wrong(
                    key,
                    "the rim reaches " + Facts.say(worst, Kind.LENGTH)
                            + " out of the tank; an opening lies on the tank's wall");
        }
    }

    /** What a door weighs may be told twice, but not in two ways: one of them would be lost. */
    private static void weighed(Facts facts, String path, Opening opening) {
        Door door = opening.door();
        Double told = door == null ? null : door.mass();
        for (Attached part : facts.bound().list("tank.attached", Attached.class)) {
            if (told != null
                    && part.name().equals(opening.name())
                    && Math.abs(told - part.mass()) > ALIKE * Math.max(told, part.mass())) {
                facts.wrong(
                        path + ".door.mass",
                        "the attached part of this name has a mass of " + Facts.say(part.mass(), Kind.MASS)
                                + "; give the mass of the door once, or give the part another name");
            }
        }
    }

    private static void door(Facts facts, String path, @Nullable Door door) {
        if (door == null) {
            return;
        }
        Vec3 arm = door.latch().minus(door.hinge());
        if (arm.cross(door.hingeAxis().unit()).norm() < ON_THE_HINGE) {
            facts.wrong(path + ".door.latch", "the latch sits on the hinge line and could not hold the door");
        }
    }
}
