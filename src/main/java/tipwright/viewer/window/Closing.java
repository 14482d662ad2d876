// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.function.Consumer;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import tipwright.quantity.Text;

/** Asks before unsaved work is left, by closing the window or otherwise. */
final class Closing {
    private final WindowState shown;
    private final Banner banner;
    private final Consumer<Runnable> saveAnd;

    /**
     * Listens to the window.
     *
     * @param saveAnd saves, and on success does what it is given
     */
    Closing(Stage stage, WindowState shown, Banner banner, Consumer<Runnable> saveAnd) {
        this.shown = shown;
        this.banner = banner;
        this.saveAnd = saveAnd;
        stage.setOnCloseRequest(e -> asked(e, stage));
    }

    private void asked(WindowEvent e, Stage stage) {
        if (shown.editor().unsaved()) {
            e.consume();
            ask("close", stage::close);
        } else {
            shown.editor().abandon();
        }
    }

    /** Leaves at once when nothing is unsaved; else asks first. */
    void leave(String how, Runnable then) {
        if (shown.editor().unsaved()) {
            ask(how, then);
        } else {
            then.run();
        }
    }

    private void ask(String how, Runnable then) {
        String capital = Text.capital(how);
        banner.tell(
                "close",
                "Unsaved changes.",
                new Banner.Choice("Save and " + how, "save-close", () -> saveAnd.accept(then)),
                new Banner.Choice(capital + " without saving", "lose-close", () -> {
                    shown.editor().abandon();
                    then.run();
                }),
                new Banner.Choice("Cancel", "stay", () -> {}));
    }
}
