// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.viewer.Patience.press;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import tipwright.design.tank.CaseName;
import tipwright.viewer.OneScreen;
import tipwright.viewer.Patience;

/** A tank that is poured over its rim: the window, its picture and its answer speak of no outlet, whatever load is shown. */
@ExtendWith({OneScreen.class, ApplicationExtension.class})
@EnabledIfEnvironmentVariable(
        named = "DISPLAY",
        matches = ".+",
        disabledReason = "a window needs a display; .ci/test has one")
class PouredTankTest {
    @TempDir
    static Path folder;

    private MainWindow window;

    @Start
    void start(Stage on) throws IOException {
        // few tilts and no supply, which take the same words
        window = TrialWindow.on(
                on,
                folder.resolve("barrel.yaml"),
                Files.readString(Path.of("geometry", "lime-barrel.yaml"))
                        .replaceFirst("step: 2 deg", "step: 10 deg")
                        .replaceFirst("(?m)^supply: .*\n", ""));
    }

    @Test
    void speaksOfNoOutlet(FxRobot robot) {
        Patience.waitFor(90, () -> window.shown().judged().checked() != null);
        press(robot, "#all-checks");
        for (CaseName load : List.of(CaseName.HELD, CaseName.SLID, CaseName.BRIDGED)) {
            WaitForAsyncUtils.asyncFx(() -> window.shown().setLoadCase(load.key()));
            WaitForAsyncUtils.waitForFxEvents();
            List<String> words = robot.lookup((Node n) -> true).queryAll().stream()
                    .flatMap(PouredTankTest::texts)
                    .filter(Objects::nonNull)
                    .toList();
            assertThat(words).as(load.key()).hasSizeGreaterThan(100);
            assertThat(words.stream().filter(w -> w.matches("(?is).*\\b(outlets?|doors?|gates?)\\b.*")))
                    .as(load.key())
                    .isEmpty();
        }
    }

    private static Stream<String> texts(Node node) {
        String own = node instanceof Labeled l ? l.getText() : node instanceof Text t ? t.getText() : null;
        return Stream.of(own, node.getAccessibleText(), node.getAccessibleHelp());
    }
}
