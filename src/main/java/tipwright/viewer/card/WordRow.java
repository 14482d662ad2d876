// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.List;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import tipwright.design.file.FieldMeaning;
import tipwright.design.file.FileField;

/** A value that is chosen from words; of names of parts, others may be typed too. */
final class WordRow extends FieldRow {
    private final CardState card;
    private final ComboBox<String> box = new ComboBox<>();
    private final boolean free;
    private final String none;
    private String written = "";
    private boolean showing;

    /**
     * A row.
     *
     * @param free whether other words may be typed
     */
    WordRow(CardState card, FileField of, List<String> words, boolean free) {
        super(of.path());
        this.card = card;
        this.free = free;
        FieldMeaning m = of.meaning();
        String usual = FieldWords.plain(m.usual());
        none = m.mandatory() ? "" : usual.isEmpty() ? "not given" : "usually " + usual;
        Label label = new Label(FieldWords.title(of.label()));
        label.setLabelFor(box);
        box.setId(id("field", of.path()));
        box.setAccessibleText(FieldWords.spoken(of));
        box.setAccessibleHelp(FieldWords.remark(of));
        box.setEditable(free);
        box.setPromptText(none.isEmpty() ? "choose" : none);
        if (!none.isEmpty()) {
            box.getItems().add(none);
        }
        box.getItems().addAll(words);
        box.valueProperty().addListener((o, was, is) -> {
            if (!showing && is != null) {
                card.write(path(), is.equals(none) ? "" : is);
            }
        });
        line(label, box, FieldWords.remark(of));
        update(of);
    }

    @Override
    void update(FileField now) {
        written = now.text();
        String typed = card.typed(path());
        String shown = typed == null ? written : typed;
        showing = true;
        String value = shown.isEmpty() ? null : shown.equals("true") ? "yes" : shown.equals("false") ? "no" : shown;
        if (free && value == null) {
            box.getEditor().setText("");
        }
        box.setValue(value);
        showing = false;
        show(String.join("\n", card.problems(path())));
    }

    @Override
    void takeFocus() {
        box.requestFocus();
    }
}
