// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.key.Annotated;

/** The keys that a design file may have, with what their records note of them. */
public final class DesignKeys {
    private final List<Known> all = new ArrayList<>();
    private final Set<Class<?>> told = new HashSet<>();

    private DesignKeys() {}

    /**
     * A key.
     *
     * @param path from the top of the file: 'what-if.structure'
     * @param note what it means
     * @param preset what is taken when it is missing, as written; null: nothing
     * @param needed whether the part that it belongs to cannot do without it
     */
    public record Known(String path, String note, @Nullable String preset, boolean needed) {
        private String last() {
            return path.substring(path.lastIndexOf('.') + 1);
        }
    }

    /** All of them, in the order of the file; those of a part stand where the part is met first. */
    public static List<Known> all() {
        DesignKeys keys = new DesignKeys();
        keys.group("", Design.class);
        keys.places(SchemaPoints.definitions());
        return List.copyOf(keys.all);
    }

    /**
     * Those of a name, by its whole path or by any end of it.
     *
     * @param name 'structure', 'what-if.structure'
     */
    public static List<Known> find(String name) {
        List<Known> all = all();
        String end = name;
        while (true) {
            String sought = end;
            List<Known> found = all.stream()
                    .filter(k -> k.path().equals(sought) || k.path().endsWith("." + sought))
                    .toList();
            int dot = end.indexOf('.');
            if (!found.isEmpty() || dot < 0) {
                return found;
            }
            end = end.substring(dot + 1);
        }
    }

    /** Names of keys without their paths, each once. */
    public static List<String> names() {
        return all().stream().map(Known::last).distinct().toList();
    }

    private void group(String path, Class<?> record) {
        if (!told.add(record)) {
            return;
        }
        for (Shape.Key key : Shape.of(record).keys()) {
            if (!key.loaded() && !key.note().isEmpty()) {
                String here = path + key.name();
                add(new Known(here, key.note(), key.preset(), key.mandatory()));
                inside(here + ".", key.type());
            }
        }
    }

    /** The keys of a place given by the tape, as the schema has them. */
    private void places(Object schema) {
        if (schema instanceof Map<?, ?> map) {
            if (map.get("properties") instanceof Map<?, ?> properties) {
                properties.forEach((name, value) -> {
                    if (value instanceof Map<?, ?> one && one.get("description") instanceof String note) {
                        add(new Known("points.NAME." + name, note, null, false));
                    }
                });
            }
            map.values().forEach(this::places);
        } else if (schema instanceof Iterable<?> list) {
            list.forEach(this::places);
        }
    }

    private void add(Known known) {
        if (all.stream().noneMatch(k -> k.path.equals(known.path) && k.note.equals(known.note))) {
            all.add(known);
        }
    }

    private void inside(String path, Class<?> type) {
        if (!type.getPackageName().startsWith(Design.class.getPackageName())) {
            return;
        }
        if (type.isRecord()) {
            group(path, type);
        } else if (type.isSealed()) {
            boolean byKey = !Annotated.of(type).word().isEmpty();
            ChoiceBinder.words(type).forEach((word, record) -> group(byKey ? path : path + word + ".", record));
        }
    }
}
