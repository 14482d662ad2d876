// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.util.StringConverter;
import tipwright.design.tank.CaseName;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.scene.Camera;
import tipwright.viewer.scene.Theme;

/** What is open, which load case, from where one looks, units, undo and saving. */
final class TopBar extends HBox implements Panel {
    private final WindowState shown;
    private final Label name = new Label();
    /** Load cases by what a person calls them. */
    private static final StringConverter<String> SHOWN = new StringConverter<>() {
        @Override
        public String toString(String name) {
            return name == null ? "" : CaseName.shown(name);
        }

        @Override
        public String fromString(String shown) {
            return shown;
        }
    };

    private final ChoiceBox<String> cases = new ChoiceBox<>();
    private final Button units = new Button();
    private final Button theme = new Button();
    private final Button undo;
    private final Button redo;
    private final Button save;
    private boolean filling;

    TopBar(WindowState shown, Actions actions) {
        this.shown = shown;
        getStyleClass().add("strip");
        setSpacing(8);
        setAlignment(Pos.CENTER_LEFT);
        name.setId("name");
        name.getStyleClass().add("figure");
        name.setMinWidth(60);
        cases.setId("case");
        cases.setConverter(SHOWN);
        cases.setAccessibleText("load case");
        cases.setOnAction(e -> {
            if (!filling && cases.getValue() != null) {
                shown.setLoadCase(cases.getValue());
            }
        });
        undo = button("Undo", "undo", "Ctrl+Z", actions::undo);
        redo = button("Redo", "redo", "Ctrl+Y", actions::redo);
        save = button("Save", "save", "Ctrl+S", actions::save);
        units.setId("units");
        units.setOnAction(e -> actions.units());
        theme.setId("theme");
        theme.setOnAction(e -> actions.theme());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Label inside = new Label("Load case");
        inside.getStyleClass().add("faint");
        getChildren().addAll(name, gap, inside, cases);
        int key = 1;
        for (Camera.Place place : Camera.Place.values()) {
            String id = "from-" + place.name().toLowerCase(java.util.Locale.ROOT);
            getChildren().add(button(place.word(), id, Integer.toString(key++), () -> actions.lookFrom(place)));
        }
        getChildren().addAll(units, theme, undo, redo, save, button("Shortcuts", "keys", "F1", actions::keys));
    }

    private static Button button(String words, String id, String key, Runnable deed) {
        Button button = new Button(words);
        button.setId(id);
        button.setTooltip(new Tooltip(words + " (" + key + ")"));
        button.setOnAction(e -> deed.run());
        button.setMinWidth(Region.USE_PREF_SIZE);
        return button;
    }

    @Override
    public void renew() {
        name.setText(shown.editor().name() + (shown.editor().unsaved() ? "  \u2022 not saved" : ""));
        undo.setDisable(!shown.editor().canUndo());
        redo.setDisable(!shown.editor().canRedo());
        save.setDisable(!shown.editor().unsaved() && shown.editor().file() != null);
        units.setText(shown.units() == UnitSystem.METRIC ? "in, lbf" : "mm, N");
        units.setMinWidth(Region.USE_PREF_SIZE);
        theme.setText(shown.theme() == Theme.DARK ? "Light" : "Dark");
        theme.setMinWidth(Region.USE_PREF_SIZE);
        DumpStates dump = shown.dump();
        filling = true;
        List<String> all = dump == null
                ? List.of()
                : dump.analysis().cases().stream().map(c -> c.name()).toList();
        if (!cases.getItems().equals(all)) {
            cases.getItems().setAll(all);
        }
        cases.setValue(dump == null ? null : shown.loadCase());
        filling = false;
    }

    @Override
    public void move(MachineState now) {
        // nothing here moves
    }
}
