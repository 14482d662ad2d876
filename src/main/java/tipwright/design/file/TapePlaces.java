// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/**
 * Moves places that the tape gives: the readings that place a point, and those of other points from it, are written anew, on marks of
 * the tape. All throw IllegalArgumentException where no reading tells the place. Mutable: it remembers what has been moved.
 */
final class TapePlaces {
    private static final String POINTS = "points";
    private static final int LONGEST_CHAIN = 20;

    private final Map<String, Vec2> places = new LinkedHashMap<>();

    /** The places of a design as it is read. */
    TapePlaces(Design design) {
        if (design.points() != null) {
            design.points().places().forEach((name, at) -> places.put(name, at.xy()));
        }
    }

    /**
     * The text with a point elsewhere.
     *
     * @param path of a point that is given by another's name or by the tape
     * @param to m, stowed
     */
    String moved(String text, String path, Vec2 to) {
        return moved(text, path, to, LONGEST_CHAIN);
    }

    private String moved(String text, String path, Vec2 to, int left) {
        Node node = NodePath.find(new Rewriter(text).root(), path);
        if (node instanceof Node.Scalar name && !name.isNothing() && left > 0) {
            String edited = moved(text, Paths.key(POINTS, name.text()), to, left - 1);
            places.put(name.text(), to);
            return others(edited, name.text(), to);
        }
        if (node instanceof Node.Items) {
            return coordinate(coordinate(text, path + ".x", to.x()), path + ".y", to.y());
        }
        if (!(node instanceof Node.Fields group)) {
            throw new IllegalArgumentException("no place at '" + path + "'");
        }
        if (group.fields().containsKey("between")) {
            throw new IllegalArgumentException("'" + path + "' lies between two others");
        }
        String edited = text;
        for (String key : group.fields().keySet()) {
            if (NodePath.find(node, key) instanceof Node.Fields marks) {
                for (String mark : marks.fields().keySet()) {
                    Vec2 from = places.get(mark);
                    if (from == null) {
                        throw new IllegalArgumentException("no point '" + mark + "'");
                    }
                    edited = reading(edited, Paths.key(Paths.key(path, key), mark), key, to.minus(from));
                }
            }
        }
        return edited;
    }

    /** The readings of the other named points from one, so that they stay where they are. */
    private String others(String text, String name, Vec2 at) {
        String edited = text;
        for (Map.Entry<String, Vec2> other : places.entrySet()) {
            for (String key : PointKey.words()) {
                String path = Paths.key(Paths.key(Paths.key(POINTS, other.getKey()), key), name);
                if (NodePath.find(new Rewriter(edited).root(), path) != null) {
                    edited = reading(edited, path, key, other.getValue().minus(at));
                }
            }
        }
        return edited;
    }

    private static String reading(String text, String path, String key, Vec2 way) {
        PointSpec.Side side = PointSpec.Side.of(key);
        double length = side == null
                ? way.norm()
                : side.sign() * List.of(way.x(), way.y()).get(side.axis());
        return coordinate(text, path, length);
    }

    private static String coordinate(String text, String path, double length) {
        Rewriter at = new Rewriter(text);
        if (!(NodePath.find(at.root(), path) instanceof Node.Scalar old)) {
            throw new IllegalArgumentException("no single value at '" + path + "'");
        }
        UnitSystem tape = old.text().matches(".*(in|ft|\"|').*") ? UnitSystem.US : UnitSystem.METRIC;
        double mark = Marks.rounded(length, tape);
        return at.replaced(old, Plain.scalar(ValueText.rewritten(old.text(), mark, Kind.LENGTH)));
    }
}
