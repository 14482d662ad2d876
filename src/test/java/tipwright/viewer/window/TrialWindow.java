// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.stage.Stage;
import tipwright.viewer.start.DesignName;

/** A window that a test opens on a file of its own. */
final class TrialWindow {
    private TrialWindow() {}

    /** On a file with this text. */
    static MainWindow on(Stage stage, Path file, String text) throws IOException {
        Files.writeString(file, text);
        return on(stage, file);
    }

    /** On a file that is there; unsaved work is kept beside it. */
    static MainWindow on(Stage stage, Path file) throws IOException {
        MainWindow window =
                WindowProgram.open(stage, new DesignName(file.toString(), false), file.resolveSibling("unsaved"));
        // the stage may have been another test's, and stays as low as that left it
        stage.setWidth(FirstSize.width());
        stage.setHeight(FirstSize.height());
        stage.show();
        window.picture().requestFocus();
        return window;
    }
}
