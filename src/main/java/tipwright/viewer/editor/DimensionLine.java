// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.FieldEdit;
import tipwright.design.file.FileField;
import tipwright.design.file.FileFields;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;

/**
 * A dimension line between two points of the machine: the tape distance, which may be typed.
 *
 * @param from measured from
 * @param to measured to
 */
public record DimensionLine(MeasuredPoint from, MeasuredPoint to) {
    private static final double TENTH = 0.0001;
    private static final double SAME = 1e-9;

    /** The line between two points by their labels; null when one of them is not there. */
    public static @Nullable DimensionLine of(List<MeasuredPoint> points, String from, String to) {
        MeasuredPoint one = null;
        MeasuredPoint other = null;
        for (MeasuredPoint p : points) {
            one = p.label().equals(from) ? p : one;
            other = p.label().equals(to) ? p : other;
        }
        return one == null || other == null ? null : new DimensionLine(one, other);
    }

    /** The distance, m. */
    public double distance() {
        return to.at().minus(from.at()).norm();
    }

    /**
     * Makes the distance as typed. Where the file holds it as a tape reading, that reading is changed; else the second point moves along
     * the line, or the first where the second has no place of its own. One step of undo.
     *
     * @return why not, in sentences; empty when it was done
     */
    public List<String> type(DesignEditor editor, String typed) {
        try {
            double length = Quantities.parse(typed, Kind.LENGTH);
            if (!(length > 0)) {
                return List.of("'" + typed.strip() + "' is not more than 0 mm; a distance is needed");
            }
            for (String reading : new String[] {reading(editor, to, from), reading(editor, from, to)}) {
                if (!reading.isEmpty()) {
                    return editor.write(reading, typed);
                }
            }
            if (distance() < SAME) {
                return List.of("both points are in one place, so there is no line to move along");
            }
            if (hasCoordinates(editor, to)) {
                return moved(editor, to, from.at(), length);
            }
            return hasCoordinates(editor, from)
                    ? moved(editor, from, to.at(), length)
                    : List.of("neither point has coordinates of its own; change the readings that place them");
        } catch (QuantityException e) {
            return List.of(String.valueOf(e.getMessage()));
        }
    }

    /** Path of the tape reading that holds the distance; empty: none does. */
    private static String reading(DesignEditor editor, MeasuredPoint placed, MeasuredPoint origin) {
        String name =
                origin.path().startsWith("points.") ? origin.path().substring("points.".length()) : origin.label();
        String path = placed.path() + ".from." + name;
        FileField field = placed.path().isEmpty() ? null : editor.fields().find(path);
        return field != null && field.written() ? path : "";
    }

    private static boolean hasCoordinates(DesignEditor editor, MeasuredPoint point) {
        return !point.path().isEmpty() && editor.fields().find(point.path() + ".x") != null;
    }

    private static List<String> moved(DesignEditor editor, MeasuredPoint point, Vec2 origin, double length)
            throws QuantityException {
        Vec2 at = origin.plus(point.at().minus(origin).unit().times(length));
        FileFields fields = editor.fields();
        String x = written(fields, point.path() + ".x", at.x());
        String y = written(fields, point.path() + ".y", at.y());
        return editor.rewrite(point.path(), text -> FieldEdit.point(text, point.path(), x, y));
    }

    /** In the unit as written: to a tenth of a millimetre, or a sixteenth of an inch. */
    private static String written(FileFields fields, String path, double length) throws QuantityException {
        FileField field = fields.find(path);
        String had = field == null ? "" : field.text();
        return Mover.rewritten(had, Math.rint(length / TENTH) * TENTH);
    }
}
