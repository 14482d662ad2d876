// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** Waits for what a window works out beside itself, presses its buttons and reads what it shows. */
public final class Patience {
    private Patience() {}

    /** Waits until something holds on the window's thread, and for what is still to be drawn then. */
    public static void waitFor(int seconds, BooleanSupplier met) {
        try {
            WaitForAsyncUtils.waitFor(seconds, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(met::getAsBoolean)
                    .get());
        } catch (TimeoutException e) {
            throw new AssertionError("did not happen within " + seconds + " s", e);
        }
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Presses a button, wherever it is. */
    public static void press(FxRobot robot, String id) {
        ButtonBase button = robot.lookup(id).query();
        WaitForAsyncUtils.asyncFx(button::fire);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** What stands on a control. */
    public static String words(FxRobot robot, String id) {
        return robot.lookup(id).<Labeled>query().getText();
    }

    /** Whether something is in the window. */
    public static boolean shows(FxRobot robot, String id) {
        return robot.lookup(id).tryQuery().isPresent();
    }
}
