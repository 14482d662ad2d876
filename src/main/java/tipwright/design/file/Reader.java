// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import tipwright.quantity.Kind;
import tipwright.quantity.UnitSystem;

/** The state of reading one design: what was found, what is wrong, what was assumed. Used once. */
final class Reader {
    private final NamedFiles beside;
    private final Problems problems = new Problems();
    private final Bound bound = new Bound();
    private final List<Assumption> assumptions = new ArrayList<>();
    private final Map<Class<?>, Shape> shapes = new HashMap<>();
    private final PartsShelf shelf;
    private final Map<String, Double> changed;
    private final Map<String, String> answers;
    private final List<SizeQuestion> questions = new ArrayList<>();
    private final List<Uncertain> uncertain = new ArrayList<>();
    private final NamedPlaces points = new NamedPlaces(this);
    private @Nullable Node root;
    private Supplier<UnitSystem> system = () -> UnitSystem.METRIC;
    private final Map<String, SourceFile> own = new TreeMap<>();
    private final Map<String, SourceFile> shipped = new TreeMap<>();

    /**
     * For one reading.
     *
     * @param changed values to take in place of those written, SI, by path; only values with a doubt
     * @param answers what to take in place of question marks, by path
     */
    Reader(NamedFiles beside, Map<String, Double> changed, Map<String, String> answers) {
        this.beside = beside;
        this.changed = changed;
        this.answers = answers;
        shelf = new PartsShelf(this);
    }

    /** The bytes of a file beside the design, remembered as one of its sources; throws as Beside does. */
    byte[] bytes(String name, int most) throws IOException {
        byte[] bytes = beside.read(name, most);
        boolean fromProgram = beside instanceof ShippedFiles;
        (fromProgram ? shipped : own).put(name, new SourceFile(name, fromProgram, bytes));
        return bytes;
    }

    /** Remembers a file that came with the program likewise. */
    void uses(SourceFile file) {
        shipped.put(file.name(), file);
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

    /** Notes a value that may be off; gives the value to go on with. */
    double doubtful(Uncertain value) {
        uncertain.add(value);
        return changed.getOrDefault(value.path(), value.value());
    }

    /** Standard doubt of the value at a path, SI; 0: exact. */
    double doubt(String path) {
        return uncertain.stream()
                .filter(u -> u.path().equals(path))
                .mapToDouble(Uncertain::doubt)
                .findFirst()
                .orElse(0);
    }

    /** All values that may be off, in the order in which they were met. */
    List<Uncertain> uncertain() {
        return uncertain;
    }

    /** The answer to a question mark; while there is none, the question is noted and a usual size stands for it. */
    Node answer(SizeQuestion question, String usual) {
        String answer = answers.get(question.path());
        if (answer == null) {
            questions.add(question);
        }
        return new Node.Scalar(question.place(), answer == null ? usual : answer, true);
    }

    /** The question marks without an answer, in the order of the file. */
    List<SizeQuestion> questions() {
        return questions;
    }

    /** Points by name. */
    NamedPlaces points() {
        return points;
    }

    /**
     * Begins with a file.
     *
     * @param units in which most of its lengths are written
     */
    void start(Node file, Supplier<UnitSystem> units) {
        root = file;
        system = units;
    }

    /** The units in which most lengths of the file are written. */
    UnitSystem units() {
        return system.get();
    }

    /** The unit that a bare number is most likely meant in: the one that the file uses most; empty: nobody knows, or it has one. */
    String likely(String text, Kind kind) {
        return root == null || kind == Kind.RATIO || !Character.isDigit(text.charAt(text.length() - 1))
                ? ""
                : CommonUnit.of(root, kind);
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
