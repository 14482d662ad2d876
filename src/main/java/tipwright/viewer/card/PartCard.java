// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import tipwright.viewer.editor.PartOfMachine;

/** The card of one part. */
public final class PartCard extends Region {
    private final Label words = new Label();
    private final PartOfMachine part;
    private final CardHost host;

    /** A card. */
    public PartCard(PartOfMachine part, CardHost host) {
        this.part = part;
        this.host = host;
        getStyleClass().add("card");
        setId("card");
        getChildren().add(words);
        refresh();
    }

    /** Shows the design as it is now. */
    public void refresh() {
        words.setText(part.word() + " of " + host.editor().name());
    }

    @Override
    protected void layoutChildren() {
        words.resizeRelocate(getInsets().getLeft(), getInsets().getTop(), words.prefWidth(-1), words.prefHeight(-1));
    }
}
