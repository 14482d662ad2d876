// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tipwright.design.Alike;
import tipwright.design.Design;
import tipwright.design.key.Annotated;
import tipwright.design.key.Copy;
import tipwright.design.key.FromParts;
import tipwright.design.key.Measured;
import tipwright.design.tank.Slurry;
import tipwright.design.tape.NamedPoints;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * Writes a changed design back into the text that the design was read from. A value that differs is replaced where it stands, in the
 * unit that it is written in; what is new goes where its key belongs, or behind its list's last entry, of which it is a copy as far as
 * they are alike; places that the tape gives get other readings, or, where others would go along with them, coordinates. Every other
 * character stays.
 */
public final class ChangedText {
    private static final double SAME = 1e-9;

    /** Readings are on marks of the tape, so two of them place a point about so well, m. */
    private static final double BY_TAPE = 0.0025;

    private final ValueText values;
    private final @Nullable TapePlaces tape;
    private String text;

    /** With the tape's readings, or without them. */
    private ChangedText(Reading.Good good, Function<Object, @Nullable String> partName, boolean readings) {
        values = new ValueText(good.units(), partName);
        tape = readings ? new TapePlaces(good.design()) : null;
        text = good.text();
    }

    /**
     * The text with the change, which reads back as the changed design; null when it cannot be written so.
     *
     * @param good the design as read
     * @param changed the same with other values
     * @param capacity of the tank, m3: where the file gives a volume and the change a share of it
     * @param partName name of a part of the parts files; null: it has none
     * @param reader reads a text as the design's own was read
     */
    public static @Nullable String of(
            Reading.Good good,
            Design changed,
            double capacity,
            Function<Object, @Nullable String> partName,
            Function<String, Reading> reader) {
        Design wanted = asWritten(good.design(), changed, capacity);
        for (boolean readings : new boolean[] {true, false}) {
            ChangedText change = new ChangedText(good, partName, readings);
            if (change.takes(good.design(), wanted)
                    && !change.text.equals(good.text())
                    && reader.apply(change.text) instanceof Reading.Good again
                    && same(again.design(), wanted)) {
                return change.text;
            }
        }
        return null;
    }

    private boolean takes(Design before, Design wanted) {
        try {
            record("", before, wanted);
            return true;
        } catch (IllegalArgumentException cannot) {
            return false;
        }
    }

    /** The fill as the file gives it: a volume stays a volume. */
    private static Design asWritten(Design as, Design changed, double capacity) {
        Slurry before = as.slurry();
        Slurry after = changed.slurry();
        return before.volume() == null || after.volume() != null
                ? changed
                : changed.withSlurry(Copy.with(Copy.with(after, "fill", null), "volume", after.volumeIn(capacity)));
    }

    /** Whether two designs are one but for the digits that are written; places to what the tape's marks allow. */
    private static boolean same(@Nullable Object a, @Nullable Object b) {
        if (a instanceof Vec2 p && b instanceof Vec2 q) {
            return p.minus(q).norm() < BY_TAPE;
        }
        if (a instanceof Vec3 p && b instanceof Vec3 q) {
            return p.minus(q).norm() < BY_TAPE;
        }
        if (a instanceof List<?> p && b instanceof List<?> q) {
            boolean all = p.size() == q.size();
            for (int i = 0; all && i < p.size(); i++) {
                all = same(p.get(i), q.get(i));
            }
            return all;
        }
        if (a == null || b == null || !a.getClass().isRecord() || a.getClass() != b.getClass()) {
            boolean near = a instanceof Double x && b instanceof Double y && Math.abs(x - y) < SAME;
            return near || Alike.parts(a, b);
        }
        if (a instanceof NamedPoints) {
            // they are there for the places that use them, and those are compared
            return true;
        }
        List<Shape.Key> keys = Shape.of(a.getClass()).keys();
        RecordComponent[] components = a.getClass().getRecordComponents();
        for (int i = 0; i < components.length; i++) {
            // what was loaded from a file goes by the name of the file
            if (!keys.get(i).loaded() && !same(Copy.value(components[i], a), Copy.value(components[i], b))) {
                return false;
            }
        }
        return true;
    }

    private @Nullable Node find(String path) {
        return NodePath.find(new Rewriter(text).root(), path);
    }

    private void replace(String path, String yaml) {
        Rewriter at = new Rewriter(text);
        Node node = NodePath.find(at.root(), path);
        if (node == null) {
            throw new IllegalArgumentException("nothing at '" + path + "'");
        }
        text = at.replaced(node, yaml);
    }

    private void record(String path, Object before, Object after) {
        List<Shape.Key> keys = Shape.of(before.getClass()).keys();
        RecordComponent[] components = before.getClass().getRecordComponents();
        for (int i = 0; i < components.length; i++) {
            Shape.Key key = keys.get(i);
            if (!key.loaded() && key.type() != NamedPoints.class) {
                value(
                        Paths.key(path, key.name()),
                        key,
                        Copy.value(components[i], before),
                        Copy.value(components[i], after));
            }
        }
    }

