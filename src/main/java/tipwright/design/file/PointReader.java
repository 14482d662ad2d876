// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.PointSpec.How;
import tipwright.design.file.PointSpec.Mark;
import tipwright.design.file.PointSpec.Side;
import tipwright.design.key.Measured;
import tipwright.design.tape.Tape;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/**
 * Reads what places a point: '[x, y]', '{from: {axle: 24 in, rail-end: 31 in}, side: above}', '{below: {rail: 10 in}}',
 * '{between: [a, b], at: 10 in}', or the name of another.
 */
final class PointReader {
    private static final List<String> KEYS = PointKey.words();
    private static final Set<String> US = Set.of("in", "ft", "yd");
    private static final double EXACT = 1e-6;
    private static final Measured DISTANCE = mark("distance");
    private static final Measured STEP = mark("step");
    private static final String SAMPLE = "{from: {axle: 600 mm, rail-end: 800 mm}, side: above}";

    private final Problems problems;
    private final QuantityBinder quantities;
    private final Tape tape;
    private final Reader reader;

    PointReader(Reader reader, QuantityBinder quantities, Tape tape) {
        this.reader = reader;
        this.problems = reader.problems();
        this.quantities = quantities;
        this.tape = tape;
    }

    /** What readings are measured as. */
    private record Limits(
            @Measured(value = Kind.LENGTH, above = "0 mm") double distance, @Measured(Kind.LENGTH) double step) {}

    private static Measured mark(String component) {
        return Shape.of(Limits.class).keys().stream()
                .filter(k -> k.name().equals(component))
                .map(k -> k.mark(Measured.class))
                .findFirst()
                .orElseThrow();
    }

    /** What places a point; null with problems noted. */
    @Nullable
    PointSpec read(String name, Node node, String path) {
        if (node instanceof Node.Scalar other && !other.isNothing()) {
            Mark same = new Mark(How.SAME, null, List.of(other.text()), other.place(), path, 0, 0, other.text());
            return new PointSpec(name, node.place(), path, List.of(same), null, null, null);
        }
        if (node instanceof Node.Items list
                && (list.items().size() == 2 || list.items().size() == 3)) {
            return fixed(name, list, path);
        }
        if (node instanceof Node.Fields group && !group.fields().isEmpty()) {
            return placed(name, group, path);
        }
        problems.add(
                node.place(),
                path,
                "a point is needed here, such as [300 mm, 120 mm] or " + SAMPLE + "; found " + node.words());
        return null;
    }

    private @Nullable PointSpec fixed(String name, Node.Items list, String path) {
        String[] axes = {".x", ".y", ".z"};
        double[] c = new double[3];
        boolean good = true;
        for (int i = 0; i < list.items().size(); i++) {
            Double value = quantities.read(STEP, list.items().get(i), path, path + axes[i], QuantityBinder.NONE);
            good &= value != null;
            c[i] = value == null ? 0 : value;
        }
        Double z = list.items().size() == 3 ? Double.valueOf(c[2]) : null;
        return good ? new PointSpec(name, list.place(), path, List.of(), null, z, new Vec3(c[0], c[1], c[2])) : null;
    }

    private @Nullable PointSpec placed(String name, Node.Fields group, String path) {
        List<Mark> marks = new ArrayList<>();
        Side side = null;
        Double z = null;
        boolean good = true;
        for (Map.Entry<String, Node.Field> entry : group.fields().entrySet()) {
            String key = entry.getKey();
            String below = Paths.key(path, key);
            Node value = entry.getValue().value();
            Side step = Side.of(key);
            if (key.equals("from")) {
                good &= marks(How.DISTANCE, null, value, below, marks);
            } else if (step != null) {
                good &= marks(How.STEP, step, value, below, marks);
            } else if (key.equals("side")) {
                side = value instanceof Node.Scalar word ? Side.of(word.text()) : null;
                good &= side != null || wrongSide(value, below);
            } else if (key.equals("z")) {
                z = quantities.read(STEP, value, below);
                good &= z != null;
            } else if (key.equals("between")) {
                good &= between(value, group, path, marks);
            } else if (!key.equals("at") || !group.fields().containsKey("between")) {
                problems.add(
                        entry.getValue().key(),
                        below,
                        "key " + ErrorText.quoted(key) + " is not known here; " + ErrorText.meant(key, KEYS));
                good = false;
            }
        }
        return good ? sound(new PointSpec(name, group.place(), path, marks, side, z, null)) : null;
    }

