// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;

/** Something that is shown only when it is asked for: a button, and below it what it opens, made when it is first opened. */
public final class Fold extends VBox {
    private final ToggleButton button = new ToggleButton();
    private final Supplier<Node> content;
    private String words;

    /**
     * Closed.
     *
     * @param id of the button
     * @param words what it opens: 'all checks'
     * @param content made each time it is opened
     */
    public Fold(String id, String words, Supplier<Node> content) {
        this.words = words;
        this.content = content;
        button.setId(id);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setOnAction(e -> show());
        getStyleClass().add("fold");
        getChildren().add(button);
        name();
    }

    /** Says what it opens in other words. */
    public void setWords(String other) {
        words = other;
        name();
    }

    /** Makes what it shows anew, if it is open. */
    public void renew() {
        if (button.isSelected()) {
            show();
        }
    }

    private void name() {
        button.setText((button.isSelected() ? "Hide " : "Show ") + words);
    }

    private void show() {
        name();
        if (button.isSelected()) {
            getChildren().setAll(button, content.get());
        } else {
            getChildren().setAll(button);
        }
    }
}
