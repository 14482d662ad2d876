// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/** Asks where something is saved, without a window of its own; a file that is there is only replaced when that is said twice. */
final class SavePane extends VBox {
    /** Writes to a place. */
    interface Writer {
        /** Writes; the message of the exception is shown. */
        void write(Path to) throws IOException;
    }

    private final TextField field = new TextField();
    private final Label wrong = new Label();
    private final Button save = new Button("Save");
    private final Writer writer;
    private @Nullable Path sure;

    /**
     * Asks.
     *
     * @param head what is saved
     * @param usual where it goes if nothing else is typed
     * @param leave closes this
     */
    SavePane(String head, Path usual, Writer writer, Runnable leave) {
        this.writer = writer;
        setId("save-pane");
        getStyleClass().add("card");
        Label title = new Label(head);
        title.getStyleClass().add("figure");
        Label where = new Label("File");
        field.setText(usual.toString());
        field.setId("save-to");
        field.setPrefColumnCount(28);
        field.setAccessibleText("file to save to");
        where.setLabelFor(field);
        HBox.setHgrow(field, Priority.ALWAYS);
        Button browse = new Button("Browse ...");
        browse.setId("save-browse");
        browse.setMinWidth(USE_PREF_SIZE);
        browse.setOnAction(e -> browse());
        HBox line = new HBox(where, field, browse);
        line.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        line.getStyleClass().add("line");
        where.setMinWidth(USE_PREF_SIZE);
        wrong.setId("save-wrong");
        wrong.setWrapText(true);
        save.setId("save-now");
        save.setOnAction(e -> save());
        field.setOnAction(e -> save());
        Button cancel = new Button("Cancel");
        cancel.setId("save-cancel");
        cancel.setOnAction(e -> leave.run());
        HBox buttons = new HBox(save, cancel);
        buttons.getStyleClass().add("line");
        getChildren().addAll(title, line, wrong, buttons);
        setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
    }

    /** Takes the keys. */
    void ask() {
        field.requestFocus();
        field.selectAll();
    }

    private void browse() {
        Window window = getScene() == null ? null : getScene().getWindow();
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Save as");
        Path now = path();
        Path name = now == null ? null : now.getFileName();
        chooser.setInitialFileName(name == null ? "" : name.toString());
        File chosen = window == null ? null : chooser.showSaveDialog(window);
        if (chosen != null) {
            field.setText(chosen.toString());
        }
    }

    private @Nullable Path path() {
        try {
            String typed = field.getText().strip();
            return typed.isEmpty() ? null : Path.of(typed).toAbsolutePath();
        } catch (InvalidPathException e) {
            return null;
        }
    }

    private void save() {
        Path to = path();
        if (to == null) {
            wrong.setText("This is no name for a file; type one such as my-tank.yaml.");
            return;
        }
        if (Files.exists(to, LinkOption.NOFOLLOW_LINKS) && !to.equals(sure)) {
            sure = to;
            wrong.setText(to + " is there already. Save again to replace it, or choose another name.");
            save.setText("Replace it");
            return;
        }
        try {
            writer.write(to);
        } catch (IOException e) {
            wrong.setText("Not saved: " + e.getMessage());
        }
    }
}
