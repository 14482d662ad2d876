// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.key.Annotated;
import tipwright.design.key.Copy;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/** Everything that was read, by its key in the file, in both unit systems. */
final class InputTable {
    private final Design design;

    InputTable(Design design) {
        this.design = design;
    }

    /** A table for each part of the file. */
    void to(Markup page) {
        for (RecordComponent part : Design.class.getRecordComponents()) {
            Object value = Copy.value(part, design);
            String key = key(part.getName());
            if (value == null || !(value instanceof Record || value instanceof List<?>)) {
                continue;
            }
            Note note = part.getAnnotation(Note.class);
            FixedTable grid = new FixedTable(
                    key + (note == null ? "" : ": " + note.value()),
                    FixedTable.Column.text("key", 40),
                    FixedTable.Column.text("metric", 30),
                    FixedTable.Column.text("US", 30));
            value(grid, "", value, null);
            if (!grid.isEmpty()) {
                grid.to(page);
            }
        }
    }

    private static void value(FixedTable grid, String path, Object value, @Nullable Measured measured) {
        if (value instanceof List<?> list) {
            list(grid, path, list, measured);
        } else if (measured != null) {
            grid.row(path, quantity(value, measured, UnitSystem.METRIC), quantity(value, measured, UnitSystem.US));
        } else if (value instanceof Record parts) {
            record(grid, path, parts);
        } else {
            String word = value instanceof Enum<?> e
                    ? e.name().toLowerCase(Locale.ROOT).replace('_', '-')
                    : value instanceof Boolean yes ? (yes ? "yes" : "no") : value.toString();
            if (!word.isEmpty()) {
                grid.row(path, word, "same");
            }
        }
    }

    private static void record(FixedTable grid, String path, Record parts) {
        if (parts instanceof ListedActuator listed) {
            grid.row(path, listed.name(), "same");
            return;
        }
        String word = Annotated.of(parts.getClass()).word();
        if (!word.isEmpty()) {
            grid.row(path.isEmpty() ? "kind" : path, word, "same");
        }
        for (RecordComponent part : parts.getClass().getRecordComponents()) {
            Object value = Copy.value(part, parts);
            boolean readable = part.getType().getName().startsWith("tipwright.geometry")
                    && !part.isAnnotationPresent(Measured.class);
            if (value != null && !readable) {
                String key = path.isEmpty() ? key(part.getName()) : path + "." + key(part.getName());
                value(grid, key, value, part.getAnnotation(Measured.class));
            }
        }
    }

    private static void list(FixedTable grid, String path, List<?> list, @Nullable Measured measured) {
        if (list.isEmpty()) {
            return;
        }
        if (list.get(0) instanceof Record && measured == null) {
            for (int i = 0; i < list.size(); i++) {
                value(grid, path + "[" + (i + 1) + "]", list.get(i), null);
            }
            return;
        }
        grid.row(path, joined(list, measured, UnitSystem.METRIC), joined(list, measured, UnitSystem.US));
    }

    private static String joined(List<?> list, @Nullable Measured measured, UnitSystem units) {
        return String.join(
                "; ",
                list.stream()
                        .map(v -> measured == null ? v.toString() : quantity(v, measured, units))
                        .toList());
    }

    private static String quantity(Object value, Measured measured, UnitSystem units) {
        Kind kind = measured.value();
        if (value instanceof Vec2 p) {
            return "[" + number(p.x(), kind, units) + ", " + number(p.y(), kind, units) + "]";
        }
        if (value instanceof Vec3 p) {
            return "[" + number(p.x(), kind, units) + ", " + number(p.y(), kind, units) + ", "
                    + number(p.z(), kind, units) + "]";
        }
        double si = ((Number) value).doubleValue();
        return Double.isInfinite(si) && !measured.orWord().isEmpty() ? measured.orWord() : number(si, kind, units);
    }

    private static String number(double si, Kind kind, UnitSystem units) {
        return Quantities.show(si, kind, units);
    }

    /** 'framePin' as 'frame-pin'. */
    private static String key(String name) {
        return name.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }
}
