// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What has been understood of a design so far, by path, so that rules can look at the good parts of a file whose other parts are
 * bad.
 */
final class Bound {
    private final Map<String, Found<Object>> values = new LinkedHashMap<>();

    /**
     * A value with where it came from.
     *
     * @param sources of the file it is written in
     */
    record Found<T>(String path, T value, SourceMap sources) {
        /** Notes something wrong with a key below this value; the place is the key's value, or the nearest above it. */
        void wrong(Problems problems, String below, String message) {
            String at = below.isEmpty() ? path : path + "." + below;
            problems.add(sources.nearest(at), at, message);
        }
    }

    void put(String path, Object value, SourceMap sources) {
        values.put(path, new Found<>(path, value, sources));
    }

    /** The value at a path; null when it is missing or was not understood. */
    <T> @Nullable T get(String path, Class<T> type) {
        Found<Object> found = values.get(path);
        return found != null && type.isInstance(found.value()) ? type.cast(found.value()) : null;
    }

    /** The entries of a list at a path; empty when it is missing or was not understood. */
    <T> List<T> list(String path, Class<T> type) {
        List<T> entries = new ArrayList<>();
        List<?> list = get(path, List.class);
        if (list != null) {
            list.forEach(entry -> entries.add(type.cast(entry)));
        }
        return entries;
    }

    /** All values of a type, in the order in which they were read. */
    <T> List<Found<T>> all(Class<T> type) {
        List<Found<T>> some = new ArrayList<>();
        for (Found<Object> found : values.values()) {
            if (type.isInstance(found.value())) {
                some.add(new Found<>(found.path(), type.cast(found.value()), found.sources()));
            }
        }
        return some;
    }
}
