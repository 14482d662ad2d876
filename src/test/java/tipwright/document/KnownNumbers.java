// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Finding;
import tipwright.design.key.Measured;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.Text;

/** Every value, in SI and by its kind, that a number on paper may come from. Mutable: owned by one test. */
final class KnownNumbers {
    private static final List<Map.Entry<String, String>> SUFFIXES = List.of(
            Map.entry("_mm", "mm"),
            Map.entry("_deg", "deg"),
            Map.entry("_l_s", "L/s"),
            Map.entry("_l", "L"),
            Map.entry("_kg_m3", "kg/m3"),
            Map.entry("_kg", "kg"),
            Map.entry("_mpa", "MPa"),
            Map.entry("_pa", "Pa"),
            Map.entry("_wh", "Wh"),
            Map.entry("_percent", "%"),
            Map.entry("_n", "N"),
            Map.entry("_s", "s"),
            Map.entry("_a", "A"),
            Map.entry("_w", "W"));
    /** Forces and lengths at every tilt of every load, of which paper shows none: they would explain any number. */
    private static final Set<String> NOT_SHOWN = Set.of("rows");

    private final Map<Kind, TreeSet<Double>> all = new EnumMap<>(Kind.class);
    private final Map<Object, Boolean> seen = new IdentityHashMap<>();

    /** One value, and without its sign. */
    KnownNumbers add(Kind kind, double si) {
        if (Double.isFinite(si)) {
            Set<Double> here = all.computeIfAbsent(kind, k -> new TreeSet<>());
            here.add(si);
            here.add(Math.abs(si));
        }
        return this;
    }

    /** A length, m. */
    KnownNumbers length(double m) {
        return add(Kind.LENGTH, m);
    }

    /** A distance between two points, and how far apart they are across and up. */
    KnownNumbers apart(Vec2 a, Vec2 b) {
        return length(a.minus(b).norm()).length(a.x() - b.x()).length(a.y() - b.y());
    }

    /** All numbers of a JSON, by the units that end the names of its fields; a check's by the unit that it tells. */
    KnownNumbers json(JsonNode node) {
        return json("", node);
    }

    private KnownNumbers json(String name, JsonNode node) {
        node.fields().forEachRemaining(e -> {
            if (!NOT_SHOWN.contains(e.getKey())) {
                json(e.getKey(), e.getValue());
            }
        });
        if (node.isArray()) {
            node.forEach(n -> json(name, n));
        }
        if (node.isNumber()) {
            SUFFIXES.stream().filter(e -> name.endsWith(e.getKey())).findFirst().ifPresent(e -> kinds(e.getValue())
                    .forEach(k -> add(k, Quantities.unit(k, e.getValue()).toSi(node.asDouble()))));
            if (name.equals("stroke_used") || name.equals("utilisation")) {
                add(Kind.RATIO, node.asDouble());
            }
        }
        return this;
    }

    /** Kinds that have a unit of this name. */
    private static Set<Kind> kinds(String unit) {
        Set<Kind> found = EnumSet.noneOf(Kind.class);
        for (Kind kind : Kind.values()) {
            if (Quantities.units(kind).stream().anyMatch(u -> u.name().equals(unit))) {
                found.add(kind);
            }
        }
        return found;
    }

    /** A finding's figures; a factor stands with what is needed or with what is there. */
    private void finding(Finding f) {
        add(f.kind(), f.needs()).add(f.kind(), f.has()).add(f.kind(), f.has() - f.needs());
        add(f.kind(), f.demand()).add(f.kind(), f.capacity());
        add(Kind.RATIO, f.utilisation()).add(Kind.ANGLE, f.tilt());
    }

    /** Every number that can be reached from a record: its own, and those of records, lists and maps in it. */
    KnownNumbers record(@Nullable Object value) {
        return record(value, null);
    }

    private KnownNumbers record(@Nullable Object value, @Nullable Kind kind) {
        if (value instanceof Number n && !(value instanceof Integer && kind == null)) {
            (kind == null ? EnumSet.allOf(Kind.class) : EnumSet.of(kind)).forEach(k -> add(k, n.doubleValue()));
        } else if (value instanceof Collection<?> list) {
            list.forEach(v -> record(v, kind));
        } else if (value instanceof Map<?, ?> map) {
            map.values().forEach(v -> record(v, kind));
        } else if (value instanceof Vec2 v) {
            length(v.x()).length(v.y());
        } else if (value instanceof Vec3 v) {
            length(v.x()).length(v.y()).length(v.z());
        } else if (value instanceof Record r && seen.put(r, true) == null) {
            if (r instanceof Finding f) {
                finding(f);
            }
            for (RecordComponent c : r.getClass().getRecordComponents()) {
                if (!(r instanceof Finding) || c.getType() == Text.class) {
                    record(value(r, c), kind(r, c));
                }
            }
        }
        return this;
    }

    private static @Nullable Object value(Record r, RecordComponent c) {
        try {
            c.getAccessor().setAccessible(true);
            return c.getAccessor().invoke(r);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new AssertionError(e);
        }
    }

    /** What a component of a record measures; null: anything. */
    private static @Nullable Kind kind(Record r, RecordComponent c) {
        Measured measured = c.getAnnotation(Measured.class);
        if (measured != null) {
            return measured.value();
        }
        if (r instanceof Text.Amount a) {
            return a.kind();
        }
        if (r instanceof Text.Rounded a) {
            return a.kind();
        }
        return r instanceof Text.Marked || r instanceof Text.Sized ? Kind.LENGTH : null;
    }

    /** Whether a number is one of them, rounded. */
    boolean has(PrintedNumbers.Number number) {
        double slack = 1.001 * number.half() + 1e-12;
        for (Kind kind : kinds(number.unit())) {
            Double next = all.getOrDefault(kind, new TreeSet<>()).ceiling(number.si() - slack);
            if (next != null && next <= number.si() + slack) {
                return true;
            }
        }
        return false;
    }
}
