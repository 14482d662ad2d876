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
import tipwright.viewer.dump.Dump;
import tipwright.viewer.dump.Instant;
import tipwright.viewer.scene.Eye;
import tipwright.viewer.scene.Theme;

/** What is open, which load case, from where one looks, units, undo and saving. */
final class TopBar extends HBox implements Panel {
    private final Desk desk;
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

    TopBar(Desk desk, Deeds deeds) {
        this.desk = desk;
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
                desk.setLoadCase(cases.getValue());
            }
        });
        undo = button("Undo", "undo", "Ctrl+Z", deeds::undo);
        redo = button("Redo", "redo", "Ctrl+Y", deeds::redo);
        save = button("Save", "save", "Ctrl+S", deeds::save);
        units.setId("units");
        units.setOnAction(e -> deeds.units());
        theme.setId("theme");
        theme.setOnAction(e -> deeds.theme());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Label inside = new Label("Load case");
        inside.getStyleClass().add("faint");
        getChildren().addAll(name, gap, inside, cases);
        int key = 1;
        for (Eye.Place place : Eye.Place.values()) {
            String id = "from-" + place.name().toLowerCase(java.util.Locale.ROOT);
            getChildren().add(button(place.word(), id, Integer.toString(key++), () -> deeds.lookFrom(place)));
        }
        getChildren().addAll(units, theme, undo, redo, save, button("Shortcuts", "keys", "F1", deeds::keys));
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
        name.setText(desk.bench().name() + (desk.bench().unsaved() ? "  \u2022 not saved" : ""));
        undo.setDisable(!desk.bench().canUndo());
        redo.setDisable(!desk.bench().canRedo());
        save.setDisable(!desk.bench().unsaved() && desk.bench().file() != null);
        units.setText(desk.units() == UnitSystem.METRIC ? "in, lbf" : "mm, N");
        units.setMinWidth(Region.USE_PREF_SIZE);
        theme.setText(desk.theme() == Theme.DARK ? "Light" : "Dark");
        theme.setMinWidth(Region.USE_PREF_SIZE);
        Dump dump = desk.dump();
        filling = true;
        List<String> all = dump == null
                ? List.of()
                : dump.analysis().cases().stream().map(c -> c.name()).toList();
        if (!cases.getItems().equals(all)) {
            cases.getItems().setAll(all);
        }
        cases.setValue(dump == null ? null : desk.loadCase());
        filling = false;
    }

    @Override
    public void move(Instant now) {
        // nothing here moves
    }
}
