// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tipwright.design.file.FileField;

/** A field of the file on a card: its name, what it holds, its remark, and what is wrong with it. */
abstract class FieldRow extends VBox {
    private final String path;
    private final Label problem = new Label();

    FieldRow(String path) {
        this.path = path;
        problem.getStyleClass().add("problem");
        problem.setWrapText(true);
        problem.setId(id("wrong", path));
        show("");
    }

    String path() {
        return path;
    }

    /** Where what is wrong is told; to be placed by the row. */
    Label problem() {
        return problem;
    }

    /** Tells what is wrong; empty: nothing is. */
    final void show(String words) {
        problem.setText(words);
        problem.setVisible(!words.isEmpty());
        problem.setManaged(!words.isEmpty());
    }

    /** A remark in small letters below what it is about; nothing when it is empty. */
    static void remark(Pane below, String words) {
        if (!words.isEmpty()) {
            Label note = new Label(words);
            note.getStyleClass().add("remark");
            note.setWrapText(true);
            below.getChildren().add(note);
        }
    }

    /** Lays the name with the remark below it beside the control. */
    final void line(Label name, Control control, String remark) {
        VBox words = new VBox(name);
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox line = new HBox(8, words, control);
        line.setFillHeight(false);
        line.getStyleClass().add("line");
        getChildren().addAll(line, problem());
        remark(words, remark);
    }

    /** Shows the field as it stands. */
    abstract void update(FileField field);

    /** Moves the keyboard there. */
    abstract void takeFocus();

    /** The id of a control of a field: 'field-slurry-fill'. */
    static String id(String what, String path) {
        return what + "-" + path.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("-$", "");
    }
}
