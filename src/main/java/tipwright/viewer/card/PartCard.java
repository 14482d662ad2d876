// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.FileField;
import tipwright.design.file.FileFields;
import tipwright.viewer.editor.Belonging;
import tipwright.viewer.editor.PartOfMachine;

/** The fields of one part of the machine, to be read and changed. */
public final class PartCard extends VBox {
    private final CardState card;
    private final VBox content = new VBox();
    private final Label problem = new Label();
    private String built = "";

    /** A card that is up to date with the host's design; call {@link #refresh} whenever that has changed. */
    public PartCard(PartOfMachine part, CardHost host) {
        card = new CardState(part, host, this::refresh);
        getStylesheets().add(CardStyle.sheet());
        getStyleClass().addAll("card", "part-card");
        setId("card-" + part.name().toLowerCase(java.util.Locale.ROOT));
        Label title = new Label(part.word());
        title.getStyleClass().add("title");
        problem.getStyleClass().add("problem");
        problem.setWrapText(true);
        content.setSpacing(8);
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(title, problem, scroll);
        refresh();
    }

    /** Shows the design as it stands; what was typed and refused stays as typed. */
    public void refresh() {
        card.look();
        List<String> whole = card.problems("");
        problem.setText(String.join("\n", whole));
        problem.setVisible(!whole.isEmpty());
        problem.setManaged(!whole.isEmpty());
        FileFields fields = card.editor().fields();
        List<FileField> own = Belonging.of(fields, card.part());
        StringBuilder form = new StringBuilder();
        own.forEach(f -> form(f, form));
        if (form.toString().equals(built)) {
            card.rows().values().forEach(row -> {
                FileField now = fields.find(row.path());
                if (now != null) {
                    row.update(now);
                }
            });
            return;
        }
        built = form.toString();
        rebuild(own);
    }

    /** How the controls have to be laid out: all but the values. */
    private static void form(FileField f, StringBuilder all) {
        boolean group = f.meaning().isGroup();
        boolean point = f.path().endsWith("]") || !f.inner().isEmpty();
        all.append(f.path()).append(group && f.written() ? '+' : '-');
        if (group && f.meaning().words().contains(f.text())) {
            all.append(f.text());
        }
        if (point && !group) {
            all.append(f.text().startsWith("{") ? '{' : '[');
        }
        f.inner().forEach(i -> form(i, all));
    }

    private void rebuild(List<FileField> own) {
        String at = focused();
        card.rows().clear();
        content.getChildren().setAll(new CardContent(card).of(card.part().name(), own));
        FieldRow row = at == null ? null : card.rows().get(at);
        if (row != null) {
            row.takeFocus();
        }
    }

    /** The path of the field that has the keyboard; null: none of this card. */
    private @Nullable String focused() {
        Node owner = getScene() == null ? null : getScene().getFocusOwner();
        for (Node node = owner; node != null; node = node.getParent()) {
            if (node instanceof FieldRow row && card.rows().containsValue(row)) {
                return row.path();
            }
        }
        return null;
    }

    /**
     * Opens the folds around a field and moves the keyboard to it.
     *
     * @return whether the field is on this card
     */
    public boolean goTo(String path) {
        FileFields fields = card.editor().fields();
        if (fields.find(path) == null || Belonging.ofPath(fields, path) != card.part()) {
            return false;
        }
        List<FileField> own = Belonging.of(fields, card.part());
        for (FileField f : fields.byPath().values()) {
            if (!f.path().isEmpty() && path.startsWith(f.path())) {
                card.setOpen(f.path(), true);
                card.setOpen(f.path() + "/more", true);
                card.setOpen(f.path() + "/numbers", true);
            }
        }
        card.setOpen(card.part().name() + "/more", true);
        rebuild(own);
        FieldRow row = card.rows().get(path);
        if (row != null) {
            row.takeFocus();
        }
        return row != null;
    }
}
