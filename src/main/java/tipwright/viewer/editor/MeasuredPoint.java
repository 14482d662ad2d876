// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.file.FieldMeaning.Sort;
import tipwright.design.file.FileField;
import tipwright.design.file.FileFields;
import tipwright.design.key.NameId;
import tipwright.design.tape.NamedPoints;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * A point that can be measured from or to.
 *
 * @param label in the trade's words: 'frame pin', 'axle'
 * @param path where its place is written: its coordinates or its tape readings; empty: it cannot be moved
 * @param at as stowed, m; while something is dragged, as dragged
 */
public record MeasuredPoint(String label, String path, Vec2 at) {
    /** The point that all places are given from. */
    public static final String DATUM = "datum (x 0, y 0)";

    /** All points of a design, the datum first; empty while there are no numbers. */
    public static List<MeasuredPoint> of(DesignEditor editor) {
        Solved solved = editor.solved();
        if (solved == null) {
            return List.of();
        }
        Design design = solved.design();
        Map<String, MeasuredPoint> all = new LinkedHashMap<>();
        put(all, new MeasuredPoint(DATUM, "", Vec2.ZERO));
        FileFields fields = editor.fields();
        design.drive().places(design.pivot().at()).forEach((name, at) -> put(all, place(fields, name, at)));
        NamedPoints named = design.points();
        if (named != null) {
            for (Map.Entry<String, Vec3> e : named.places().entrySet()) {
                String path = "points." + e.getKey();
                put(
                        all,
                        new MeasuredPoint(
                                e.getKey(),
                                fields.find(path) == null ? "" : path,
                                e.getValue().xy()));
            }
        }
        return new ArrayList<>(all.values());
    }

    private static void put(Map<String, MeasuredPoint> all, MeasuredPoint point) {
        all.putIfAbsent(point.label, point);
    }

    private static MeasuredPoint place(FileFields fields, String name, Vec2 at) {
        FileField field = name.equals("pivot") ? fields.find("pivot.at") : ofDrive(fields, name);
        String path = field == null ? "" : field.path();
        String named = field != null && field.inner().isEmpty() ? "points." + field.text() : path;
        boolean lost = !named.equals(path) && fields.find(named) == null;
        return new MeasuredPoint(NameId.words(name), lost ? "" : named, at);
    }

    private static @Nullable FileField ofDrive(FileFields fields, String name) {
        for (FileField f : fields.byPath().values()) {
            boolean point = f.path().startsWith("drive.") && f.meaning().sort() == Sort.POINT && f.written();
            if (point && f.meaning().key().equals(name)) {
                return f;
            }
        }
        return null;
    }
}
