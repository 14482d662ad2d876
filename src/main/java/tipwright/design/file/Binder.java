// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.key.Counted;
import tipwright.design.key.FromParts;
import tipwright.design.key.Measured;
import tipwright.design.key.Sold;
import tipwright.design.tank.UsualSlurry;
import tipwright.design.tape.NamedPoints;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Turns the nodes of one file into records, noting everything that is wrong on the way. */
final class Binder {
    private final Reader reader;
    private final SourceMap sources;
    private final Problems problems;
    private final QuantityBinder quantities;
    private final VectorBinder vectors;
    private final WordBinder words;
    private final KeyRules keys;
    private final ChoiceBinder choices;

    Binder(Reader reader, SourceMap sources) {
        this.reader = reader;
        this.sources = sources;
        problems = reader.problems();
        quantities = new QuantityBinder(reader);
        vectors = new VectorBinder(reader, quantities);
        words = new WordBinder(problems);
        keys = new KeyRules(problems);
        choices = new ChoiceBinder(problems, this);
    }

    ChoiceBinder choices() {
        return choices;
    }

    /**
     * A record from a group of keys; null with problems noted.
     *
     * @param at where its key stands: the place to report what is missing
     * @param extra keys that are allowed beside the record's own
     */
    @Nullable
    Object record(Class<?> type, Node node, String path, Place at, Set<String> extra) {
        Shape shape = reader.shape(type);
        if (!(node instanceof Node.Fields group)) {
            problems.add(
                    node.place(),
                    path,
                    "a group of keys is needed here (" + sample(shape) + "); found " + node.words());
            return null;
        }
        Set<String> meant = keys.unknown(shape, group, path, extra);
        boolean good = keys.exactlyOne(shape, group, path, at, meant);
        Map<String, Object> read = new LinkedHashMap<>();
        for (Shape.Key key : shape.keys()) {
            if (key.loaded()) {
                continue;
            }
            String below = Paths.key(path, key.name());
            Node.Field field = group.fields().get(key.name());
            Object value = null;
            if (field != null) {
                value = given(key, field, below);
            } else if (key.preset() != null) {
                value = preset(key, below, at);
            } else if (key.mandatory() && !meant.contains(key.name())) {
                problems.add(
                        at, path, "'" + key.name() + "' is missing; add a line such as '" + Samples.line(key) + "'");
            }
            good &= value != null || (field == null && key.mayBeAbsent());
            if (value != null) {
                read.put(key.name(), value);
                reader.bound().put(below, value, sources);
            }
        }
        return finished(type, shape, read, path, good);
    }

    private @Nullable Object finished(Class<?> type, Shape shape, Map<String, Object> read, String path, boolean good) {
        boolean loaded = good;
        @Nullable Object[] values = new @Nullable Object[shape.keys().size()];
        for (int i = 0; i < values.length; i++) {
            Shape.Key key = shape.keys().get(i);
            values[i] = key.loaded() ? reader.loaded(type, read, path, sources) : read.get(key.name());
            if (values[i] == null && good && key.givenElsewhere()) {
                values[i] = notYet(key.type());
            }
            loaded &= !key.loaded() || values[i] != null;
        }
        return loaded ? shape.make(values) : null;
    }

    /** What stands for a value that the record works out from its other keys; null for types that may be null. */
    private static @Nullable Object notYet(Class<?> type) {
        if (type == Vec3.class) {
            return new Vec3(Double.NaN, Double.NaN, Double.NaN);
        }
        return type == double.class ? Double.NaN : null;
    }

    private @Nullable Object preset(Shape.Key key, String path, Place at) {
        String text = key.preset();
        if (text == null) {
            return null;
        }
        if (text.isEmpty()) {
            return key.list() ? List.of() : record(key.type(), new Node.Fields(at, Map.of()), path, at, Set.of());
        }
        String said = key.type() == boolean.class ? (text.equals("true") ? "yes" : "no") : text;
        reader.assume(new Assumption(path, said, key.note(), false, key.kind()));
        Node node = text.startsWith("[") ? YamlText.read("", text, problems) : new Node.Scalar(at, text, true);
        return node == null ? null : given(key, new Node.Field(at, node), path);
    }

