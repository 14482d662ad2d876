// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.editor.Handle;

/** The places of the pins, to be typed in any unit; a wrong entry says why and changes nothing. */
final class MountsPanel extends VBox implements Panel {
    private final WindowState shown;
    private final GridPane grid = new GridPane();
    private final Label wrong = new Label();

    MountsPanel(WindowState shown) {
        this.shown = shown;
        getStyleClass().add("card");
        setId("mounts");
        Label head = new Label("Mounts, stowed: drag them, or type in any unit");
        head.getStyleClass().add("head");
        grid.getStyleClass().add("numbers");
        wrong.setWrapText(true);
        wrong.setId("mount-wrong");
        wrong.setManaged(false);
        getChildren().addAll(head, grid, wrong);
    }

    @Override
    public void renew() {
        grid.getChildren().clear();
        List<Handle> handles = shown.editor().handles();
        List<String> fixed = shown.editor().byTape();
        setVisible(!handles.isEmpty() || !fixed.isEmpty());
        if (!handles.isEmpty()) {
            grid.addRow(0, new Label(), head("x, towards the dump end"), head("y, up"));
        }
        for (int i = 0; i < handles.size(); i++) {
            Handle h = handles.get(i);
            Label label = new Label(h.label());
            label.setMinWidth(USE_PREF_SIZE);
            grid.addRow(i + 1, label, field(h, 'x', h.x()), field(h, 'y', h.y()));
        }
        for (int i = 0; i < fixed.size(); i++) {
            Label note = new Label(fixed.get(i));
            note.setWrapText(true);
            note.setId("by-tape-" + i);
            grid.add(note, 0, handles.size() + 1 + i, 3, 1);
        }
    }

    private static Label head(String words) {
        Label label = new Label(words);
        label.getStyleClass().addAll("small", "faint");
        return label;
    }

    private TextField field(Handle handle, char axis, String written) {
        TextField field = new TextField(written);
        field.setId(NameId.of(handle.label()) + "-" + axis);
        field.setPrefColumnCount(9);
        field.setPromptText(axis + ", such as 12 3/8 in");
        field.setAccessibleText(handle.label() + " " + axis);
        field.setOnAction(e -> take(handle, axis, field));
        field.focusedProperty().addListener((o, was, is) -> {
            if (!is && !field.getText().equals(written)) {
                take(handle, axis, field);
            }
        });
        return field;
    }

    private void take(Handle handle, char axis, TextField field) {
        String fault = shown.editor().type(handle, axis, field.getText());
        say(fault);
        if (fault == null) {
            shown.renew();
        } else {
            field.getStyleClass().add("wrong");
        }
    }

    private void say(@Nullable String fault) {
        wrong.setText(fault == null ? "" : fault);
        wrong.setManaged(fault != null);
        wrong.setVisible(fault != null);
    }

    /** Shows where a point is while it is dragged. */
    void dragging(Handle handle, Vec2 at) {
        set(handle, 'x', at.x());
        set(handle, 'y', at.y());
    }

    private void set(Handle handle, char axis, double value) {
        if (lookup("#" + NameId.of(handle.label()) + "-" + axis) instanceof TextField field && !field.isFocused()) {
            field.setText(shown.show(value, Kind.LENGTH));
        }
    }

    @Override
    public void move(MachineState now) {
        // the fields hold stowed places
    }
}
