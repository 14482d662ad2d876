// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.design.file.DesignKeys;
import tipwright.design.file.FieldEdit;
import tipwright.design.file.FieldMeaning;
import tipwright.design.file.FieldMeaning.Sort;
import tipwright.design.file.FileField;
import tipwright.design.file.FileFields;

class FieldsOfPartsTest {

    private static String text(String name) throws IOException {
        return Files.readString(Path.of("geometry", name + ".yaml"));
    }

    private static DesignEditor editor(String name) throws IOException {
        return editor(name, text(name));
    }

    private static DesignEditor editor(String name, String text) {
        DesignEditor editor = new DesignEditor(name, Path.of("geometry", name + ".yaml"), text, null);
        return editor;
    }

    private static void walk(FileField field, PartOfMachine part, List<String> all) {
        all.add(field.path());
        Belonging.inside(field, part).forEach(f -> walk(f, part, all));
    }

    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "six-link", "twin-rams", "saw-skid", "yard-tub", "grit-hopper"})
    void everyFieldIsOfExactlyOnePart(String name) throws IOException {
        FileFields fields = FileFields.of(text(name));
        List<String> found = new ArrayList<>();
        for (PartOfMachine part : PartOfMachine.values()) {
            List<String> own = new ArrayList<>();
            Belonging.of(fields, part).forEach(f -> walk(f, part, own));
            assertThat(own).isNotEmpty();
            found.addAll(own);
        }
        List<String> all = new ArrayList<>(fields.byPath().keySet());
        all.remove("");
        assertThat(found).containsExactlyInAnyOrderElementsOf(all);
    }

    /** From a few designs on, by what the buttons of the cards do: every key that the schema knows turns up as a field of a part. */
    @Test
    void everyKeyOfTheSchemaCanBeReached() throws IOException {
        Set<String> reached = new TreeSet<>();
        Set<String> tried = new HashSet<>();
        Deque<String> texts = new ArrayDeque<>();
        for (String name : List.of("silt-trailer", "yard-tub")) {
            texts.add(text(name));
        }
        while (!texts.isEmpty()) {
            String text = texts.poll();
            FileFields fields = FileFields.of(text);
            for (PartOfMachine part : PartOfMachine.values()) {
                Belonging.of(fields, part).forEach(f -> reach(f, part, reached));
            }
            for (FileField field : fields.byPath().values()) {
                field.inner().forEach(inner -> open(text, inner, tried, texts));
            }
        }
        Set<String> wanted = DesignKeys.all().stream()
                .map(k -> k.path().startsWith("points.NAME.") ? last(k.path()) : last(k.path()) + ": " + k.note())
                .collect(Collectors.toCollection(TreeSet::new));
        wanted.removeAll(reached);
        assertThat(wanted).isEmpty();
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    private static void reach(FileField field, PartOfMachine part, Set<String> reached) {
        FieldMeaning m = field.meaning();
        reached.add(m.key());
        reached.add(m.key() + ": " + m.note());
        Belonging.inside(field, part).forEach(f -> reach(f, part, reached));
    }

    /** Whatever the card of a field offers that has not been tried on its like: a kind, a group, an entry, own data, the tape. */
    private static void open(String text, FileField field, Set<String> tried, Deque<String> texts) {
        FieldMeaning m = field.meaning();
        FieldMeaning of = m.entry() == null ? m : m.entry();
        List<String> kinds = of.words().isEmpty() || of.sort() != Sort.KINDS ? List.of("") : of.words();
        for (String kind : kinds) {
            if (!tried.add(m.sort() + " " + of.type() + " " + kind)) {
                continue;
            }
            String path = field.path();
            List<Supplier<String>> edits = new ArrayList<>();
            switch (m.sort()) {
                case KINDS -> edits.add(() -> FieldEdit.choose(text, path, kind));
                case LIST -> edits.add(() -> FieldEdit.addEntry(text, path, kind));
                case GROUP -> edits.add(() -> FieldEdit.add(text, path));
                case POINT -> edits.add(() -> FieldEdit.placeBy(text, path, true));
                case POINTS, LENGTHS -> edits.add(() -> FieldEdit.addEntry(text, path, "corner"));
                default -> {}
            }
            if (!m.section().isEmpty()) {
                edits.add(() -> FieldEdit.ownData(text, path, kind));
            }
            for (Supplier<String> edit : edits) {
                try {
                    texts.add(edit.get());
                } catch (IllegalArgumentException no) {
                    tried.remove(m.sort() + " " + of.type() + " " + kind);
                }
            }
        }
    }

    @Test
    void fieldsAreOfThePartThatABuilderWouldLookAt() throws IOException {
        FileFields fields = FileFields.of(text("silt-trailer"));
        assertThat(Belonging.ofPath(fields, "slurry.fill")).isEqualTo(PartOfMachine.LOAD);
        assertThat(Belonging.ofPath(fields, "drive.straight.frame-pin-joint.lug"))
                .isEqualTo(PartOfMachine.JOINTS);
        assertThat(Belonging.ofPath(fields, "drive.straight.frame-pin.x")).isEqualTo(PartOfMachine.ACTUATOR);
        assertThat(Belonging.ofPath(fields, "pivot.bearings[1].bearing")).isEqualTo(PartOfMachine.PIVOT);
        assertThat(Belonging.ofPath(fields, "frame.members[1].z")).isEqualTo(PartOfMachine.FRAME);
        assertThat(Belonging.ofPath(fields, "supply.fuse")).isEqualTo(PartOfMachine.SUPPLY);
    }

    @Test
    void whatIsRefusedChangesNothingAndSaysWhy() throws IOException {
        DesignEditor editor = editor("silt-trailer");
        Solved before = editor.solved();
        assertThat(editor.write("tank.interior.diameter", "760 bananas"))
                .singleElement()
                .asString()
                .contains("bananas");
        assertThat(editor.write("slurry.fill", "180 %"))
                .singleElement()
                .asString()
                .contains("100 %");
        assertThat(editor.write("tank.interior.diameter", "")).isNotEmpty();
        assertThat(editor.write("supply.kind", "x")).isNotEmpty();
        assertThat(editor.sheet().text()).isEqualTo(text("silt-trailer"));
        assertThat(editor.solved()).isSameAs(before);
        assertThat(editor.canUndo()).isFalse();
        assertThat(editor.write("slurry.fill", "70 %")).isEmpty();
        assertThat(editor.sheet().text()).isEqualTo(text("silt-trailer").replace("fill: 85 %", "fill: 70 %"));
        assertThat(editor.solved().design().slurry().fill()).isEqualTo(0.7);
        editor.undo();
        assertThat(editor.sheet().text()).isEqualTo(text("silt-trailer"));
    }

    @Test
    void aBlockIsAddedWithBlanksAndFilledInWhileTheOldNumbersStay() throws Exception {
        DesignEditor editor = editor("silt-trailer");
        assertThat(editor.rebuild(t -> FieldEdit.addEntry(t, "tank.attached", "")))
                .isNull();
        assertThat(editor.solved()).isNull();
        assertThat(editor.lastGood()).isNotNull();
        assertThat(editor.wrong()).containsKeys("tank.attached[4].name", "tank.attached[4].mass");
        assertThat(editor.write("tank.attached[4].name", "hose rack")).isEmpty();
        assertThat(editor.write("tank.attached[4].mass", "heavy")).isNotEmpty();
        assertThat(editor.write("tank.attached[4].mass", "8 kg")).isEmpty();
        assertThat(editor.write("tank.attached[4].centre.x", "0 mm")).isEmpty();
        assertThat(editor.write("tank.attached[4].centre.y", "1 m")).isEmpty();
        assertThat(editor.write("tank.attached[4].centre.z", "0 mm")).isEmpty();
        assertThat(editor.solved().design().tank().attached()).hasSize(4);
        assertThat(editor.wrong()).isEmpty();
        for (int i = 0; i < 6; i++) {
            editor.undo();
        }
        assertThat(editor.sheet().text()).isEqualTo(text("silt-trailer"));
    }

    /** Edits at random, good and bad, then back and forth, to the same bytes. */
    @ParameterizedTest
    @CsvSource({"silt-trailer, 1, 200", "six-link, 2, 30", "saw-skid, 3, 30", "grit-hopper, 4, 30"})
    void randomEditsCanAllBeTakenBack(String name, long seed, int edits) throws IOException {
        Random random = new Random(seed);
        // fewer tilts, or most of the time would go into numbers that are not looked at
        String start = FieldEdit.set(FileFields.of(text(name)), "tilt.step", "10 deg");
        DesignEditor editor = editor(name, start);
        Deque<String> texts = new ArrayDeque<>(List.of(editor.sheet().text()));
        int refused = 0;
        int written = 0;
        for (int i = 0; i < edits; i++) {
            List<FileField> all = List.copyOf(editor.fields().byPath().values());
            FileField field = all.get(1 + random.nextInt(all.size() - 1));
            boolean good = edited(editor, field, random);
            refused += good ? 0 : 1;
            if (!editor.sheet().text().equals(texts.peek())) {
                written++;
                texts.push(editor.sheet().text());
            } else {
                assertThat(editor.solved() != null || !editor.sheet().problems().isEmpty())
                        .isTrue();
            }
        }
        assertThat(written).isGreaterThan(edits / 5);
        assertThat(refused).isGreaterThan(edits / 20);
        String last = editor.sheet().text();
        List<String> back = new ArrayList<>(texts);
        for (String expected : back.subList(1, back.size())) {
            editor.undo();
            assertThat(editor.sheet().text()).isEqualTo(expected);
        }
        assertThat(editor.canUndo()).isFalse();
        assertThat(editor.sheet().text()).isEqualTo(start);
        while (editor.canRedo()) {
            editor.redo();
        }
        assertThat(editor.sheet().text()).isEqualTo(last);
    }

    private static boolean edited(DesignEditor editor, FileField field, Random random) {
        FieldMeaning m = field.meaning();
        String path = field.path();
        if (random.nextInt(6) == 0) {
            List<String> why = editor.write(path, "12 bananas: {[");
            boolean free = m.sort() == Sort.TEXT
                    || m.sort() == Sort.POINTS
                    || !m.section().isEmpty();
            assertThat(free || !why.isEmpty()).as(path).isTrue();
            return false;
        }
        if (random.nextInt(6) == 0 && field.written()) {
            return editor.rebuild(t -> FieldEdit.takeOut(t, path)) == null;
        }
        return switch (m.sort()) {
            case QUANTITY -> editor.write(
                            path, field.written() ? field.text() : m.usual().isEmpty() ? m.example() : m.usual())
                    .isEmpty();
            case WORD -> editor.write(
                            path, m.words().get(random.nextInt(m.words().size())))
                    .isEmpty();
            case KINDS -> editor.rebuild(t -> FieldEdit.choose(
                            t, path, m.words().get(random.nextInt(m.words().size()))))
                    == null;
            case LIST -> editor.rebuild(t -> FieldEdit.addEntry(t, path, "")) == null;
            case GROUP, POINT -> editor.rebuild(t -> FieldEdit.add(t, path)) == null;
            case POINTS, LENGTHS -> editor.rebuild(t -> FieldEdit.addEntry(t, path, "corner " + random.nextInt(9)))
                    == null;
            default -> editor.write(path, "7").isEmpty();
        };
    }
}
