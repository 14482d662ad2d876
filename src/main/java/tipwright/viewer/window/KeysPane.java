// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tipwright.report.Cautions;

/** What the keys do, and the cautions; over the picture until a key or a click takes it away. */
final class KeysPane extends StackPane {
    private static final String[][] KEYS = {
        {"Space", "play or pause"},
        {"Left, Right", "one degree back or on; with Shift five"},
        {"Home, End", "stowed, full tilt"},
        {"Comma, Period", "play slower, faster"},
        {"C", "next load case"},
        {"U", "millimetres or inches"},
        {"1 2 3 4", "look from a corner, the side, the dump end, above"},
        {"H", "hoses and cables in the picture or not"},
        {"F", "fit everything into the picture"},
        {"Plus, Minus", "zoom in, zoom out"},
        {"Ctrl + arrows", "turn the view"},
        {"P", "choose the next pin"},
        {"Alt + arrows", "move the chosen pin, zone or corner by 1 mm (1/16 in); with Shift ten times that"},
        {"D", "measure from the chosen pin: Tab to another point, Enter"},
        {"M", "show where the frame pin, or the tank pin when chosen, may go"},
        {"Ctrl + Z, Ctrl + Y", "undo, redo"},
        {"Ctrl + S", "save"},
        {"Ctrl + O", "start: new, open, examples"},
        {"Ctrl + Plus, Minus, 0", "larger text, smaller, as usual"},
        {"Esc", "close what was opened last"},
        {"T", "dark or light"},
        {"Tab, Enter", "through fields and checks; Enter on a check goes to its worst tilt"},
    };

    KeysPane() {
        setId("keys-pane");
        setVisible(false);
        setMinHeight(0);
        managedProperty().bind(visibleProperty());
        GridPane grid = new GridPane();
        grid.getStyleClass().add("numbers");
        for (int i = 0; i < KEYS.length; i++) {
            Label key = new Label(KEYS[i][0]);
            key.getStyleClass().add("head");
            grid.addRow(i, key, new Label(KEYS[i][1]));
        }
        VBox cautions = new VBox();
        for (String caution : Cautions.all()) {
            Label line = new Label(caution);
            line.getStyleClass().add("small");
            line.setWrapText(true);
            cautions.getChildren().add(line);
        }
        VBox card = new VBox(grid, cautions);
        card.getStyleClass().add("card");
        ScrollPane scroll = new ScrollPane(card);
        scroll.setFitToWidth(true);
        scroll.setMaxHeight(Region.USE_PREF_SIZE);
        setAlignment(Pos.CENTER);
        getChildren().add(scroll);
    }
}
