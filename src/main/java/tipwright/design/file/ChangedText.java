// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.key.Choice;
import tipwright.design.key.Copy;
import tipwright.design.key.Measured;
import tipwright.design.tank.Slurry;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;

/**
 * Writes a changed design back into the text that the design was read from: each value that differs is replaced where it stands, in the
 * unit that it is written in, and every other character stays. A change that is no change of values that stand in the text, such as
 * a second actuator, cannot be written.
 */
public final class ChangedText {
    private static final double SAME = 1e-9;
    private static final double ON_MARK = 1e-6;

    private final Reading.Good good;
    private final Function<Object, @Nullable String> partName;
    private final Map<String, String> values = new LinkedHashMap<>();
    private final Map<String, List<String>> points = new LinkedHashMap<>();

    private ChangedText(Reading.Good good, Function<Object, @Nullable String> partName) {
        this.good = good;
        this.partName = partName;
    }

    /**
     * The text with the change; null when it cannot be written so. Whoever uses it reads it again, since one value of the file may
     * stand for several of the design.
     *
     * @param good the design as read
     * @param changed the same with other values
     * @param capacity of the tank, m3: where the file gives a volume and the change a share of it
     * @param partName name of a part of the parts files; null: it has none
     */
    public static @Nullable String of(
            Reading.Good good, Design changed, double capacity, Function<Object, @Nullable String> partName) {
        ChangedText change = new ChangedText(good, partName);
        if (!change.differs("", Design.class, good.design(), change.asWritten(changed, capacity), null)) {
            return null;
        }
        String text = good.text();
        try {
            for (Map.Entry<String, String> value : change.values.entrySet()) {
                text = TextEdit.replace(text, value.getKey(), value.getValue());
            }
            for (Map.Entry<String, List<String>> point : change.points.entrySet()) {
                List<String> to = point.getValue();
                text = FieldEdit.point(
                        FieldEdit.placeBy(text, point.getKey(), false), point.getKey(), to.get(0), to.get(1));
            }
        } catch (IllegalArgumentException cannot) {
            return null;
        }
        return text.equals(good.text()) ? null : text;
    }

    /** The fill as the file gives it: a volume stays a volume. */
    private Design asWritten(Design changed, double capacity) {
        Slurry before = good.design().slurry();
        Slurry after = changed.slurry();
        return before.volume() == null || after.volume() != null
                ? changed
                : changed.withSlurry(Copy.with(Copy.with(after, "fill", null), "volume", after.volumeIn(capacity)));
    }

    /** Notes what differs; false when it cannot be written. */
    private boolean differs(String path, Class<?> type, @Nullable Object a, @Nullable Object b, @Nullable Kind kind) {
        if (Objects.equals(a, b)) {
            return true;
        }
        if (a == null || b == null) {
            return false;
        }
        if (a instanceof Double before && b instanceof Double after) {
            return number(path, before, after, kind);
        }
        if (a instanceof Vec2 before && b instanceof Vec2 after) {
            Place whole = good.places().find(path);
            if (kind == Kind.LENGTH && whole != null && good.places().find(path + ".x") == null) {
                // a name or readings of the tape: what they tell stays in 'points', here stand the new coordinates
                points.put(path, List.of(fresh(after.x()), fresh(after.y())));
                return true;
            }
            return number(path + ".x", before.x(), after.x(), kind) && number(path + ".y", before.y(), after.y(), kind);
        }
        if (a instanceof Vec3 before && b instanceof Vec3 after) {
            return number(path + ".x", before.x(), after.x(), kind)
                    && number(path + ".y", before.y(), after.y(), kind)
                    && number(path + ".z", before.z(), after.z(), kind);
        }
        if (a instanceof List<?> before && b instanceof List<?> after) {
            return entries(path, type, before, after, kind);
        }
        return a instanceof Record && b instanceof Record && record(path, type, a, b);
    }

    private boolean entries(String path, Class<?> type, List<?> before, List<?> after, @Nullable Kind kind) {
        boolean all = before.size() == after.size();
        for (int i = 0; all && i < before.size(); i++) {
            all = differs(Paths.item(path, i + 1), type, before.get(i), after.get(i), kind);
        }
        return all;
    }

    private boolean record(String path, Class<?> type, Object before, Object after) {
        Place place = good.places().find(path);
        String name = partName.apply(after);
        if (place != null && name != null && partName.apply(before) != null && isOneWord(place)) {
            values.put(path, name);
            return true;
        }
        if (before.getClass() != after.getClass()) {
            return false;
        }
        Choice choice = type.getAnnotation(Choice.class);
        boolean byKey = type.isInterface() && (choice == null || choice.value().isEmpty());
        String inside = byKey ? Paths.key(path, Shape.choiceWord(before.getClass())) : path;
        boolean all = true;
        List<Shape.Key> keys = Shape.of(before.getClass()).keys();
        RecordComponent[] components = before.getClass().getRecordComponents();
        for (int i = 0; i < components.length; i++) {
            Shape.Key key = keys.get(i);
            Measured measured = key.mark(Measured.class);
            all = all
                    && (key.loaded()
                            || differs(
                                    Paths.key(inside, key.name()),
                                    key.type(),
                                    Copy.value(components[i], before),
                                    Copy.value(components[i], after),
                                    measured == null ? null : measured.value()));
        }
        return all;
    }

    private boolean isOneWord(Place place) {
        return good.text().substring(place.start(), place.end()).strip().matches("[a-z0-9\"'.-]+");
    }

    private boolean number(String path, double before, double after, @Nullable Kind kind) {
        if (Math.abs(before - after) <= SAME || Double.compare(before, after) == 0) {
            return true;
        }
        Place place = good.places().find(path);
        if (place == null || kind == null || !Double.isFinite(after)) {
            return false;
        }
        try {
            values.put(path, written(bare(good.text().substring(place.start(), place.end())), after, kind));
            return true;
        } catch (QuantityException word) {
            return false;
        }
    }

    /** A length that stood nowhere before, as the tape shows it. */
    private String fresh(double si) {
        UnitSystem units = good.units();
        return Math.abs(si - Marks.rounded(si, units)) < ON_MARK
                ? Marks.show(si, units)
                : Quantities.show(si, Kind.LENGTH, units);
    }

    private static String bare(String written) {
        boolean quoted = written.length() > 1 && (written.startsWith("\"") || written.startsWith("'"));
        return quoted ? written.substring(1, written.length() - 1).replace("''", "'") : written;
    }

    /** A value in the unit of an old one; inches on a mark of the tape as a fraction. */
    private static String written(String old, double si, Kind kind) throws QuantityException {
        boolean inches = kind == Kind.LENGTH && old.endsWith("in");
        boolean onMark = Math.abs(si - Marks.rounded(si, UnitSystem.US)) < ON_MARK;
        return inches && onMark && !old.contains("+-") && !old.startsWith("about") && !old.startsWith("~")
                ? Marks.show(si, UnitSystem.US)
                : Quantities.rewrite(old, si, kind);
    }
}
