// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Copy;
import tipwright.design.key.FromParts;
import tipwright.design.key.Measured;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;

/**
 * Writes values of a design as a builder would write them, on one line: what may be left out is left out where it is what would be
 * taken anyway. All throw IllegalArgumentException for what cannot be written.
 *
 * @param units for what is not written yet
 * @param partName name of a part of the parts files; null: it has none
 */
record ValueText(UnitSystem units, Function<Object, @Nullable String> partName) {
    private static final double ON_MARK = 1e-6;
    private static final double SAME = 1e-12;

    /** The value of a key. */
    String yaml(Shape.Key key, Object value) {
        if (key.list() && value instanceof List<?> list) {
            Shape.Key entry = entry(key);
            return "["
                    + String.join(", ", list.stream().map(v -> yaml(entry, v)).toList()) + "]";
        }
        Measured measured = key.mark(Measured.class);
        if (value instanceof Vec2 p) {
            return "[" + number(p.x(), measured) + ", " + number(p.y(), measured) + "]";
        }
        if (value instanceof Vec3 p) {
            return "[" + number(p.x(), measured) + ", " + number(p.y(), measured) + ", " + number(p.z(), measured)
                    + "]";
        }
        String name = key.mark(FromParts.class) == null ? null : partName.apply(value);
        return name != null ? Plain.scalar(name) : value instanceof Record r ? record(key, r) : word(value, measured);
    }

    /** A single value without quotes. */
    String word(Object value, @Nullable Measured measured) {
        if (value instanceof Double number) {
            return number(number, measured);
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof Enum<?> constant) {
            return Shape.fileWord(constant);
        }
        if (value instanceof Integer || value instanceof String) {
            return value.toString();
        }
        throw new IllegalArgumentException("a " + value.getClass().getSimpleName() + " is no single value");
    }

    /** What the key's entries are, where it is a list. */
    static Shape.Key entry(Shape.Key key) {
        return new Shape.Key(key.name(), key.type(), false, key.marks(), false);
    }

    private String record(Shape.Key key, Record value) {
        Choice choice = value.getClass().getAnnotation(Choice.class);
        String keys = String.join(", ", keys(value));
        if (choice == null || !key.type().isInterface()) {
            return "{" + keys + "}";
        }
        Choice by = key.type().getAnnotation(Choice.class);
        return by == null || by.value().isEmpty()
                ? "{" + choice.value() + ": {" + keys + "}}"
                : "{" + by.value() + ": " + choice.value() + (keys.isEmpty() ? "" : ", " + keys) + "}";
    }

    private List<String> keys(Record value) {
        List<String> all = new ArrayList<>();
        List<Shape.Key> keys = Shape.of(value.getClass()).keys();
        RecordComponent[] components = value.getClass().getRecordComponents();
        for (int i = 0; i < components.length; i++) {
            Shape.Key key = keys.get(i);
            Object inner = Copy.value(components[i], value);
            if (!key.loaded() && inner != null) {
                String written = yaml(key, inner);
                if (!usual(key, inner, written)) {
                    all.add(key.name() + ": " + written);
                }
            }
        }
        return all;
    }

    /** Whether it is what is taken when the key is left out. */
    private static boolean usual(Shape.Key key, Object value, String written) {
        String preset = key.preset();
        Measured measured = key.mark(Measured.class);
        if (preset == null) {
            return false;
        }
        if (value instanceof Double number && measured != null) {
            return near(number, si(preset, measured));
        }
        return preset.isEmpty()
                ? written.equals("{}") || written.equals("[]")
                : written.equals(preset) || value.toString().equals(preset);
    }

    private static boolean near(double a, double b) {
        return a == b || Math.abs(a - b) <= SAME;
    }

    private static double si(String preset, Measured measured) {
        try {
            return preset.equals(measured.orWord())
                    ? Double.POSITIVE_INFINITY
                    : Quantities.parse(preset, measured.value());
        } catch (QuantityException e) {
            throw new IllegalStateException("a preset is sound", e);
        }
    }

    /** A number in the usual unit of its kind; a length on a mark of the tape as the tape shows it. */
    String number(double si, @Nullable Measured measured) {
        if (measured == null) {
            return Quantities.number(si);
        }
        if (!Double.isFinite(si)) {
            if (si > 0 && !measured.orWord().isEmpty()) {
                return measured.orWord();
            }
            throw new IllegalArgumentException("no number");
        }
        if (measured.value() == Kind.LENGTH && Math.abs(si - Marks.rounded(si, units)) < ON_MARK) {
            return Marks.show(si, units);
        }
        boolean area = measured.value() == Kind.AREA && units == UnitSystem.METRIC;
        // sections of steel, cable and bolts are sold in mm2
        return rewritten(area ? "1 mm2" : Quantities.show(si, measured.value(), units), si, measured.value());
    }

    /** A value in the unit of an old one; inches on a mark of the tape as a fraction. */
    static String rewritten(String old, double si, Kind kind) {
        boolean inches = kind == Kind.LENGTH && old.endsWith("in");
        boolean onMark = Math.abs(si - Marks.rounded(si, UnitSystem.US)) < ON_MARK;
        try {
            return inches && onMark && !doubtful(old)
                    ? Marks.show(si, UnitSystem.US)
                    : Quantities.rewrite(old, si, kind);
        } catch (QuantityException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    private static boolean doubtful(String written) {
        return written.contains("+-") || written.startsWith("about") || written.startsWith("~");
    }
}