    private boolean wrongSide(Node value, String path) {
        String word = value instanceof Node.Scalar text ? text.text() : "";
        problems.add(value.place(), path, value.words() + " is no side; " + ErrorText.meant(word, PointKey.sides()));
        return false;
    }

    private boolean marks(How how, @Nullable Side side, Node node, String path, List<Mark> to) {
        if (!(node instanceof Node.Fields group) || group.fields().isEmpty()) {
            problems.add(
                    node.place(),
                    path,
                    "a point and a length are needed here, such as {axle: 600 mm}; found " + node.words());
            return false;
        }
        boolean good = true;
        for (Map.Entry<String, Node.Field> entry : group.fields().entrySet()) {
            Node value = entry.getValue().value();
            String below = Paths.key(path, entry.getKey());
            Double length = quantities.read(
                    how == How.DISTANCE ? DISTANCE : STEP, value, below, below, (si, unit) -> doubt(si, unit, path));
            good &= length != null;
            if (length != null) {
                to.add(new Mark(
                        how,
                        side,
                        List.of(entry.getKey()),
                        entry.getValue().key(),
                        below,
                        length,
                        Math.max(EXACT, reader.doubt(below)),
                        ((Node.Scalar) value).text()));
            }
        }
        return good;
    }

    /** 'Level with' and 'plumb over' a named point, where a place is asked for, are no readings. */
    private double doubt(double length, String unit, String path) {
        return length == 0 && !path.startsWith("points.") ? 0 : doubt(length, unit);
    }

    private double doubt(double length, String unit) {
        return tape.doubt(length, US.contains(unit));
    }

    private boolean between(Node node, Node.Fields group, String path, List<Mark> to) {
        String below = Paths.key(path, "between");
        if (!(node instanceof Node.Items list)
                || list.items().size() != 2
                || !(list.items().get(0) instanceof Node.Scalar first)
                || !(list.items().get(1) instanceof Node.Scalar second)) {
            problems.add(
                    node.place(), below, "two points are needed here, such as [axle, rail-end]; found " + node.words());
            return false;
        }
        List<String> ends = List.of(first.text(), second.text());
        Node.Field at = group.fields().get("at");
        if (at == null) {
            to.add(new Mark(How.MIDDLE, null, ends, node.place(), below, 0, EXACT, ""));
            return true;
        }
        String where = Paths.key(path, "at");
        Double length = quantities.read(DISTANCE, at.value(), where, where, this::doubt);
        if (length == null) {
            return false;
        }
        String said = ((Node.Scalar) at.value()).text();
        to.add(new Mark(
                How.ALONG, null, ends, node.place(), where, length, Math.max(EXACT, reader.doubt(where)), said));
        return true;
    }

    /** Whether so much is told that it can be a point; what is missing is noted. */
    private @Nullable PointSpec sound(PointSpec spec) {
        long distances =
                spec.marks().stream().filter(m -> m.how() == How.DISTANCE).count();
        boolean line = spec.has(How.ALONG) || spec.has(How.MIDDLE);
        boolean steps = spec.has(How.STEP);
        String wrong = null;
        if (line && (distances > 0 || steps)) {
            wrong = "take out the other distances, since 'between' places the point by itself";
        } else if (!line && !steps && distances < 2) {
            wrong = distances == 0
                    ? "nothing places this point; give distances from two points or more, such as " + SAMPLE
                    : "one distance leaves a whole circle; measure from a second point, such as " + SAMPLE;
        }
        if (wrong != null) {
            problems.add(spec.place(), spec.path(), wrong);
            return null;
        }
        return spec;
    }

    /** A length for a message, in the units of the file. */
    static String say(double length, UnitSystem units) {
        if (units == UnitSystem.METRIC) {
            return Quantities.number(Math.rint(length * 1e4) / 10) + " mm";
        }
        long parts = Math.round(Math.abs(length) / 0.0254 * 32);
        int under = 32;
        while (parts % 2 == 0 && under > 1) {
            parts /= 2;
            under /= 2;
        }
        long whole = parts / under;
        String fraction = parts % under == 0 ? "" : parts % under + "/" + under;
        String text = whole == 0 && !fraction.isEmpty() ? fraction : (whole + " " + fraction).strip();
        return (length < 0 && parts > 0 ? "-" : "") + text + " in";
    }
}
