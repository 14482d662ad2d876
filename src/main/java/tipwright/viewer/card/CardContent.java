// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import tipwright.design.file.FieldEdit;
import tipwright.design.file.FieldMeaning;
import tipwright.design.file.FieldMeaning.Sort;
import tipwright.design.file.FileField;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.viewer.editor.Belonging;
import tipwright.viewer.editor.MeasuredPoint;

/** Makes the controls for fields of any sort. */
final class CardContent {
    private static final int FEW_KINDS = 3;

    private final CardState card;

    CardContent(CardState card) {
        this.card = card;
    }

    /** Controls for some fields: what is given or has to be, then the rest under 'more'. */
    List<Node> of(String key, List<FileField> fields) {
        return of(key, fields, f -> false);
    }

    private List<Node> of(String key, List<FileField> fields, Predicate<FileField> elsewhere) {
        List<Node> all = new ArrayList<>();
        List<FileField> more = new ArrayList<>();
        for (FileField f : fields) {
            if (elsewhere.test(f)) {
                continue;
            }
            if (isWhole(f)) {
                all.addAll(of(f.path(), Belonging.inside(f, card.part())));
            } else if (important(f, fields)) {
                all.add(node(f));
            } else {
                more.add(f);
            }
        }
        if (all.isEmpty() && more.size() <= FEW_KINDS) {
            more.forEach(f -> all.add(node(f)));
        } else if (!more.isEmpty()) {
            all.add(new Fold(card, key + "/more", "More (" + more.size() + ")", false, () -> {
                VBox box = new VBox();
                more.forEach(f -> box.getChildren().add(node(f)));
                return box;
            }));
        }
        return all;
    }

    /** Whether a group is what the whole card is about, so that it needs no heading of its own. */
    private boolean isWhole(FileField f) {
        boolean group = f.meaning().sort() == Sort.GROUP && f.written();
        return group && f.label().equalsIgnoreCase(card.part().word());
    }

    private static boolean important(FileField field, List<FileField> sisters) {
        Set<String> others = Set.copyOf(field.inPlaceOf());
        boolean open = !others.isEmpty()
                && sisters.stream()
                        .noneMatch(
                                s -> s.written() && others.contains(s.meaning().key()));
        boolean fixed = field.meaning().fixed();
        return (field.written() || field.meaning().mandatory() || open) && !fixed;
    }

    private Node node(FileField f) {
        FieldMeaning m = f.meaning();
        if (!m.section().isEmpty()) {
            return fromParts(f);
        }
        return switch (m.sort()) {
            case GROUP -> group(f);
            case KINDS -> kinds(f);
            case LIST -> list(f);
            case POINTS, LENGTHS -> named(f);
            case POINT, SIZES -> point(f);
            default -> leaf(f);
        };
    }

    private FieldRow leaf(FileField f) {
        FieldMeaning m = f.meaning();
        boolean choice = !m.words().isEmpty() && m.sort() != Sort.KINDS;
        FieldRow row = choice ? new WordRow(card, f, m.words(), m.sort() != Sort.WORD) : new ValueRow(card, f, false);
        card.put(row);
        return row;
    }

    private Node group(FileField f) {
        boolean blanks = !f.written() && f.inner().stream().anyMatch(i -> important(i, f.inner()));
        return new Fold(card, f.path(), heading(f), f.written() && depth(f) < 1, () -> {
            VBox box = body(f);
            if (blanks) {
                box.getChildren().add(button("Add " + f.label(), "add", f.path(), () -> add(f.path())));
            } else {
                box.getChildren().addAll(of(f.path(), Belonging.inside(f, card.part())));
                takeOut(f, box);
            }
            return box;
        });
    }

    private void add(String path) {
        card.setOpen(path, true);
        card.rebuild(t -> FieldEdit.add(t, path));
    }

    private static int depth(FileField f) {
        return (int) f.path().chars().filter(c -> c == '.' || c == '[').count();
    }