    private @Nullable Object given(Shape.Key key, Node.Field field, String path) {
        if (key.list()) {
            return list(key, field, path);
        }
        return one(key, field.value(), path, field.key());
    }

    private @Nullable Object list(Shape.Key key, Node.Field field, String path) {
        Node value = field.value();
        if (value instanceof Node.Scalar scalar && scalar.isNothing()) {
            problems.add(value.place(), path, "nothing given; write '[]' for none, or leave the key out");
            return null;
        }
        List<Node> items = value instanceof Node.Items list ? list.items() : List.of(value);
        Counted counted = key.mark(Counted.class);
        int least = counted == null ? 0 : counted.atLeast();
        int most = counted == null ? 1000 : counted.atMost();
        if (items.size() < least || items.size() > most) {
            String allowed = least == most ? least + " are needed" : least + " to " + most + " are allowed";
            problems.add(
                    value.place(), path, items.size() + (items.size() == 1 ? " entry" : " entries") + "; " + allowed);
            return null;
        }
        if (!(value instanceof Node.Items)) {
            sources.alsoAsFirstEntry(path);
        }
        List<Object> all = new ArrayList<>();
        for (int i = 0; i < items.size() && !problems.full(); i++) {
            String below = Paths.item(path, i + 1);
            Object read = one(key, items.get(i), below, items.get(i).place());
            if (read != null) {
                all.add(read);
                reader.bound().put(below, read, sources);
            }
        }
        return all.size() == items.size() ? List.copyOf(all) : null;
    }

    private @Nullable Object one(Shape.Key key, Node node, String path, Place at) {
        if (!SizeQuestion.isMark(node) || key.type() == String.class) {
            return plain(key, node, path, at);
        }
        SizeQuestion question = SizeQuestion.of(key, node.place(), path);
        if (question == null) {
            problems.add(node.place(), path, SizeQuestion.notHere(key.name()));
            return null;
        }
        return plain(key, reader.answer(question, usual(key)), path, at);
    }

    /** What stands for a size that is asked for until it is known. */
    private String usual(Shape.Key key) {
        Sold sold = key.mark(Sold.class);
        FromParts section = key.mark(FromParts.class);
        return sold != null
                ? sold.usual()
                : reader.shelf().names(section == null ? "" : section.value()).stream()
                        .findFirst()
                        .orElse("");
    }

    private @Nullable Object plain(Shape.Key key, Node node, String path, Place at) {
        Measured measured = key.mark(Measured.class);
        FromParts section = key.mark(FromParts.class);
        Class<?> type = key.type();
        if (measured != null) {
            boolean point = type == Vec2.class || type == Vec3.class;
            return point ? vectors.read(type, measured, node, path) : quantities.read(measured, node, path);
        }
        if (section != null && node instanceof Node.Scalar name && !name.isNothing()) {
            Object part = reader.part(section.value(), name.text(), name.place(), path);
            return type == ListedActuator.class && part instanceof Actuator a
                    ? new ListedActuator(name.text(), a)
                    : part;
        }
        if (section != null && !(node instanceof Node.Fields)) {
            problems.add(
                    node.place(),
                    path,
                    "a name from the parts files is needed here, or the fields in { }; found " + node.words());
            return null;
        }
        if (type == NamedPoints.class) {
            return reader.points().read(node, path, quantities);
        }
        if (type == UsualSlurry.class) {
            return UsualBinder.read(reader, node, path);
        }
        if (type.isRecord()) { // asked first: whether a class is sealed is known when all that it permits are loaded
            return record(type, node, path, at, Set.of());
        }
        return type.isSealed()
                ? choices.read(type, node, path, at, Set.of())
                : words.read(type, key.mark(Counted.class), node, path);
    }

    private static String sample(Shape shape) {
        return shape.keys().stream()
                        .filter(k -> !k.loaded())
                        .limit(1)
                        .map(Samples::line)
                        .findFirst()
                        .orElse("") + ", ...";
    }
}
