// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Counted;
import tipwright.design.key.FromParts;
import tipwright.design.key.Measured;
import tipwright.design.key.Sold;
import tipwright.design.tank.UsualSlurry;
import tipwright.design.tape.NamedPoints;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitLabel;

/** Schemas of single keys: quantities, points, words, lists. */
final class SchemaValues {
    private static final String ABOUT = "(about +|~ *)?";
    private static final String DOUBT = "( *\\+- *[0-9.][-0-9 ./]*[A-Za-z0-9%/\"' ]*)?";
    private static final String NUMBER = "[-+ ]*[0-9.][-+0-9 ./eE]*";
    private static final Pattern SYNTAX = Pattern.compile("[\\^$\\\\.*+?()\\[\\]{}|/]");

    private final SchemaWriter writer;

    SchemaValues(SchemaWriter writer) {
        this.writer = writer;
    }

    static String name(Kind kind) {
        return Shape.fileWord(kind);
    }

    static Map<String, Object> reference(String name) {
        Map<String, Object> reference = new LinkedHashMap<>();
        reference.put("$ref", "#/$defs/" + name);
        return reference;
    }

    /** A quantity as text; a share may be a plain number too. */
    static Map<String, Object> quantity(Kind kind) {
        List<String> labels = new ArrayList<>();
        for (UnitLabel unit : Quantities.units(kind)) {
            labels.add(escaped(unit.name()));
            unit.aliases().forEach(alias -> labels.add(escaped(alias)));
        }
        String units = "(" + String.join("|", labels) + ")";
        String inches = kind == Kind.LENGTH ? "( ?-? ?[0-9.][-0-9 ./]*(in|inch|inches|\"))?" : "";
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", kind == Kind.RATIO ? List.of("number", "string") : "string");
        schema.put(
                "pattern",
                "^" + ABOUT + NUMBER + units + (kind == Kind.RATIO ? "?" : "") + inches + " *" + DOUBT + "$");
        schema.put("examples", List.of(kind.example()));
        return schema;
    }

    private static String escaped(String label) {
        return SYNTAX.matcher(label).replaceAll("\\\\$0");
    }

    /** The schema of a key with what it means, what is allowed and what is taken when it is left out. */
    Map<String, Object> property(Shape.Key key) {
        Map<String, Object> schema = key.list() ? list(key) : one(key);
        String description = description(key);
        if (!description.isEmpty()) {
            schema.put("description", description);
        }
        String preset = key.preset();
        if (preset != null && !preset.isEmpty() && !preset.startsWith("[")) {
            schema.put("default", typed(key.type(), preset));
        }
        return schema;
    }

    private static Object typed(Class<?> type, String preset) {
        if (type == boolean.class) {
            return Boolean.valueOf(preset);
        }
        return type == int.class ? Integer.valueOf(preset) : preset;
    }

    private static String description(Shape.Key key) {
        Measured measured = key.mark(Measured.class);
        String limits = measured == null ? "" : QuantityBinder.allowed(measured);
        String note = key.note();
        return note.isEmpty() || limits.isEmpty() ? note + limits : note + "; " + limits;
    }

    private Map<String, Object> list(Shape.Key key) {
        Counted counted = key.mark(Counted.class);
        Map<String, Object> list = new LinkedHashMap<>();
        list.put("type", "array");
        list.put("items", one(key));
        list.put("minItems", counted == null ? 0 : counted.atLeast());
        list.put("maxItems", counted == null ? 1000 : counted.atMost());
        boolean points = key.type() == Vec2.class || key.type() == Vec3.class;
        return points || (counted != null && counted.atLeast() > 1) ? list : any(List.of(list, one(key)));
    }

    private Map<String, Object> one(Shape.Key key) {
        Class<?> type = key.type();
        Measured measured = key.mark(Measured.class);
        if (measured != null) {
            if (type == Vec2.class || type == Vec3.class) {
                return point(type == Vec2.class ? 2 : 3, measured);
            }
            Map<String, Object> quantity = reference(
                    measured.sheet()
                            ? SchemaPoints.THICKNESS
                            : measured.wire() ? SchemaPoints.WIRE : name(measured.value()));
            String other = key.mark(Sold.class) != null ? "?" : measured.orWord();
            return other.isEmpty() ? quantity : any(List.of(quantity, Map.of("const", other)));
        }
        if (type == NamedPoints.class) {
            return SchemaPoints.named();
        }
        if (type == UsualSlurry.class) {
            Map<String, Object> kinds = new LinkedHashMap<>();
            kinds.put("enum", UsualSlurry.all().stream().map(UsualSlurry::name).toList());
            return kinds;
        }
        if (type.isRecord() || type.isSealed()) {
            Map<String, Object> group = writer.reference(type);
            return key.mark(FromParts.class) == null ? group : any(List.of(Map.of("type", "string"), group));
        }
        return word(type, key.mark(Counted.class));
    }

    private static Map<String, Object> point(int size, Measured measured) {
        Kind kind = measured.value();
        boolean direction = kind == Kind.RATIO;
        Map<String, Object> point = new LinkedHashMap<>();
        point.put("type", "array");
        point.put("items", direction ? Map.of("type", "number") : reference(name(kind)));
        point.put("minItems", size);
        point.put("maxItems", size);
        List<String> axes = size == 2 ? List.of("x", "y", "-x", "-y") : List.of("x", "y", "z", "-x", "-y", "-z");
        if (!direction) {
            return measured.within() ? point : any(List.of(point, reference(SchemaPoints.PLACED)));
        }
        return any(List.of(Map.of("enum", axes), point));
    }

    private static Map<String, Object> word(Class<?> type, @Nullable Counted counted) {
        Map<String, Object> schema = new LinkedHashMap<>();
        if (type.isEnum()) {
            schema.put("enum", WordBinder.words(type));
        } else if (type == boolean.class) {
            schema.put("enum", List.of(true, false, "yes", "no"));
        } else if (type == int.class) {
            schema.put("type", "integer");
            schema.put("minimum", counted == null ? 0 : counted.atLeast());
            schema.put("maximum", counted == null ? Integer.MAX_VALUE : counted.atMost());
        } else if (type == Double.class) {
            schema.put("type", "number");
            schema.put("minimum", 0);
        } else {
            schema.put("type", "string");
        }
        return schema;
    }

    private static Map<String, Object> any(List<Object> schemas) {
        Map<String, Object> any = new LinkedHashMap<>();
        any.put("anyOf", schemas);
        return any;
    }
}
