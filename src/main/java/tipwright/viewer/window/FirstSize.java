// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.Screen;

/**
 * How large a window opens: three quarters of the screen, or as much as it needs where that is more; no larger than the screen, or its
 * top row of buttons would be out of reach.
 */
final class FirstSize {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double SHARE = 0.75;

    private FirstSize() {}

    static double width() {
        return of(WIDTH, Screen.getPrimary().getVisualBounds().getWidth());
    }

    static double height() {
        return of(HEIGHT, Screen.getPrimary().getVisualBounds().getHeight());
    }

    private static double of(double needed, double screen) {
        return Math.min(screen, Math.max(needed, Math.rint(SHARE * screen)));
    }

    static Scene scene(Parent root) {
        return new Scene(root, width(), height());
    }
}
