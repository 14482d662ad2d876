// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tipwright.design.Design;
import tipwright.quantity.Kind;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;

/** The figures at the tilt shown. */
final class NumbersPanel extends VBox implements Panel {
    private final WindowState shown;
    private final GridPane grid = new GridPane();
    private final Label force = figure("force");
    private final Label moving = new Label();
    private final Label length = figure("length");
    private final Label arm = figure("arm");
    private final List<Label> bearings = new ArrayList<>();

    NumbersPanel(WindowState shown) {
        this.shown = shown;
        getStyleClass().add("card");
        Label head = new Label("At this tilt");
        head.getStyleClass().add("head");
        moving.getStyleClass().addAll("faint", "small");
        moving.setId("moving");
        moving.setWrapText(true);
        grid.getStyleClass().add("numbers");
        ColumnConstraints words = new ColumnConstraints();
        words.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().setAll(words, new ColumnConstraints());
        getChildren().addAll(head, grid, moving);
    }

    private static Label figure(String id) {
        Label label = new Label();
        label.setId(id);
        label.getStyleClass().add("figure");
        return label;
    }

    @Override
    public void renew() {
        DumpStates dump = shown.dump();
        setVisible(dump != null);
        grid.getChildren().clear();
        bearings.clear();
        if (dump == null) {
            moving.setText("");
            return;
        }
        Design design = dump.design();
        int actuators = design.drive().actuators().size();
        row(0, actuators == 1 ? "Actuator" : "Each of " + actuators + " actuators", force);
        row(1, "Pin to pin", length);
        row(2, "Lever arm", arm);
        for (int i = 0; i < design.pivot().bearings().size(); i++) {
            Label load = figure("bearing-" + (i + 1));
            bearings.add(load);
            String at = shown.show(design.pivot().bearings().get(i).z(), Kind.LENGTH);
            row(3 + i, "Bearing " + (i + 1) + " at " + at, load);
        }
    }

    private void row(int row, String words, Label value) {
        value.setMinWidth(USE_PREF_SIZE);
        grid.addRow(row, new Label(words), value);
        GridPane.setHalignment(value, javafx.geometry.HPos.RIGHT);
    }

    @Override
    public void move(MachineState now) {
        DumpStates dump = shown.dump();
        if (dump == null) {
            return;
        }
        int share = dump.design().drive().actuators().size();
        set(force, push(now.rest().force() / share));
        set(length, shown.show(now.length(), Kind.LENGTH));
        set(arm, shown.show(Math.abs(now.arm()), Kind.LENGTH));
        for (int i = 0; i < bearings.size(); i++) {
            set(bearings.get(i), shown.show(now.rest().bearings().get(i).norm(), Kind.FORCE));
        }
        set(
                moving,
                "Stopped. Going up it " + push(now.raise().force() / share) + ", coming down it "
                        + push(now.lower().force() / share) + " (friction).");
    }

    private String push(double force) {
        return (force >= 0 ? "pushes " : "pulls ") + shown.show(Math.abs(force), Kind.FORCE);
    }

    private static void set(Label label, String text) {
        if (!text.equals(label.getText())) {
            label.setText(text);
        }
    }
}
