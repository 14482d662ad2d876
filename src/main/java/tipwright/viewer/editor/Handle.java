// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.design.file.Place;
import tipwright.design.file.SourceMap;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;

/**
 * A point of the design that can be moved by hand.
 *
 * @param path of the point in the file: 'drive.straight.frame-pin'
 * @param label in the trade's words: 'frame pin'
 * @param at as stowed, m
 * @param x as written
 * @param y as written
 * @param body number of the body of the linkage that it moves with; 0: the frame
 */
public record Handle(String path, String label, Vec2 at, String x, String y, int body) {
    /** Path of the pivot. */
    public static final String PIVOT = "pivot.at";

    private static final double SAME = 1e-6;

    /** All that can be moved, the pivot first. */
    static List<Handle> of(String text, SourceMap places, Skeleton skeleton) {
        Map<String, Handle> all = new LinkedHashMap<>();
        List<String> paths = new ArrayList<>(List.of(PIVOT));
        for (String path : places.all().keySet()) {
            if (path.startsWith("drive.") && path.endsWith(".y")) {
                paths.add(path.substring(0, path.length() - 2));
            }
        }
        for (String path : paths) {
            Place x = places.find(path + ".x");
            Place y = places.find(path + ".y");
            if (x == null || y == null || places.find(path + ".z") != null) {
                continue;
            }
            String writtenX = text.substring(x.start(), x.end());
            String writtenY = text.substring(y.start(), y.end());
            try {
                Vec2 at = new Vec2(
                        Quantities.estimate(bare(writtenX), Kind.LENGTH, "").si(),
                        Quantities.estimate(bare(writtenY), Kind.LENGTH, "").si());
                all.put(
                        path,
                        new Handle(
                                path,
                                label(text, places, path),
                                at,
                                bare(writtenX),
                                bare(writtenY),
                                body(skeleton, at)));
            } catch (QuantityException direction) {
                // a direction or another pair of plain numbers: nothing to drag
                all.remove(path);
            }
        }
        return List.copyOf(all.values());
    }

    /** Pins whose place is a name or a tape reading, in plain words; they cannot be dragged. */
    static List<String> byTape(String text, SourceMap places) {
        List<String> all = new ArrayList<>();
        for (String path : places.all().keySet()) {
            boolean pin = path.equals(PIVOT) || path.matches("drive\\.[^.]+\\.[a-z-]*pin(-[a-z]+)?");
            Place place = places.find(path);
            boolean joint = path.endsWith("-joint");
            if (pin && !joint && place != null && places.find(path + ".x") == null) {
                all.add(label(text, places, path) + ": its place is '" + text.substring(place.start(), place.end())
                        + "', by the tape; to move it, change the readings in the file");
            }
        }
        return all;
    }

    private static String bare(String written) {
        boolean quoted = written.length() > 1 && (written.startsWith("\"") || written.startsWith("'"));
        return quoted ? written.substring(1, written.length() - 1).replace("''", "'") : written;
    }

    /** The pin's own name where the mechanism is drawn pin by pin, else its key. */
    private static String label(String text, SourceMap places, String path) {
        int end = path.lastIndexOf('.');
        Place name = end < 0 ? null : places.find(path.substring(0, end) + ".name");
        String word = path.equals(PIVOT)
                ? "pivot"
                : name == null ? path.substring(end + 1) : bare(text.substring(name.start(), name.end()));
        return NameId.words(word);
    }

    /** Number of the body that a stowed place of the mechanism moves with; 0: the frame. */
    public static int body(Skeleton skeleton, Vec2 at) {
        if (skeleton.actuator().onA().minus(at).norm() < SAME) {
            return skeleton.actuator().a();
        }
        if (skeleton.actuator().onB().minus(at).norm() < SAME) {
            return skeleton.actuator().b();
        }
        for (Joint joint : skeleton.joints()) {
            if (joint.at().minus(at).norm() < SAME) {
                return Math.min(joint.a(), joint.b());
            }
        }
        return 0;
    }
}
