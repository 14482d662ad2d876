// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.HashMap;
import java.util.Map;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import tipwright.design.file.FieldEdit;
import tipwright.design.file.FileField;
import tipwright.design.key.NameId;

/** The kinds that a group may be of, by picture where there is one. */
final class KindTiles extends FieldRow {
    private final CardState card;
    private final Map<String, ToggleButton> tiles = new HashMap<>();

    KindTiles(CardState card, FileField of) {
        super(of.path());
        this.card = card;
        FlowPane all = new FlowPane(6, 6);
        for (String word : of.meaning().words()) {
            ToggleButton tile = new ToggleButton(NameId.words(word));
            tile.setMnemonicParsing(false);
            tile.getStyleClass().add("tile");
            tile.setGraphic(KindIcon.of(word));
            tile.setId(id("kind", of.path() + "-" + word));
            tile.setAccessibleText(of.label() + ": " + NameId.words(word));
            tile.setOnAction(e -> {
                tile.setSelected(true);
                card.setOpen(path(), true);
                if (!card.rebuild(t -> FieldEdit.choose(t, path(), word))) {
                    tile.setSelected(false);
                }
            });
            tiles.put(word, tile);
            all.getChildren().add(tile);
        }
        getChildren().addAll(all, problem());
        update(of);
    }

    @Override
    void update(FileField field) {
        tiles.forEach((word, tile) -> tile.setSelected(word.equals(field.text())));
        show(String.join("\n", card.problems(path())));
    }

    @Override
    void takeFocus() {
        tiles.values().stream()
                .filter(ToggleButton::isSelected)
                .findFirst()
                .or(() -> tiles.values().stream().findFirst())
                .ifPresent(ToggleButton::requestFocus);
    }
}
