// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;
import static tipwright.viewer.Patience.press;
import static tipwright.viewer.Patience.shows;
import static tipwright.viewer.Patience.words;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
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
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.viewer.OneScreen;
import tipwright.viewer.Patience;
import tipwright.viewer.Trial;

/** A machine that fails: a fix by its button, a search, an answer taken over, each change one step of undo. */
@ExtendWith({OneScreen.class, ApplicationExtension.class})
@EnabledIfEnvironmentVariable(
        named = "DISPLAY",
        matches = ".+",
        disabledReason = "a window needs a display; .ci/test has one")
class AnswerTest {
    @TempDir
    static Path folder;

    private Path file;
    private MainWindow window;

    @Start
    void start(Stage on) throws IOException {
        file = folder.resolve("trial.yaml");
        String text = swap(Trial.zonedText(), "frame-pin-joint: {diameter: 25 mm", "frame-pin-joint: {diameter: 14 mm");
        window = TrialWindow.on(on, file, text);
    }

    private static void waitFor(BooleanSupplier met) {
        Patience.waitFor(90, met);
    }

    private String text() {
        return window.shown().editor().sheet().text();
    }

    @Test
    void aFixAndASearch(FxRobot robot) throws IOException {
        String before = text();
        waitFor(() -> shows(robot, ".fix"));
        assertThat(words(robot, "#verdict")).startsWith("FAILS");
        looksForFixesOfWhatIsClose(robot);
        press(robot, ".fix");
        assertThat(text())
                .isEqualTo(swap(before, "frame-pin-joint: {diameter: 14 mm", "frame-pin-joint: {diameter: 18 mm"));
        waitFor(() -> window.shown().judged().checked() != null);
        assertThat(window.shown().judged().findings().stream()
                        .filter(f -> f.id().startsWith("pin/"))
                        .noneMatch(f -> f.verdict() == Verdict.FAIL))
                .isTrue();
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        assertThat(text()).isEqualTo(before);
        robot.press(KeyCode.CONTROL).type(KeyCode.Y).release(KeyCode.CONTROL);
        searches(robot, text());
    }

    /** While something fails, what is only close says how near it is, and its fixes are looked for when they are asked for. */
    private void looksForFixesOfWhatIsClose(FxRobot robot) {
        // among all checks, since the ticket has room for the worst alone
        press(robot, "#all-checks");
        Finding close = window.shown().judged().findings().stream()
                .filter(f -> f.verdict() == Verdict.CLOSE)
                .findFirst()
                .orElseThrow();
        String id = close.id().replace('/', '-');
        Node row = robot.lookup("#check-" + id).query();
        enter(row);
        Button look = (Button) row.lookup("#look-" + id);
        String before = text();
        WaitForAsyncUtils.asyncFx(look::fire);
        waitFor(() -> window.shown().judged().asked().contains(close.id()));
        assertThat(row.lookup("#look-" + id)).isNull();
        assertThat(row.lookupAll(".indented")).isNotEmpty();
        assertThat(window.shown().judged().verdict()).isEqualTo(Verdict.FAIL);
        assertThat(text()).isEqualTo(before);
        enter(row);
        assertThat(row.lookupAll(".indented")).isEmpty();
        press(robot, "#all-checks");
        assertThat(shows(robot, ".fix")).isTrue();
    }

    private static void enter(Node row) {
        WaitForAsyncUtils.asyncFx(() ->
                row.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, false, false)));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void searches(FxRobot robot, String before) {
        press(robot, "#search");
        Node corner = robot.lookup("#zone-frame-pin-1").query();
        robot.moveTo(corner).press(MouseButton.PRIMARY).moveBy(-10, 0).release(MouseButton.PRIMARY);
        waitFor(() -> !text().equals(before));
        assertThat(text()).contains("frame-pin: {outline: [[-3");
        String zoned = text();
        press(robot, "#search-start");
        waitFor(() -> words(robot, "#search-state").contains("best so far: "));
        press(robot, "#search-stop");
        waitFor(() -> !words(robot, "#search-state").contains(" % searched"));
        assertThat(shows(robot, "#take-1")).as(words(robot, "#search-state")).isTrue();
        assertThat(words(robot, "#search-state")).contains("best so far");
        press(robot, "#take-1");
        assertThat(text()).isNotEqualTo(zoned);
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        assertThat(text()).isEqualTo(zoned);
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        assertThat(text()).isEqualTo(before);
        robot.type(KeyCode.ESCAPE);
        assertThat(shows(robot, "#search-pane")).isFalse();
    }
}
