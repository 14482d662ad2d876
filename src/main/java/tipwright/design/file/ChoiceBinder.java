// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Annotated;

/** Reads a record of a sealed interface, told apart by a key ('shape: box') or by being the only key ('straight: {...}'). */
final class ChoiceBinder {
    private final Problems problems;
    private final Binder binder;

    ChoiceBinder(Problems problems, Binder binder) {
        this.problems = problems;
        this.binder = binder;
    }

    /** The record; null with problems noted. The arguments are those of {@link Binder#record}. */
    @Nullable
    Object read(Class<?> type, Node node, String path, Place at, Set<String> extra) {
        Map<String, Class<?>> all = words(type);
        String by = Annotated.of(type).word();
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
                            + ErrorText.oneOf(all.keySet()) + ")");
            return null;
        }
        String word = field.value() instanceof Node.Scalar scalar ? scalar.text() : "";
        Class<?> chosen = all.get(word);
        if (chosen == null) {
            problems.add(
                    field.value().place(),
                    Paths.key(path, by),
                    field.value().words() + " is not known here; " + ErrorText.meant(word, all.keySet()));
            return null;
        }
        Set<String> allowed = new LinkedHashSet<>(extra);
        allowed.add(by);
        return binder.record(chosen, group, path, at, allowed);
    }

    private @Nullable Object only(Map<String, Class<?>> all, Node.Fields group, String path, Place at) {
        if (group.fields().size() != 1) {
            String found = group.fields().isEmpty()
                    ? "nothing"
                    : ErrorText.and(group.fields().keySet());
            String needed = all.size() == 1 ? ErrorText.oneOf(all.keySet()) : "one of " + ErrorText.oneOf(all.keySet());
            problems.add(at, path, needed + " is needed below this, and nothing else; found " + found);
            return null;
        }
        String word = group.fields().keySet().iterator().next();
        Node.Field field = group.fields().values().iterator().next();
        Class<?> chosen = all.get(word);
        if (chosen == null) {
            problems.add(
                    field.key(),
                    Paths.key(path, word),
                    "key " + ErrorText.quoted(word) + " is not known here; " + ErrorText.meant(word, all.keySet()));
            return null;
        }
        return binder.record(chosen, field.value(), Paths.key(path, word), field.key(), Set.of());
    }

    /** The records of a sealed interface, and of those in its permits clause, by their words, in the order of that clause. */
    static Map<String, Class<?>> words(Class<?> type) {
        Map<String, Class<?>> all = new LinkedHashMap<>();
        for (Class<?> permitted : type.getPermittedSubclasses()) {
            if (permitted.isInterface()) {
                all.putAll(words(permitted));
            } else {
                all.put(Annotated.of(permitted).word(), permitted);
            }
        }
        return all;
    }
}
