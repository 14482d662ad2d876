// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.design.Choice;
import tipwright.design.Counted;
import tipwright.design.ExactlyOne;
import tipwright.design.FromParts;
import tipwright.design.Measured;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Spelling;

/** Turns the nodes of one file into records, noting everything that is wrong on the way. */
final class Binder {
    private final Reader reader;
    private final SourceMap sources;
    private final Problems problems;
    private final QuantityBinder quantities;
    private final VectorBinder vectors;
    private final WordBinder words;

    Binder(Reader reader, SourceMap sources) {
        this.reader = reader;
        this.sources = sources;
        problems = reader.problems();
        quantities = new QuantityBinder(problems);
        vectors = new VectorBinder(problems, quantities);
        words = new WordBinder(problems);
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
        Set<String> meant = unknownKeys(shape, group, path, extra);
        boolean good = exactlyOne(type, shape, group, path, at);
        Map<String, Object> read = new LinkedHashMap<>();
        for (Shape.Key key : shape.keys()) {
            if (key.loaded()) {
                continue;
            }
            String below = path.isEmpty() ? key.name() : path + "." + key.name();
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
        return good ? finished(type, shape, read, path) : null;
    }

    private @Nullable Object finished(Class<?> type, Shape shape, Map<String, Object> read, String path) {
        @Nullable Object[] values = new @Nullable Object[shape.keys().size()];
        for (int i = 0; i < values.length; i++) {
            Shape.Key key = shape.keys().get(i);
            values[i] = key.loaded() ? reader.loaded(type, read, path, sources) : read.get(key.name());
            if (key.loaded() && values[i] == null) {
                return null;
            }
        }
        return shape.make(values);
    }

    private Set<String> unknownKeys(Shape shape, Node.Fields group, String path, Set<String> extra) {
        Set<String> known = new LinkedHashSet<>(extra);
        shape.keys().stream().filter(k -> !k.loaded()).forEach(k -> known.add(k.name()));
        Set<String> free = new LinkedHashSet<>(known);
        free.removeAll(group.fields().keySet());
        Set<String> meant = new LinkedHashSet<>();
        group.fields().forEach((name, field) -> {
            if (!known.contains(name)) {
                String near = Spelling.nearest(name, free);
                String full = path.isEmpty() ? name : path + "." + name;
                problems.add(
                        field.key(),
                        full,
                        "key " + Say.quoted(name) + " is not known here; "
                                + (near == null ? "allowed: " + Say.oneOf(known) : "did you mean '" + near + "'?"));
                if (near != null) {
                    meant.add(near);
                }
            }
        });
        return meant;
    }

    private boolean exactlyOne(Class<?> type, Shape shape, Node.Fields group, String path, Place at) {
        boolean good = true;
        for (ExactlyOne choice : type.getAnnotationsByType(ExactlyOne.class)) {
            List<String> given = new ArrayList<>(List.of(choice.value()));
            given.retainAll(group.fields().keySet());
            if (given.isEmpty()) {
                good = false;
                String first = choice.value()[0];
                Shape.Key key = shape.keys().stream()
                        .filter(k -> k.name().equals(first))
                        .findFirst()
                        .orElseThrow();
                problems.add(
                        at,
                        path,
                        "give one of " + Say.oneOf(List.of(choice.value())) + "; add a line such as '"
                                + Samples.line(key) + "'");
            }
            for (int i = 1; i < given.size(); i++) {
                good = false;
                Node.Field field = group.fields().get(given.get(i));
                if (field != null) {
                    problems.add(
                            field.key(),
                            path + "." + given.get(i),
                            "'" + given.get(i) + "' and '" + given.get(0) + "' are both given; keep one");
                }
            }
        }
        return good;
    }

    private @Nullable Object preset(Shape.Key key, String path, Place at) {
        String text = key.preset();
        if (text == null) {
            return null;
        }
        if (text.isEmpty()) {
            return key.list() ? List.of() : record(key.type(), new Node.Fields(at, Map.of()), path, at, Set.of());
        }
        reader.assume(new Assumption(path, text, key.note()));
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
        List<Object> all = new ArrayList<>();
        for (int i = 0; i < items.size() && !problems.full(); i++) {
            String below = value instanceof Node.Items ? path + "[" + (i + 1) + "]" : path;
            Object read = one(key, items.get(i), below, items.get(i).place());
            if (read != null) {
                all.add(read);
                reader.bound().put(below, read, sources);
            }
        }
        return all.size() == items.size() ? List.copyOf(all) : null;
    }

    private @Nullable Object one(Shape.Key key, Node node, String path, Place at) {
        Measured measured = key.mark(Measured.class);
        FromParts section = key.mark(FromParts.class);
        Class<?> type = key.type();
        if (measured != null) {
            boolean point = type == Vec2.class || type == Vec3.class;
            return point ? vectors.read(type, measured, node, path) : quantities.read(measured, node, path);
        }
        if (section != null && node instanceof Node.Scalar name && !name.isNothing()) {
            return reader.part(section.value(), name.text(), name.place(), path);
        }
        if (type.isSealed()) {
            return choice(type, node, path, at, Set.of());
        }
        return type.isRecord()
                ? record(type, node, path, at, Set.of())
                : words.read(type, key.mark(Counted.class), node, path);
    }

    /** A record of a sealed interface, told apart by a key or by being the only key. */
    @Nullable
    Object choice(Class<?> type, Node node, String path, Place at, Set<String> extra) {
        Map<String, Class<?>> all = new LinkedHashMap<>();
        for (Class<?> permitted : type.getPermittedSubclasses()) {
            all.put(Shape.choiceWord(permitted), permitted);
        }
        Choice choice = type.getAnnotation(Choice.class);
        String by = choice == null ? "" : choice.value();
        String sample = all.keySet().iterator().next();
        if (!(node instanceof Node.Fields group)) {
            String keys = by.isEmpty() ? sample + ": {...}" : by + ": " + sample + ", ...";
            problems.add(node.place(), path, "a group of keys is needed here (" + keys + "); found " + node.words());
            return null;
        }
        if (by.isEmpty()) {
            return only(all, group, path, at);
        }
        Node.Field field = group.fields().get(by);
        if (field == null) {
            problems.add(
                    at,
                    path,
                    "'" + by + "' is missing; add a line such as '" + by + ": " + sample + "' (allowed: "
                            + Say.oneOf(all.keySet()) + ")");
            return null;
        }
        String word = field.value() instanceof Node.Scalar scalar ? scalar.text() : "";
        Class<?> chosen = all.get(word);
        if (chosen == null) {
            problems.add(
                    field.value().place(),
                    path + "." + by,
                    field.value().words() + " is not known here; " + Say.meant(word, all.keySet()));
            return null;
        }
        Set<String> allowed = new LinkedHashSet<>(extra);
        allowed.add(by);
        return record(chosen, group, path, at, allowed);
    }

    private @Nullable Object only(Map<String, Class<?>> all, Node.Fields group, String path, Place at) {
        if (group.fields().size() != 1) {
            problems.add(
                    at,
                    path,
                    "exactly one of " + Say.oneOf(all.keySet()) + " is needed; found "
                            + (group.fields().isEmpty()
                                    ? "nothing"
                                    : Say.oneOf(group.fields().keySet())));
            return null;
        }
        String word = group.fields().keySet().iterator().next();
        Node.Field field = group.fields().values().iterator().next();
        Class<?> chosen = all.get(word);
        if (chosen == null) {
            problems.add(
                    field.key(),
                    path + "." + word,
                    "key " + Say.quoted(word) + " is not known here; " + Say.meant(word, all.keySet()));
            return null;
        }
        return record(chosen, field.value(), path + "." + word, field.key(), Set.of());
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
