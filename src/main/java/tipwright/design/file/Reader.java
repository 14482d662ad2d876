// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The state of reading one design: what was found, what is wrong, what was assumed. Used once. */
final class Reader {
    private final Beside beside;
    private final Problems problems = new Problems();
    private final Bound bound = new Bound();
    private final List<Assumption> assumptions = new ArrayList<>();
    private final Map<Class<?>, Shape> shapes = new HashMap<>();
    private final PartsShelf shelf;
    private final Map<String, SourceFile> own = new TreeMap<>();
    private final Map<String, SourceFile> shipped = new TreeMap<>();

    Reader(Beside beside) {
        this.beside = beside;
        shelf = new PartsShelf(this);
    }

    /** The bytes of a file beside the design, remembered as one of its sources; throws as Beside does. */
    byte[] bytes(String name, int most) throws IOException {
        byte[] bytes = beside.read(name, most);
        boolean fromProgram = beside instanceof ShippedFiles;
        (fromProgram ? shipped : own).put(name, new SourceFile(name, fromProgram, bytes));
        return bytes;
    }

    /** The bytes of a file that came with the program, remembered likewise. */
    byte[] shippedBytes(String name, int most) throws IOException {
        byte[] bytes = Beside.shipped().read(name, most);
        shipped.put(name, new SourceFile(name, true, bytes));
        return bytes;
    }

    /** The files that were read beside the design: those of its folder by name, then those of the program by name. */
    List<SourceFile> sources() {
        List<SourceFile> all = new ArrayList<>(own.values());
        all.addAll(shipped.values());
        return all;
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
