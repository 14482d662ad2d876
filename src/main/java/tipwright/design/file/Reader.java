// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The state of reading one design: what was found, what is wrong, what was assumed. Used once. */
final class Reader {
    private final Beside beside;
    private final Problems problems = new Problems();
    private final Bound bound = new Bound();
    private final List<Assumption> assumptions = new ArrayList<>();
    private final Map<Class<?>, Shape> shapes = new HashMap<>();
    private final PartsShelf shelf;

    Reader(Beside beside) {
        this.beside = beside;
        shelf = new PartsShelf(this);
    }

    Beside beside() {
        return beside;
    }

    Problems problems() {
        return problems;
    }

    Bound bound() {
        return bound;
    }

    PartsShelf shelf() {
        return shelf;
    }

    List<Assumption> assumptions() {
        return assumptions;
    }

    void assume(Assumption assumption) {
        assumptions.add(assumption);
    }

    Shape shape(Class<?> record) {
        return shapes.computeIfAbsent(record, Shape::of);
    }

    /** A part by its name; null with a problem noted at the place where it was asked for. */
    @Nullable
    Object part(String section, String name, Place asked, String path) {
        return shelf.find(section, name, asked, path);
    }

    /** What a record's other file holds; null with a problem noted. */
    @Nullable
    Object loaded(Class<?> record, Map<String, Object> read, String path, SourceMap sources) {
        return MeshLoader.load(this, read, path, sources);
    }
}
