// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import tipwright.placement.Limit;
import tipwright.placement.Pin;
import tipwright.placement.PlacementMap;
import tipwright.sheet.MapShades;
import tipwright.viewer.scene.MapInk;
import tipwright.viewer.scene.Theme;

/** What the colours and hatches of the placement map mean. */
final class MapLegend extends VBox {
    private static final int WIDE = 24;
    private static final int HIGH = 14;
    private static final double MOST = 214;

    private final Label state = new Label();

    MapLegend() {
        setId("map-legend");
        getStyleClass().add("legend");
        setMaxWidth(MOST);
        setMouseTransparent(true);
        state.setId("map-state");
        state.getStyleClass().addAll("small", "faint");
        state.setWrapText(true);
    }

    void show(Pin pin, @Nullable PlacementMap map, Theme theme) {
        Label head = new Label((pin == Pin.FRAME ? "Frame pin" : "Tank pin") + " here: how full the worst check is");
        head.getStyleClass().add("head");
        head.setWrapText(true);
        getChildren().setAll(head);
        if (map != null) {
            MapInk ink = new MapInk(theme);
            for (int band = 0; band < MapShades.WORDS.size(); band++) {
                row(ink.swatch(band, WIDE, HIGH), MapShades.WORDS.get(band));
            }
            for (Limit limit : MapShades.against(map)) {
                row(ink.swatch(limit, WIDE, HIGH), "not: " + limit.words());
            }
            if (MapShades.barred(map)) {
                row(ink.swatchBarred(WIDE, HIGH), "not: " + MapShades.OTHER);
            }
        }
        getChildren().add(state);
    }

    void tell(String words) {
        state.setText(words);
    }

    private void row(WritableImage swatch, String words) {
        Label label = new Label(words, new ImageView(swatch));
        label.getStyleClass().add("small");
        getChildren().add(new HBox(label));
    }
}
