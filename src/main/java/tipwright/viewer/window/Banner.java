// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** A line across the window that tells something, with what can be done about it. */
final class Banner extends HBox {
    private final Label words = new Label();
    private String about = "";

    Banner() {
        getStyleClass().add("note");
        setId("banner");
        setAlignment(Pos.CENTER_LEFT);
        words.setId("banner-words");
        words.setWrapText(true);
        words.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(words, Priority.ALWAYS);
        hide();
    }

    /** A choice on the line. */
    record Choice(String words, String id, Runnable deed) {}

    /**
     * Tells something.
     *
     * @param topic so that {@link #hide(String)} takes away this and nothing else
     */
    void tell(String topic, String text, Choice... choices) {
        about = topic;
        words.setText(text);
        getChildren().setAll(words);
        for (Choice choice : choices) {
            Button button = new Button(choice.words());
            button.setId(choice.id());
            button.setMinWidth(USE_PREF_SIZE);
            button.setOnAction(e -> {
                hide();
                choice.deed().run();
            });
            getChildren().add(button);
        }
        setVisible(true);
        setManaged(true);
    }

    void hide(String topic) {
        if (topic.equals(about)) {
            hide();
        }
    }

    private void hide() {
        about = "";
        setVisible(false);
        setManaged(false);
    }
}