    private void value(String path, Shape.Key key, @Nullable Object before, @Nullable Object after) {
        boolean near = before instanceof Double a && after instanceof Double b && Math.abs(a - b) <= SAME;
        if (near || Objects.equals(before, after)) {
            return;
        }
        Node node = find(path);
        if (after == null) {
            text = FieldEdit.takeOut(text, path);
        } else if (before == null || node == null) {
            text = FieldEdit.write(text, path, values.yaml(key, after));
        } else if (before instanceof List<?> a && after instanceof List<?> b) {
            entries(path, key, a, b);
        } else {
            one(path, key, node, before, after);
        }
    }

    private void entries(String path, Shape.Key key, List<?> before, List<?> after) {
        Rewriter single = new Rewriter(text);
        Node node = NodePath.find(single.root(), path);
        if (node != null && !(node instanceof Node.Items) && before.size() != after.size()) {
            text = single.asList(node);
        }
        Shape.Key entry = ValueText.entry(key);
        List<Object> had = new ArrayList<>(before);
        for (int i = had.size() - 1; i >= 0 && had.size() > after.size(); i--) {
            if (!after.contains(had.get(i)) || i >= after.size()) {
                text = FieldEdit.takeOut(text, Paths.item(path, i + 1));
                had.remove(i);
            }
        }
        while (had.size() < after.size()) {
            Object more = after.get(had.size());
            Object last = had.isEmpty() ? null : had.get(had.size() - 1);
            Rewriter at = new Rewriter(text);
            if (!(NodePath.find(at.root(), path) instanceof Node.Items list)) {
                throw new IllegalArgumentException("no list at '" + path + "'");
            }
            boolean alike = last instanceof Record && last.getClass() == more.getClass();
            text = alike
                    ? at.withCopy(list, had.size() - 1)
                    : at.withItem(list, values.yaml(entry, more), had.size() - 1);
            had.add(alike ? last : more);
        }
        for (int i = 0; i < had.size(); i++) {
            value(Paths.item(path, i + 1), entry, had.get(i), after.get(i));
        }
    }

    /** What stands in the text as something else. */
    private void one(String path, Shape.Key key, Node node, Object before, Object after) {
        Measured measured = key.mark(Measured.class);
        if (after instanceof Vec2 to && before instanceof Vec2 from) {
            place(path, key, node, new Vec3(from.x(), from.y(), 0), new Vec3(to.x(), to.y(), 0), to);
        } else if (after instanceof Vec3 to && before instanceof Vec3 from) {
            place(path, key, node, from, to, to);
        } else if (after instanceof Record) {
            boolean named =
                    key.mark(FromParts.class) != null && values.partName().apply(after) != null;
            if (named || node instanceof Node.Scalar || before.getClass() != after.getClass()) {
                replace(path, values.yaml(key, after));
            } else {
                boolean byKey = key.type().isInterface()
                        && Annotated.of(key.type()).word().isEmpty();
                record(byKey ? Paths.key(path, Annotated.of(before.getClass()).word()) : path, before, after);
            }
        } else if (after instanceof Double number && measured != null) {
            number(path, node, number, measured);
        } else {
            replace(path, Plain.scalar(values.word(after, measured)));
        }
    }

    private void number(String path, Node node, double after, Measured measured) {
        boolean word = !(node instanceof Node.Scalar scalar) || scalar.text().equals(measured.orWord());
        replace(
                path,
                Plain.scalar(
                        word || !Double.isFinite(after)
                                ? values.number(after, measured)
                                : ValueText.rewritten(((Node.Scalar) node).text(), after, measured.value())));
    }

    /** A place by its coordinates, or by the tape; a direction. */
    private void place(String path, Shape.Key key, Node node, Vec3 from, Vec3 to, Object written) {
        Measured measured = key.mark(Measured.class);
        TapePlaces readings = tape;
        if (node instanceof Node.Items && measured != null) {
            boolean flat = written instanceof Vec2;
            coordinate(path + ".x", from.x(), to.x(), measured);
            coordinate(path + ".y", from.y(), to.y(), measured);
            if (!flat) {
                coordinate(path + ".z", from.z(), to.z(), measured);
            }
        } else if (measured != null && measured.value() == Kind.LENGTH && readings == null) {
            replace(path, values.yaml(key, written));
        } else if (measured != null
                && readings != null
                && measured.value() == Kind.LENGTH
                && Math.abs(from.z() - to.z()) <= SAME) {
            text = readings.moved(text, path, to.xy());
        } else {
            throw new IllegalArgumentException("'" + path + "' cannot be written otherwise");
        }
    }

    private void coordinate(String path, double before, double after, Measured measured) {
        Node node = find(path);
        if (Math.abs(before - after) > SAME && node != null) {
            number(path, node, after, measured);
        }
    }
}
