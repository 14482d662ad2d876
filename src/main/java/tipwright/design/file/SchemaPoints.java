// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.quantity.Kind;

/** Schemas of points that the tape places, and of thicknesses as they are sold. */
final class SchemaPoints {
    /** A point told by others, or by its name. */
    static final String PLACED = "placed-point";

    /** A length, a gauge or a plate. */
    static final String THICKNESS = "thickness";

    /** A gauge of wire. */
    static final String WIRE = "wire-gauge";

    private SchemaPoints() {}

    static Map<String, Object> definitions() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put(PLACED, placed());
        all.put(
                THICKNESS,
                Map.of(
                        "anyOf",
                        List.of(length(), text("^[0-9]+ ?(ga|gauge)$"), text("^[0-9][-0-9 ./]*( mm| in)? plate$"))));
        all.put(
                WIRE,
                Map.of(
                        "anyOf",
                        List.of(
                                Map.of("type", "number"),
                                text("^(AWG )?([0-9]{1,2}|[1-4]/0|-[0-9])( ?(AWG|ga|gauge))?$"))));
        return all;
    }

    private static Map<String, Object> text(String pattern) {
        Map<String, Object> text = new LinkedHashMap<>();
        text.put("type", "string");
        text.put("pattern", pattern);
        return text;
    }

    private static Map<String, Object> length() {
        return SchemaValues.reference(SchemaValues.name(Kind.LENGTH));
    }

    private static Map<String, Object> placed() {
        Map<String, Object> lengths = new LinkedHashMap<>();
        lengths.put("type", "object");
        lengths.put("minProperties", 1);
        lengths.put("additionalProperties", length());
        Map<String, Object> two = new LinkedHashMap<>();
        two.put("type", "array");
        two.put("items", Map.of("type", "string"));
        two.put("minItems", 2);
        two.put("maxItems", 2);
        Map<String, Object> keys = new LinkedHashMap<>();
        for (PointKey key : PointKey.values()) {
            Map<String, Object> schema =
                    switch (key.sort()) {
                        case LENGTHS -> lengths;
                        case WORD -> Map.of("enum", PointKey.sides());
                        case LIST -> two;
                        default -> length();
                    };
            keys.put(key.word(), described(schema, key.note()));
        }
        Map<String, Object> group = new LinkedHashMap<>();
        group.put("type", "object");
        group.put("properties", keys);
        group.put("minProperties", 1);
        group.put("additionalProperties", false);
        Map<String, Object> any = new LinkedHashMap<>();
        any.put("anyOf", List.of(Map.of("type", "string"), group));
        return any;
    }

    private static Map<String, Object> described(Map<String, Object> schema, String words) {
        Map<String, Object> described = new LinkedHashMap<>(schema);
        described.put("description", words);
        return described;
    }

    /** Names with their points. */
    static Map<String, Object> named() {
        Map<String, Object> coordinates = new LinkedHashMap<>();
        coordinates.put("type", "array");
        coordinates.put("items", length());
        coordinates.put("minItems", 2);
        coordinates.put("maxItems", 3);
        Map<String, Object> group = new LinkedHashMap<>();
        group.put("type", "object");
        group.put("minProperties", 1);
        group.put("additionalProperties", Map.of("anyOf", List.of(coordinates, SchemaValues.reference(PLACED))));
        return group;
    }
}
