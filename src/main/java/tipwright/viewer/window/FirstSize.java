// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.Screen;

/** How large a window opens: no larger than the screen, or its top row of buttons would be out of reach. */
final class FirstSize {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;

    private FirstSize() {}

    static double width() {
        return Math.min(WIDTH, Screen.getPrimary().getVisualBounds().getWidth());
    }

    static double height() {
        return Math.min(HEIGHT, Screen.getPrimary().getVisualBounds().getHeight());
    }

    static Scene scene(Parent root) {
        return new Scene(root, width(), height());
    }
}