    private static String heading(FileField f) {
        String words = FieldWords.title(f.label());
        boolean kind = f.meaning().sort() == Sort.KINDS && !f.text().isEmpty();
        boolean list = f.meaning().sort() == Sort.LIST;
        String count = list ? ": " + f.inner().size() : "";
        return f.written() || list ? words + (kind ? ": " + NameId.words(f.text()) : count) : words + ": not given";
    }

    private VBox body(FileField f) {
        VBox box = new VBox();
        FieldRow.remark(box, f.meaning().note());
        GroupRow problems = new GroupRow(card, f);
        card.put(problems);
        box.getChildren().add(problems);
        return box;
    }

    private void takeOut(FileField f, VBox box) {
        boolean entry = f.path().endsWith("]");
        if (f.written() && (entry || !f.meaning().mandatory())) {
            box.getChildren().add(takeOut(f));
        }
    }

    private Button takeOut(FileField f) {
        return button(
                "Take out " + f.label(), "out", f.path(), () -> card.rebuild(t -> FieldEdit.takeOut(t, f.path())));
    }

    private static Button button(String words, String what, String path, Runnable does) {
        Button button = new Button(words);
        button.setMnemonicParsing(false);
        button.setId(FieldRow.id(what, path));
        button.setOnAction(e -> does.run());
        return button;
    }

    private Node kinds(FileField f) {
        return new Fold(
                card,
                f.path(),
                heading(f),
                (depth(f) < 1 && f.written()) || f.meaning().mandatory(),
                () -> {
                    VBox box = body(f);
                    KindTiles tiles = new KindTiles(card, f);
                    card.put(tiles);
                    box.getChildren().add(tiles);
                    ShapeSketch sketch = ShapeSketch.of(card, f);
                    if (sketch != null) {
                        box.getChildren().add(sketch);
                    }
                    List<FileField> inner = Belonging.inside(f, card.part());
                    box.getChildren().addAll(of(f.path(), inner, i -> sketch != null && sketch.shows(i)));
                    takeOut(f, box);
                    return box;
                });
    }

    private Node fromParts(FileField f) {
        VBox box = new VBox();
        FieldMeaning m = f.meaning();
        if (f.written()
                && (!f.inner().isEmpty() || (m.sort() == Sort.KINDS && m.words().contains(f.text())))) {
            Node own = m.sort() == Sort.KINDS ? kinds(f) : group(f);
            box.getChildren()
                    .addAll(
                            own,
                            button(
                                    "A part from the parts box instead",
                                    "named",
                                    f.path(),
                                    () -> card.rebuild(t -> FieldEdit.asName(t, f.path()))));
            return box;
        }
        FieldRow row = new WordRow(card, f, PartNames.of(card.editor(), m.section()), true);
        card.put(row);
        FlowPane ways = new FlowPane(8, 4);
        String kind = m.sort() == Sort.KINDS ? m.words().get(0) : "";
        ways.getChildren()
                .add(button(
                        "Give its own data",
                        "own",
                        f.path(),
                        () -> card.rebuild(t -> FieldEdit.ownData(t, f.path(), kind))));
        box.getChildren().addAll(row, ways);
        if (PartsTable.suits(f.path())) {
            ways.getChildren().add(button("Which will do?", "which", f.path(), () -> box.getChildren()
                    .add(new PartsTable(card, f.path(), m.section()))));
        }
        return box;
    }

    private Node list(FileField f) {
        boolean corners = f.meaning().type() == Vec2.class && f.meaning().sort() == Sort.LIST;
        return new Fold(card, f.path(), heading(f), depth(f) < 1 && f.written(), () -> {
            VBox box = body(f);
            if (corners && f.meaning().kind() == tipwright.quantity.Kind.LENGTH) {
                box.getChildren().add(OutlineGrid.of(card, f));
            }
            if (corners && f.written()) {
                box.getChildren().add(new Fold(card, f.path() + "/numbers", "Corners in numbers", false, () -> {
                    VBox numbers = new VBox();
                    entries(f, numbers);
                    return numbers;
                }));
            } else {
                entries(f, box);
            }
            takeOut(f, box);
            return box;
        });
    }

