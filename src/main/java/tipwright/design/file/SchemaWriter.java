// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tipwright.design.Design;
import tipwright.design.key.Annotated;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * Generates the JSON Schema of the file formats from the records, so that an editor completes keys and marks mistakes while they
 * are typed. Source: JSON Schema draft 2020-12.
 */
public final class SchemaWriter {
    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

    private final Map<String, Object> definitions = new LinkedHashMap<>();
    private final Set<Class<?>> seen = new LinkedHashSet<>();
    private final Deque<Class<?>> waiting = new ArrayDeque<>();
    private final Set<String> extra;

    private SchemaWriter(Set<String> extra) {
        this.extra = extra;
    }

    /** The schema of design files, as a JSON text. */
    public static String design() {
        SchemaWriter writer = new SchemaWriter(Set.of());
        Map<String, Object> root = start("A Tipwright design: a tank that tips, what is in it and what pushes it.");
        root.putAll(writer.group(Design.class, Map.of()));
        return writer.finish(root);
    }

    /** The schema of parts files, as a JSON text. */
    public static String parts() {
        SchemaWriter writer = new SchemaWriter(Set.of("note"));
        Map<String, Object> root = start("A Tipwright parts file: actuators and bearings by name.");
        Map<String, Object> sections = new LinkedHashMap<>();
        sections.put("tipwright-parts", Map.of("const", 1));
        PartsShelf.SECTIONS.forEach((name, type) -> {
            Map<String, Object> section = new LinkedHashMap<>();
            section.put("type", "object");
            section.put("additionalProperties", writer.reference(type));
            sections.put(name, section);
        });
        root.put("type", "object");
        root.put("properties", sections);
        root.put("required", List.of("tipwright-parts"));
        root.put("additionalProperties", false);
        return writer.finish(root);
    }

    private static Map<String, Object> start(String title) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("$schema", DIALECT);
        root.put("title", title);
        return root;
    }

    private String finish(Map<String, Object> root) {
        for (Class<?> type = waiting.poll(); type != null; type = waiting.poll()) {
            definitions.put(name(type), type.isSealed() ? choice(type) : group(type, Map.of()));
        }
        for (Kind kind : Kind.values()) {
            definitions.put(SchemaValues.name(kind), SchemaValues.quantity(kind));
        }
        definitions.putAll(SchemaPoints.definitions());
        root.put("$defs", definitions);
        return Json.text(root);
    }

    /** A reference to a record or a choice, which is written later. */
    Map<String, Object> reference(Class<?> type) {
        if (seen.add(type)) {
            waiting.add(type);
        }
        return SchemaValues.reference(name(type));
    }

    private static String name(Class<?> type) {
        Class<?> outer = type.getEnclosingClass();
        return (outer == null ? "" : outer.getSimpleName() + ".") + type.getSimpleName();
    }

    private Map<String, Object> choice(Class<?> type) {
        String by = Annotated.of(type).word();
        List<Object> all = new ArrayList<>();
        ChoiceBinder.words(type).forEach((word, record) -> {
            if (by.isEmpty()) {
                Map<String, Object> only = new LinkedHashMap<>();
                only.put("type", "object");
                only.put("properties", Map.of(word, reference(record)));
                only.put("required", List.of(word));
                only.put("additionalProperties", false);
                all.add(only);
            } else {
                all.add(group(record, Map.of(by, Map.of("const", word))));
            }
        });
        return Map.of("oneOf", all);
    }

    /**
     * The schema of a record.
     *
     * @param fixed the key that tells it from its sisters
     */
    private Map<String, Object> group(Class<?> record, Map<String, Object> fixed) {
        Map<String, Object> properties = new LinkedHashMap<>(fixed);
        List<String> required = new ArrayList<>(fixed.keySet());
        SchemaValues values = new SchemaValues(this);
        for (Shape.Key key : Shape.of(record).keys()) {
            if (!key.loaded()) {
                properties.put(key.name(), values.property(key));
                if (key.mandatory()) {
                    required.add(key.name());
                }
            }
        }
        if (!fixed.isEmpty()) {
            extra.forEach(name -> properties.put(name, Map.of("type", "string")));
        }
        Map<String, Object> group = new LinkedHashMap<>();
        Note note = record.getAnnotation(Note.class);
        if (note != null) {
            group.put("description", note.value());
        }
        group.put("type", "object");
        group.put("properties", properties);
        if (!required.isEmpty()) {
            group.put("required", required);
        }
        group.put("additionalProperties", false);
        List<Object> sets = new ArrayList<>();
        for (List<String> set : Annotated.of(record).exactlyOne()) {
            List<Object> each = new ArrayList<>();
            for (String name : set) {
                each.add(Map.of("required", List.of(name)));
            }
            sets.add(Map.of("oneOf", each));
        }
        if (!sets.isEmpty()) {
            group.put("allOf", sets);
        }
        return group;
    }
}
