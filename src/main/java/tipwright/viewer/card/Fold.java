// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A heading that folds what is below it away; what is below is made when it is first looked at. */
final class Fold extends VBox {
    private static final String SHUT = "\u25b8  ";
    private static final String OPEN = "\u25be  ";

    private final ToggleButton head = new ToggleButton();

    /**
     * A fold.
     *
     * @param key under which the card remembers whether it is open
     * @param usually whether it is open at first
     */
    Fold(CardState card, String key, String words, boolean usually, Supplier<Region> below) {
        head.setId(FieldRow.id("fold", key));
        head.getStyleClass().add("fold");
        head.setMaxWidth(Double.MAX_VALUE);
        head.setMnemonicParsing(false);
        getChildren().add(head);
        head.setSelected(card.isOpen(key, usually));
        show(words, below);
        head.setOnAction(e -> {
            card.setOpen(key, head.isSelected());
            show(words, below);
        });
    }

    private void show(String words, Supplier<Region> below) {
        boolean is = head.isSelected();
        head.setText((is ? OPEN : SHUT) + words);
        head.setAccessibleText(words + (is ? ", open" : ", folded"));
        if (is && getChildren().size() == 1) {
            Node made = below.get();
            made.getStyleClass().add("inner");
            getChildren().add(made);
        } else if (!is && getChildren().size() > 1) {
            getChildren().remove(1);
        }
    }
}
