// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.design.Design;
import tipwright.design.NumberedPlace;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/** What to measure on the finished frame, in the form in which a design file takes it back: points by distances and steps. */
final class TapeBack {
    private static final String DATUM = "datum";
    /** Least sine of the angle between two tapes that meet at a place: a shallower crossing blurs it. Common practice, no source. */
    private static final double CROSSING = 0.4;

    private static final double NEAR = 0.02;

    private final UnitSystem units;
    private final Vec2 pivot;
    private final Map<String, List<Reading>> points = new LinkedHashMap<>();
    private final Map<String, String> sides = new LinkedHashMap<>();

    TapeBack(Design design, UnitSystem units) {
        this.units = units;
        pivot = design.pivot().at();
        for (NumberedPlace place : NumberedPlace.of(design)) {
            points.put(place.key(), place.pivot() ? steps(pivot) : readings(place.key(), place.at()));
        }
    }

    /**
     * One reading.
     *
     * @param how key of the design file: from, above, below, towards-dump, away-from-dump
     * @param to the point that it is taken from
     * @param length that it should be, m
     */
    record Reading(String how, String to, double length) {}

    /** All by the name of the point that they place. */
    Map<String, List<Reading>> readings() {
        return points;
    }

    private static List<Reading> steps(Vec2 at) {
        return List.of(
                new Reading(at.x() < 0 ? "away-from-dump" : "towards-dump", DATUM, Math.abs(at.x())),
                new Reading(at.y() < 0 ? "below" : "above", DATUM, Math.abs(at.y())));
    }

    /** Straight from datum and pivot where that tells the place, else by steps. */
    private List<Reading> readings(String name, Vec2 at) {
        if (at.norm() < NEAR || at.minus(pivot).norm() < NEAR || pivot.norm() < NEAR) {
            return steps(at);
        }
        Vec2 u = pivot.unit();
        Vec2 off = at.minus(u.times(at.dot(u)));
        Vec2 mirrored = off.times(2);
        if (Math.abs(at.unit().cross(at.minus(pivot).unit())) < CROSSING) {
            return steps(at);
        }
        boolean upright = Math.abs(mirrored.y()) > Math.abs(mirrored.x());
        sides.put(
                name,
                upright ? mirrored.y() > 0 ? "above" : "below" : mirrored.x() > 0 ? "towards-dump" : "away-from-dump");
        return List.of(
                new Reading("from", DATUM, at.norm()),
                new Reading("from", Skeleton.PIVOT, at.minus(pivot).norm()));
    }

    /** The lines of the design file, with what should be measured in them. */
    List<String> lines() {
        List<String> lines =
                new ArrayList<>(List.of("points:", "  " + DATUM + ": " + "[" + zero() + ", " + zero() + "]"));
        points.forEach((name, all) -> {
            List<String> parts = new ArrayList<>();
            if (all.get(0).how().equals("from")) {
                List<String> from = new ArrayList<>();
                all.forEach(r -> from.add(r.to() + ": " + Marks.show(r.length(), units)));
                parts.add("from: {" + String.join(", ", from) + "}");
                parts.add("side: " + sides.get(name));
            } else {
                all.forEach(r -> parts.add(r.how() + ": {" + r.to() + ": " + Marks.show(r.length(), units) + "}"));
            }
            lines.add("  " + name + ": {" + String.join(", ", parts) + "}");
        });
        return lines;
    }

    private String zero() {
        return "0 " + Lengths.unit(units);
    }
}
