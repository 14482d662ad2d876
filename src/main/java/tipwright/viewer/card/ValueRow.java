// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import tipwright.design.file.FileField;

/** A value that is typed. Enter, or leaving the field, applies it; Escape puts back what was there. */
final class ValueRow extends FieldRow {
    private final CardState card;
    private final TextField field = new TextField();
    private String written = "";

    /**
     * A row.
     *
     * @param small whether it is one of several beside each other, without a remark of its own
     */
    ValueRow(CardState card, FileField of, boolean small) {
        super(of.path());
        this.card = card;
        Label label = new Label(FieldWords.title(of.label()));
        label.setLabelFor(field);
        label.setMinWidth(USE_PREF_SIZE);
        field.setId(id("field", of.path()));
        field.setAccessibleText(FieldWords.spoken(of));
        String remark = FieldWords.remark(of);
        field.setAccessibleHelp(remark);
        field.setOnAction(e -> take());
        field.focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                take();
            }
        });
        field.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE && !field.getText().equals(written)) {
                card.putBack(path());
                field.selectAll();
                e.consume();
            }
        });
        if (small) {
            field.setPrefColumnCount(6);
            getChildren().addAll(label, field, problem());
            HBox.setHgrow(this, Priority.ALWAYS);
        } else {
            line(label, field, remark);
        }
        update(of);
    }

    private void take() {
        if (!field.getText().equals(written) || card.typed(path()) != null) {
            card.write(path(), field.getText());
        }
    }

    /** The control alone, for a picture with dimension lines. */
    TextField field() {
        return field;
    }

    @Override
    void update(FileField now) {
        written = now.text();
        String typed = card.typed(path());
        String shown = typed == null ? written : typed;
        boolean busy = field.isFocused() && typed == null && !field.getText().equals(shown);
        if (!field.getText().equals(shown) && !(busy && field.getText().isBlank() && shown.isBlank())) {
            field.setText(shown);
        }
        field.setPromptText(FieldWords.prompt(now));
        List<String> problems = card.problems(path());
        field.getStyleClass().remove("wrong");
        if (!problems.isEmpty()) {
            field.getStyleClass().add("wrong");
        }
        show(String.join("\n", problems));
    }

    @Override
    void takeFocus() {
        field.requestFocus();
    }
}
