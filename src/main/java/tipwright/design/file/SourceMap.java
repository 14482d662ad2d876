// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where each value of a file stands, by its path: 'drive.straight.frame-pin'. List items count from 1 ('tank.openings[1].diameter');
 * the numbers of a point are also found as '.x', '.y' and '.z'.
 */
public final class SourceMap {
    private static final String[] AXES = {".x", ".y", ".z"};

    private final Place whole;
    private final Map<String, Place> values = new LinkedHashMap<>();
    private final Map<String, Place> keys = new LinkedHashMap<>();

    SourceMap(String file, @Nullable Node root) {
        whole = root == null ? Place.whole(file) : root.place();
        if (root != null) {
            walk("", root);
        }
    }

    private void walk(String path, Node node) {
        values.put(path, node.place());
        if (node instanceof Node.Fields group) {
            group.fields().forEach((name, field) -> {
                String below = Paths.key(path, name);
                keys.put(below, field.key());
                walk(below, field.value());
            });
        } else if (node instanceof Node.Items list) {
            for (int i = 0; i < list.items().size(); i++) {
                Node item = list.items().get(i);
                walk(Paths.item(path, i + 1), item);
                if (i < AXES.length && item instanceof Node.Scalar) {
                    values.put(path + AXES[i], item.place());
                }
            }
        }
    }

    /** Lets a single value that stands for a list of one be found as its first entry too. */
    void alsoAsFirstEntry(String path) {
        Map<String, Place> entries = new LinkedHashMap<>();
        values.forEach((at, place) -> {
            if (at.equals(path) || at.startsWith(path + ".") || at.startsWith(path + "[")) {
                entries.put(Paths.item(path, 1) + at.substring(path.length()), place);
            }
        });
        values.putAll(entries);
    }

    /** Where the value at this path is written; null when it is not in the file (a default was taken). */
    public @Nullable Place find(String path) {
        return values.get(path);
    }

    /** Where the value at this path is written, or the nearest group above it. */
    public Place nearest(String path) {
        for (String at = path; !at.isEmpty(); at = Paths.above(at)) {
            Place place = values.get(at);
            if (place != null) {
                return place;
            }
        }
        return whole;
    }

    /** Where the key at this path is written, or else its value, or the nearest above. */
    Place key(String path) {
        Place place = keys.get(path);
        return place == null ? nearest(path) : place;
    }

    /** All paths with their places, in the order of the file. */
    public Map<String, Place> all() {
        return Collections.unmodifiableMap(values);
    }
}
