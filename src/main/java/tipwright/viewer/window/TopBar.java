// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.scene.Camera;
import tipwright.viewer.scene.Theme;

/** What is open, undo and saving, what else can be done with it, and how it is shown. */
final class TopBar extends FlowPane implements Panel {
    private static final String TEN = "\u2003";

    private final WindowState shown;
    private final Label name = new Label();
    private final MenuItem units = new MenuItem();
    private final MenuItem theme = new MenuItem();
    private final MenuButton view = new MenuButton("View");
    private final Button undo;
    private final Button redo;
    private final Button save;

    TopBar(WindowState shown, Actions actions) {
        this.shown = shown;
        getStyleClass().add("strip");
        setRowValignment(javafx.geometry.VPos.CENTER);
        name.setId("name");
        name.getStyleClass().add("figure");
        undo = button("Undo", "undo", "Ctrl+Z", actions::undo);
        redo = button("Redo", "redo", "Ctrl+Y", actions::redo);
        save = button("Save", "save", "Ctrl+S", actions::save);
        view.setId("view");
        view.setMinWidth(Region.USE_PREF_SIZE);
        int key = 1;
        for (Camera.Place place : Camera.Place.values()) {
            String id = "from-" + place.name().toLowerCase(java.util.Locale.ROOT);
            view.getItems()
                    .add(item("From: " + place.word(), id, Integer.toString(key++), () -> actions.lookFrom(place)));
        }
        units.setId("units");
        units.setOnAction(e -> actions.units());
        theme.setId("theme");
        theme.setOnAction(e -> actions.theme());
        view.getItems().addAll(new SeparatorMenuItem(), units, theme);
        view.getItems().add(item("Hoses and cables, or none", "hoses", "H", actions::hoses));
        view.getItems().add(item("Larger text", "text-larger", "Ctrl +", () -> actions.textSize(1)));
        view.getItems().add(item("Smaller text", "text-smaller", "Ctrl -", () -> actions.textSize(-1)));
        view.getItems().add(item("Text as usual", "text-usual", "Ctrl 0", () -> actions.textSize(0)));
        getChildren().addAll(button("Start", "begin", "Ctrl+O", actions::begin), name, undo, redo, save, view);
        getChildren().add(button("Shortcuts", "keys", "F1", actions::keys));
    }

    /** Adds a button before those that tell how it is shown. */
    void add(ButtonBase button) {
        button.setMinWidth(Region.USE_PREF_SIZE);
        getChildren().add(getChildren().indexOf(view), button);
    }

    private static MenuItem item(String words, String id, String key, Runnable deed) {
        MenuItem item = new MenuItem(words + TEN + key);
        item.setId(id);
        item.setOnAction(e -> deed.run());
        return item;
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
        units.setText((shown.units() == UnitSystem.METRIC ? "In inches and pounds" : "In millimetres and newtons") + TEN
                + "U");
        theme.setText((shown.theme() == Theme.DARK ? "Light" : "Dark") + TEN + "T");
    }

    @Override
    public void move(MachineState now) {
        // nothing here moves
    }
}
