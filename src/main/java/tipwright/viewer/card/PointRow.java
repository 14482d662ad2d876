// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import tipwright.design.file.FileField;

/** A point or sizes by coordinates, each typed for itself. */
final class PointRow extends FieldRow {
    private final CardState card;
    private final List<ValueRow> axes = new ArrayList<>();

    private final HBox head = new HBox(8);

    PointRow(CardState card, FileField of) {
        super(of.path());
        this.card = card;
        HBox line = new HBox(8);
        for (FileField axis : of.inner()) {
            ValueRow row = new ValueRow(card, axis, true);
            row.field().setAccessibleText(of.label() + " " + axis.label() + ", a length");
            axes.add(row);
            card.put(row);
            line.getChildren().add(row);
        }
        Label label = new Label(FieldWords.title(of.label()));
        label.setLabelFor(axes.get(0).field());
        HBox.setHgrow(label, Priority.ALWAYS);
        label.setMaxWidth(Double.MAX_VALUE);
        head.getChildren().add(label);
        head.setAlignment(Pos.CENTER_LEFT);
        getChildren().add(head);
        remark(this, of.path().endsWith("]") ? "" : FieldWords.remark(of));
        getChildren().addAll(line, problem());
        update(of);
    }

    /** Puts something at the end of the line with its name. */
    void beside(Node node) {
        head.getChildren().add(node);
    }

    @Override
    void update(FileField field) {
        show(String.join("\n", card.problems(path())));
    }

    @Override
    void takeFocus() {
        axes.get(0).takeFocus();
    }
}
