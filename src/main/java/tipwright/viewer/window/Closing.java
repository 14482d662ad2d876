// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.function.Consumer;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;

/** Asks before the window closes on unsaved work. */
final class Closing {
    private final Stage stage;
    private final WindowState shown;
    private final Banner banner;
    private final Consumer<Runnable> saveAnd;

    /**
     * Listens to the window.
     *
     * @param saveAnd saves, and on success does what it is given
     */
    Closing(Stage stage, WindowState shown, Banner banner, Consumer<Runnable> saveAnd) {
        this.stage = stage;
        this.shown = shown;
        this.banner = banner;
        this.saveAnd = saveAnd;
        stage.setOnCloseRequest(this::asked);
    }

    private void asked(WindowEvent e) {
        if (!shown.editor().unsaved()) {
            shown.editor().abandon();
            return;
        }
        e.consume();
        banner.tell(
                "close",
                "Unsaved changes.",
                new Banner.Choice("Save and close", "save-close", () -> saveAnd.accept(stage::close)),
                new Banner.Choice("Close without saving", "lose-close", () -> {
                    shown.editor().abandon();
                    stage.close();
                }),
                new Banner.Choice("Cancel", "stay", () -> {}));
    }
}
