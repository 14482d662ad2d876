// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import javafx.geometry.Rectangle2D;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.Screen;

/** How large a window opens: no larger than the screen, or its top row of buttons would be out of reach. */
final class FirstSize {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;

    private FirstSize() {}

    static Scene scene(Parent root) {
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        return new Scene(root, Math.min(WIDTH, screen.getWidth()), Math.min(HEIGHT, screen.getHeight()));
    }
}
