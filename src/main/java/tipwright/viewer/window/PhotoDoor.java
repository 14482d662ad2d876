// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.io.File;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.stage.FileChooser;
import tipwright.viewer.card.CardHost;
import tipwright.viewer.photo.PhotoPane;

/** The button that asks for a photo of the machine's side and lays it over the picture; Esc takes it away. */
final class PhotoDoor {
    private PhotoDoor() {}

    static Button button(WindowState shown, Overlay over, CardHost host) {
        Button button = new Button("From a photo");
        button.setId("from-photo");
        button.setAccessibleText("places of the pins from a photo of the machine's side");
        button.setOnAction(e -> {
            FileChooser chooser = new FileChooser();
            chooser.setTitle("A photo of the machine's side");
            chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("Pictures", "*.png", "*.jpg", "*.jpeg"));
            File file = chooser.showOpenDialog(button.getScene().getWindow());
            if (file != null) {
                lay(shown, over, host, file);
            }
        });
        return button;
    }

    /** Lays a photo over the picture. */
    private static void lay(WindowState shown, Overlay over, CardHost host, File file) {
        PhotoPane pane = new PhotoPane(host, shown.theme());
        pane.getStyleClass().add("card");
        pane.open(file.toPath());
        over.lay(pane, Pos.CENTER, () -> {});
        pane.requestFocus();
    }
}
