// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;
import static tipwright.viewer.Patience.press;
import static tipwright.viewer.Patience.words;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import tipwright.viewer.OneScreen;
import tipwright.viewer.Patience;
import tipwright.viewer.Trial;
import tipwright.viewer.scene.Camera;

/** The window, used as a person would. */
@ExtendWith({OneScreen.class, ApplicationExtension.class})
@EnabledIfEnvironmentVariable(
        named = "DISPLAY",
        matches = ".+",
        disabledReason = "a window needs a display; .ci/test has one")
class WindowTest {
    private Path folder;
    private Path file;
    private Stage stage;
    private MainWindow window;

    @Start
    void start(Stage on) throws IOException {
        folder = Files.createTempDirectory("window");
        file = folder.resolve("trial.yaml");
        Files.writeString(file, Trial.text());
        open(on);
    }

    private void open(Stage on) throws IOException {
        stage = on;
        window = TrialWindow.on(on, file);
    }

    @AfterEach
    void clear() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    private static void waitFor(BooleanSupplier met) {
        Patience.waitFor(20, met);
    }

    private double degrees() {
        return Math.toDegrees(window.shown().spot().tilt());
    }

    @Test
    void opensScrubsPlaysAndShowsItsKeys(FxRobot robot) {
        opensFullAtTheWorstTiltAndTheDumpInTimeStartsFullToo(robot);
        robot.type(KeyCode.HOME);
        opensAndScrubs(robot);
        robot.type(KeyCode.HOME);
        playsAndPauses(robot);
        showsCautionsAndKeys(robot);
    }

    private void opensAndScrubs(FxRobot robot) {
        press(robot, "#at-this-tilt");
        String stowed = words(robot, "#force");
        robot.type(KeyCode.END);
        waitFor(() -> degrees() > 44.9);
        assertThat(words(robot, "#force")).isNotEqualTo(stowed);
        Node rated = robot.lookup("#rated-push").query();
        Node cursor = robot.lookup("#tilt-cursor").query();
        assertThat(cursor.getBoundsInParent().intersects(rated.getBoundsInParent()))
                .as("the cursor covers what the rated push is")
                .isFalse();
        robot.type(KeyCode.LEFT);
        waitFor(() -> degrees() < 44.5);
        Node bar = robot.lookup("#tilt-bar").query();
        Bounds at = bar.localToScreen(bar.getBoundsInLocal());
        robot.clickOn(new Point2D(at.getMinX() + at.getWidth() / 2, at.getMinY() + at.getHeight() / 2));
        waitFor(() -> degrees() > 18 && degrees() < 24);
    }

    private void opensFullAtTheWorstTiltAndTheDumpInTimeStartsFullToo(FxRobot robot) {
        assertThat(window.shown().loadCase()).isEqualTo("held");
        String worst = words(robot, "#headline");
        assertThat(worst).startsWith("Worst push 8.3 kN of 12 kN, full, outlet shut, at 0 deg");
        assertThat(words(robot, "#reading")).startsWith("0.0\u00b0: pushes 8.3");
        double full = window.shown().now().mass();
        robot.type(KeyCode.C);
        waitFor(() -> window.shown().loadCase().equals("draining"));
        robot.type(KeyCode.HOME);
        waitFor(() -> window.shown().spot().time() == 0);
        assertThat(window.shown().now().mass()).isCloseTo(full, org.assertj.core.api.Assertions.within(1e-6 * full));
        assertThat(window.shown().spot()).isEqualTo(window.shown().timeline().at(0));
        assertThat(words(robot, "#reading")).contains("0.0 s after the start");
        // a click on the headline goes back to where it is worst
        press(robot, "#headline");
        assertThat(window.shown().loadCase()).isEqualTo("held");
        assertThat(words(robot, "#headline")).isEqualTo(worst);
    }

    private void playsAndPauses(FxRobot robot) {
        robot.clickOn("#play");
        waitFor(() -> degrees() > 3 && window.transport().playing());
        robot.clickOn("#play");
        waitFor(() -> !window.transport().playing());
        assertThat(words(robot, "#told")).contains("real time");
    }

    @Test
    void dragsAPinUndoesAndRedoes(FxRobot robot) {
        robot.type(KeyCode.DIGIT2);
        press(robot, "#at-this-tilt");
        press(robot, "#places");
        String before = words(robot, "#force");
        robot.moveTo("#handle-frame-pin").press(MouseButton.PRIMARY);
        for (int i = 0; i < 6; i++) {
            robot.moveBy(-6, 3);
        }
        waitFor(() -> !words(robot, "#force").equals(before));
        robot.release(MouseButton.PRIMARY);
        waitFor(() -> window.shown().editor().unsaved());
        String typed = robot.lookup("#frame-pin-x").<TextField>query().getText();
        assertThat(typed).endsWith(" mm").isNotEqualTo("-100 mm");
        assertThat(Double.parseDouble(swap(typed, " mm", ""))).isLessThan(-100);
        robot.clickOn("#undo");
        waitFor(() -> !window.shown().editor().unsaved());
        assertThat(words(robot, "#force")).isEqualTo(before);
        robot.clickOn("#redo");
        waitFor(() -> window.shown().editor().unsaved());
        assertThat(robot.lookup("#frame-pin-x").<TextField>query().getText()).isEqualTo(typed);
    }

