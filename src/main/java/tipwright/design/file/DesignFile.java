// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.tank.CylinderInterior;
import tipwright.quantity.UnitSystem;

/** Reads design files. Whatever a file holds, the answer is a design or a list of problems, never an exception. */
public final class DesignFile {
    /** The largest file that is read, bytes. */
    public static final int LARGEST = 10_000_000;

    private DesignFile() {}

    /** Reads a file on disk; the files it names are looked for beside it. */
    public static Reading read(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        return read(file.toString(), file, NamedFiles.folder(folder == null ? file : folder));
    }

    /**
     * Makes ready what any reading needs, while another thread reads; whoever does not call this only waits longer.
     *
     * @param enough whether to stop
     */
    public static void prepare(BooleanSupplier enough) {
        Shape.below(Design.class, enough);
        if (!enough.getAsBoolean()) {
            PartsShelf.prepare("bearings");
            PartsShelf.prepare("actuators");
            Rules.prepare();
        }
    }

    private static Reading read(String name, Path file, NamedFiles beside) {
        try {
            return read(name, FolderFiles.bytes(file, LARGEST), beside);
        } catch (IOException unread) {
            return bad(name, String.valueOf(unread.getMessage()));
        }
    }

    /** Reads a design that came with the program: 'silt-trailer.yaml'. */
    public static Reading shipped(String name) {
        try {
            return read(name, NamedFiles.shipped().read(name, LARGEST), NamedFiles.shipped());
        } catch (IOException unread) {
            return bad(name, String.valueOf(unread.getMessage()));
        }
    }

    private static Reading read(String name, byte[] bytes, NamedFiles beside) {
        Problems problems = new Problems();
        String text = TextBytes.decode(name, bytes, problems);
        return text == null
                ? new Reading.Bad(problems.inOrder())
                : read(new SourceFile(name, beside instanceof ShippedFiles, bytes), text, beside, Map.of(), Map.of());
    }

    /**
     * Reads a text.
     *
     * @param name of the file, for messages
     * @param beside where the files are that it names
     */
    public static Reading read(String name, String text, NamedFiles beside) {
        if (text.length() > LARGEST) {
            return bad(name, FolderFiles.tooLarge(LARGEST));
        }
        SourceFile file = new SourceFile(name, false, text.getBytes(StandardCharsets.UTF_8));
        return read(file, text, beside, Map.of(), Map.of());
    }

    private static Reading read(
            SourceFile file, String text, NamedFiles beside, Map<String, Double> changed, Map<String, String> answers) {
        String name = file.name();
        Reader reader = new Reader(beside, changed, answers);
        Problems problems = reader.problems();
        Node root = YamlText.read(name, text, problems);
        if (root == null) {
            return new Reading.Bad(problems.inOrder());
        }
        if (!(root instanceof Node.Fields top)) {
            problems.add(root.place(), "", "a design starts with 'tipwright: 1'; found " + root.words());
            return new Reading.Bad(problems.inOrder());
        }
        if (!Version.isFirst("tipwright", top, problems)) {
            return new Reading.Bad(problems.inOrder());
        }
        SourceMap sources = new SourceMap(name, root);
        reader.start(root, () -> TapeUnit.system(text, sources));
        ownParts(top, reader);
        Object read = new Binder(reader, sources).record(Design.class, top, "", root.place(), Set.of());
        if (!reader.questions().isEmpty()) {
            return asking(
                    read, reader, TapeUnit.system(text, sources), other -> read(file, text, beside, changed, other));
        }
        Problems warnings = new Problems();
        reader.points().tell(warnings);
        Rules.check(reader.bound(), sources, problems, warnings);
        if (read instanceof Design design && problems.isEmpty()) {
            WorkedOut.tell(design, reader);
            List<SourceFile> files = new ArrayList<>(List.of(file));
            files.addAll(reader.sources());
            return new Reading.Good(
                    design,
                    text,
                    counted(reader.assumptions(), design),
                    warnings.inOrder(),
                    sources,
                    files,
                    reader.uncertain(),
                    other -> read(file, text, beside, other, answers));
        }
        return new Reading.Bad(problems.inOrder());
    }

    /** What was assumed, without what plays no part in the design. */
    private static List<Assumption> counted(List<Assumption> all, Design design) {
        List<Assumption> some = new ArrayList<>(all);
        if (design.tank().interior() instanceof CylinderInterior cylinder
                && !cylinder.heads().contains(CylinderInterior.HeadShape.TORISPHERICAL)) {
            some.removeIf(
                    a -> a.path().equals("tank.interior.crown") || a.path().equals("tank.interior.knuckle"));
        }
        return List.copyOf(some);
    }

    /** What stands open, or what else is wrong. */
    private static Reading asking(
            @Nullable Object read, Reader reader, UnitSystem units, Function<Map<String, String>, Reading> with) {
        Problems problems = reader.problems();
        if (!(read instanceof Design design) || !problems.isEmpty()) {
            return new Reading.Bad(problems.inOrder());
        }
        for (SizeQuestion q : reader.questions()) {
            problems.add(q.place(), q.path(), SizeQuestion.UNANSWERED);
        }
        return new Reading.Bad(problems.inOrder(), new Reading.Open(design, units, reader.questions(), with));
    }

    private static void ownParts(Node.Fields top, Reader reader) {
        Node.Field field = top.fields().get("parts");
        if (field == null) {
            return;
        }
        List<Node> names = field.value() instanceof Node.Items list ? list.items() : List.of(field.value());
        for (int i = 0; i < Math.min(names.size(), 20); i++) {
            if (names.get(i) instanceof Node.Scalar name && !name.text().isBlank()) {
                String path = field.value() instanceof Node.Items ? "parts[" + (i + 1) + "]" : "parts";
                reader.shelf().addOwn(name.text(), name.place(), path);
            }
        }
    }

    private static Reading bad(String name, String message) {
        return new Reading.Bad(List.of(new Problem(Place.whole(name), "", message)));
    }
}
