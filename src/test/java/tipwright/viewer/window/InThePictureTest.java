// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;
import static tipwright.viewer.Patience.press;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import tipwright.design.NumberedPlace;
import tipwright.geometry.Vec2;
import tipwright.viewer.OneScreen;
import tipwright.viewer.Patience;

/** Zones and dimension lines for pins that are neither the pivot nor an end of the actuator: by mouse and by keyboard. */
@ExtendWith({OneScreen.class, ApplicationExtension.class})
@EnabledIfEnvironmentVariable(
        named = "DISPLAY",
        matches = ".+",
        disabledReason = "a window needs a display; .ci/test has one")
class InThePictureTest {
    @TempDir
    static Path folder;

    private MainWindow window;

    @Start
    void start(Stage on) throws IOException {
        // few tilts and no supply: the checks that follow each change beside the window are not what is looked at
        Path file = folder.resolve("knee.yaml");
        String text = Files.readString(Path.of("geometry", "knee-stand.yaml"));
        String few = swap(text, "tilt: {to: 45 deg}", "tilt: {to: 45 deg, step: 10 deg}")
                .replaceFirst("(?m)^supply: .*\n", "");
        window = TrialWindow.on(on, file, few);
    }

    private static void waitFor(BooleanSupplier met) {
        Patience.waitFor(90, met);
    }

    private String text() {
        return window.shown().editor().sheet().text();
    }

    private static String says(FxRobot robot, String id) {
        return robot.lookup(id).<Labeled>query().getText();
    }

    @Test
    void zonesAndDimensionLines(FxRobot robot) {
        zones(robot);
        robot.type(KeyCode.ESCAPE);
        assertThat(robot.lookup("#search-pane").tryQuery()).isEmpty();
        measuresByMouse(robot);
        measuresByKeyboard(robot);
    }

    private void measuresByMouse(FxRobot robot) {
        String before = text();
        robot.clickOn("#handle-foot-pin").clickOn("#measure-here");
        assertThat(middle(robot, "#measure-to-pivot").distance(middle(robot, "#handle-pivot")))
                .as("pixels between the target and the ring of the same pin")
                .isLessThan(1.5);
        robot.clickOn("#measure-to-knee");
        TextField field = robot.lookup("#dimension-foot-pin-knee").query();
        // from [300, -200] to [-390, 30] mm
        assertThat(field.getText()).isEqualTo("727.3 mm");
        robot.clickOn(field);
        WaitForAsyncUtils.asyncFx(field::selectAll);
        robot.write("700 mm").type(KeyCode.ENTER);
        waitFor(() -> !text().equals(before));
        Map<String, Vec2> now =
                window.shown().editor().solved().design().drive().places(new Vec2(0, 0));
        assertThat(now.get("foot-pin").minus(now.get("knee")).norm()).isCloseTo(0.7, within(0.0005));
        assertThat(now.get("foot-pin").minus(new Vec2(0.3, -0.2)).norm()).isLessThan(1e-6);
        robot.clickOn("#dimension-away-foot-pin-knee");
        assertThat(robot.lookup("#dimension-foot-pin-knee").tryQuery()).isEmpty();
    }

    private static Point2D middle(FxRobot robot, String id) {
        Node node = robot.lookup(id).query();
        Bounds at = node.localToScene(node.getLayoutBounds());
        return new Point2D(at.getCenterX(), at.getCenterY());
    }

    private void measuresByKeyboard(FxRobot robot) {
        WaitForAsyncUtils.asyncFx(() -> window.picture().requestFocus());
        WaitForAsyncUtils.waitForFxEvents();
        robot.type(KeyCode.H);
        assertThat(window.picture().picture().hoses()).isFalse();
        robot.type(KeyCode.D);
        assertThat(says(robot, "#measuring-hint")).startsWith("From the foot pin");
        Node first = window.picture().getScene().getFocusOwner();
        assertThat(first.getId()).isEqualTo("measure-to-datum-x-0-y-0-");
        robot.type(KeyCode.TAB);
        assertThat(window.picture().getScene().getFocusOwner().getId()).startsWith("measure-to-");
        robot.type(KeyCode.ESCAPE);
        assertThat(robot.lookup("#measuring-hint").tryQuery()).isEmpty();
        robot.type(KeyCode.D).type(KeyCode.ENTER);
        assertThat(robot.lookup("#dimension-foot-pin-datum-x-0-y-0").tryQuery()).isPresent();
    }

    private void zones(FxRobot robot) {
        String before = text();
        press(robot, "#search");
        for (NumberedPlace place : NumberedPlace.of(window.shown().dump().design())) {
            assertThat(robot.lookup("#draw-" + place.key()).tryQuery()).isPresent();
        }
        assertThat(says(robot, "#zone-of-foot-pin")).isEqualTo("foot pin: stays");
        press(robot, "#draw-foot-pin");
        robot.moveTo("#handle-foot-pin").moveBy(-30, -25).press(MouseButton.PRIMARY);
        robot.moveBy(60, 50).release(MouseButton.PRIMARY);
        waitFor(() -> text().contains("- {pin: foot-pin, zone: {outline: [[") || text().contains("{pin: foot-pin"));
        waitFor(() -> robot.lookup("#zone-foot-pin-1").tryQuery().isPresent());
        waitFor(() -> says(robot, "#zone-of-foot-pin").matches("foot pin: \\d+ x \\d+ mm"));
        String drawn = text();
        robot.moveTo("#zone-foot-pin").press(MouseButton.PRIMARY).moveBy(0, -20).release(MouseButton.PRIMARY);
        waitFor(() -> !text().equals(drawn));
        String moved = text();
        Node corner = robot.lookup("#zone-foot-pin-3").query();
        WaitForAsyncUtils.asyncFx(corner::requestFocus);
        WaitForAsyncUtils.waitForFxEvents();
        for (KeyCode way : List.of(KeyCode.RIGHT, KeyCode.UP)) {
            WaitForAsyncUtils.asyncFx(
                    () -> corner.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", way, false, false, true, false)));
        }
        waitFor(() -> !text().equals(moved));
        waitFor(() -> robot.lookup("#zone-foot-pin-3")
                .tryQuery()
                .filter(Node::isFocused)
                .isPresent());
        press(robot, "#take-out-foot-pin");
        waitFor(() -> !text().contains("pin: foot-pin, zone"));
        press(robot, "#draw-knee");
        press(robot, "#draw-knee");
        waitFor(() -> says(robot, "#zone-of-knee").equals("knee: 200 x 200 mm"));
        WaitForAsyncUtils.asyncFx(() -> {
            while (window.shown().editor().canUndo()) {
                window.shown().editor().undo();
            }
            window.shown().renew();
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(text()).isEqualTo(before);
        // the picture, and with it the list of zones, follows a change a little later
        waitFor(() -> says(robot, "#zone-of-knee").equals("knee: stays"));
    }
}