    private void entries(FileField f, VBox box) {
        for (FileField entry : f.inner()) {
            VBox one = new VBox(node(entry));
            if (!entry.meaning().isGroup() || !entry.meaning().section().isEmpty()) {
                takeOut(entry, one);
            }
            box.getChildren().add(one);
        }
        adding(f, box);
    }

    private void adding(FileField f, VBox box) {
        FieldMeaning entry = f.meaning().entry();
        if (entry == null || f.inner().size() >= f.meaning().atMost()) {
            return;
        }
        FlowPane ways = new FlowPane(8, 4);
        List<String> kinds = entry.sort() == Sort.KINDS && entry.section().isEmpty() ? entry.words() : List.of("");
        for (String kind : kinds) {
            String words = kind.isEmpty() ? "Add one" : "Add " + NameId.words(kind);
            ways.getChildren().add(button(words, "add", f.path() + "-" + kind, () -> {
                card.setOpen(f.path(), true);
                card.setOpen(f.path() + "[" + (f.inner().size() + 1) + "]", true);
                card.rebuild(t -> FieldEdit.addEntry(t, f.path(), kind));
            }));
        }
        box.getChildren().add(ways);
    }

    private Node named(FileField f) {
        return new Fold(card, f.path(), heading(f), false, () -> {
            VBox box = body(f);
            for (FileField one : f.inner()) {
                box.getChildren().add(new VBox(node(one), takeOut(one)));
            }
            TextField name = new TextField();
            name.setPromptText("name of a point");
            name.setAccessibleText("name of a point to add");
            name.setId(FieldRow.id("name", f.path()));
            Runnable add = () -> card.rebuild(
                    t -> FieldEdit.addEntry(t, f.path(), name.getText().strip()));
            name.setOnAction(e -> add.run());
            box.getChildren().add(new HBox(8, name, button("Add", "add", f.path(), add)));
            takeOut(f, box);
            return box;
        });
    }

    /** A point that the tape can be held to can be measured from. */
    private void measured(FileField f, VBox box) {
        MeasuredPoint.of(card.editor()).stream()
                .filter(p -> p.path().equals(f.path()))
                .findFirst()
                .ifPresent(p -> box.getChildren().add(button("Measure from it", "measure", f.path(), () -> card.host()
                        .measureFrom(p.label()))));
    }

    private Node point(FileField f) {
        boolean place = f.meaning().sort() == Sort.POINT;
        boolean coordinates = !f.inner().isEmpty() && !f.text().startsWith("{");
        VBox box = new VBox();
        if (coordinates) {
            PointRow row = new PointRow(card, f);
            card.put(row);
            box.getChildren().add(row);
            measured(f, box);
            if (place && !f.path().endsWith("]")) {
                row.beside(button(
                        "By tape instead",
                        "tape",
                        f.path(),
                        () -> card.rebuild(t -> FieldEdit.placeBy(t, f.path(), true))));
            }
            return box;
        }
        if (f.text().startsWith("{")) {
            return new Fold(card, f.path(), FieldWords.title(f.label()) + ": by tape", true, () -> {
                VBox tape = body(f);
                measured(f, tape);
                tape.getChildren().addAll(of(f.path(), f.inner()));
                tape.getChildren()
                        .add(button(
                                "By coordinates instead",
                                "place",
                                f.path(),
                                () -> card.rebuild(t -> FieldEdit.placeBy(t, f.path(), false))));
                return tape;
            });
        }
        FieldRow row = new ValueRow(card, f, false);
        card.put(row);
        box.getChildren().add(row);
        return box;
    }
}