    @Test
    void typesInInchesSavesWithEveryCommentAndOpensAgain(FxRobot robot) throws IOException {
        press(robot, "#places");
        saysWhatIsWrongWithAnEntry(robot);
        TextField x = robot.lookup("#tank-pin-x").query();
        WaitForAsyncUtils.asyncFx(() -> {
            x.requestFocus();
            x.selectAll();
        });
        WaitForAsyncUtils.waitForFxEvents();
        robot.write("-6 1/4 in").type(KeyCode.ENTER);
        waitFor(() -> window.shown().editor().unsaved());
        robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
        waitFor(() -> !window.shown().editor().unsaved());
        assertThat(Files.readString(file)).isEqualTo(swap(Trial.text(), "[-120 mm, 230 mm]", "[-6 1/4 in, 230 mm]"));
        WaitForAsyncUtils.asyncFx(() -> {
            stage.close();
            open(new Stage());
            return null;
        });
        waitFor(() -> stage.isShowing() && window.shown().dump() != null);
        assertThat(window.shown().editor().handles().get(2).x()).isEqualTo("-6 1/4 in");
    }

    private void saysWhatIsWrongWithAnEntry(FxRobot robot) {
        TextField x = robot.lookup("#frame-pin-x").query();
        WaitForAsyncUtils.asyncFx(() -> {
            x.requestFocus();
            x.selectAll();
        });
        WaitForAsyncUtils.waitForFxEvents();
        robot.write("-90").type(KeyCode.ENTER);
        waitFor(() -> !words(robot, "#mount-wrong").isEmpty());
        assertThat(words(robot, "#mount-wrong")).contains("no unit in '-90'").contains("did you mean '-90 mm'?");
        assertThat(window.shown().editor().unsaved()).isFalse();
    }

    @Test
    void switchesUnitsAndLoadCaseAndGoesToTheGoverningTilt(FxRobot robot) {
        press(robot, "#at-this-tilt");
        robot.type(KeyCode.U);
        waitFor(() -> words(robot, "#length").endsWith(" in"));
        robot.type(KeyCode.C);
        waitFor(() -> !window.shown().loadCase().equals("held"));
        robot.type(KeyCode.END);
        waitFor(() -> window.shown().judged().checked() != null);
        press(robot, "#all-checks");
        var worst = window.shown().editor().solved().findings().stream()
                .filter(f -> f.id().equals("push"))
                .findFirst()
                .orElseThrow();
        Node push = robot.lookup("#check-push").query();
        WaitForAsyncUtils.asyncFx(push::requestFocus);
        WaitForAsyncUtils.waitForFxEvents();
        robot.type(KeyCode.ENTER);
        waitFor(() -> Math.abs(window.shown().spot().tilt() - worst.tilt()) < 1e-9);
        assertThat(window.shown().loadCase()).isEqualTo(worst.loadCase());
    }

    @Test
    void takesInAFileThatIsChangedOnTheDisk(FxRobot robot) throws IOException {
        Files.writeString(
                file,
                swap(Trial.text(), "name: Trial tank", "name: Changed tank", "tilt: {to: 45 deg}", "tilt: {to: 40}"));
        waitFor(() -> window.shown().dump() == null);
        List<String> problems = window.shown().editor().sheet().problems();
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0)).contains("trial.yaml:").contains("tilt.to").contains("no unit in '40'");
        assertThat(robot.lookup("#problems").query().isVisible()).isTrue();
        // no verdict of the design before is left standing
        assertThat(robot.lookup("#ticket").query().isVisible()).isFalse();
        Files.writeString(file, Trial.text());
        waitFor(() -> window.shown().dump() != null);
        assertThat(robot.lookup("#problems").query().isVisible()).isFalse();
    }

    @Test
    void asksBeforeItClosesOnUnsavedWorkAndKeepsItThroughACrash(FxRobot robot) throws IOException {
        robot.type(KeyCode.P);
        robot.press(KeyCode.ALT).type(KeyCode.RIGHT).release(KeyCode.ALT);
        waitFor(() -> window.shown().editor().unsaved());
        String work = window.shown().editor().sheet().text();
        WaitForAsyncUtils.asyncFx(() -> stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST)));
        waitFor(() -> robot.lookup("#banner-words").<Labeled>query().getText().contains("Unsaved changes"));
        assertThat(stage.isShowing()).isTrue();
        // as after a crash: nothing said goodbye, another window opens on the same file
        WaitForAsyncUtils.asyncFx(() -> {
            stage.hide();
            open(new Stage());
            return null;
        });
        waitFor(() -> robot.lookup("#take-up").tryQuery().isPresent());
        robot.clickOn("#take-up");
        waitFor(() -> window.shown().editor().unsaved());
        assertThat(window.shown().editor().sheet().text()).isEqualTo(work);
    }

    private void showsCautionsAndKeys(FxRobot robot) {
        assertThat(robot.lookup("#cautions").query().isVisible()).isTrue();
        robot.type(KeyCode.F1);
        waitFor(() -> robot.lookup("#keys-pane").query().isVisible());
        robot.type(KeyCode.ESCAPE);
        waitFor(() -> !robot.lookup("#keys-pane").query().isVisible());
        robot.type(KeyCode.DIGIT4);
        Camera camera = window.picture().picture().camera();
        assertThat(camera.pitch()).isGreaterThan(1.5);
    }
}
