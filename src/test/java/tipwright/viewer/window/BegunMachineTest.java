// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import tipwright.check.Checker;
import tipwright.check.rule.Verdict;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.viewer.OneScreen;
import tipwright.viewer.begin.Remembered;

/** From the start to a saved machine that passes, by keyboard and buttons alone; then what everybody needs to be able to use it. */
@ExtendWith({OneScreen.class, ApplicationExtension.class})
@EnabledIfEnvironmentVariable(
        named = "DISPLAY",
        matches = ".+",
        disabledReason = "a window needs a display; .ci/test has one")
class BegunMachineTest {
    /** A drum on a hand winch, as a tape gives it. */
    private static final List<String> DRUM = List.of(
            "Slip drum",
            "in",
            "drum",
            "1797 mm",
            "34 3/4",
            "18 ga",
            "2 in, 300 mm",
            "24 1/2 in, 3' 10 5/8\"",
            "about 25 kg",
            "1150 kg/m3",
            "35 gal",
            "27 3/16 in, 1062 mm",
            "30",
            "30 mm, 11.3 kN",
            "winch",
            "15 1/2 in, 7 ft 5 in",
            "2 in, 320 mm",
            "8 in, 1850 mm",
            "1100 lbf",
            "20 mm",
            "120 deg");

    @TempDir
    static Path folder;

    private Stage stage;

    @Start
    void start(Stage on) {
        stage = on;
        new FrontDesk(folder.resolve("unsaved")).begin(on);
        on.show();
    }

    private static void waitFor(BooleanSupplier met) {
        try {
            WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(met::getAsBoolean)
                    .get());
        } catch (TimeoutException e) {
            throw new AssertionError("did not happen within 60 s", e);
        }
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static String words(FxRobot robot, String id) {
        return robot.lookup(id).<Labeled>query().getText();
    }

    private static boolean shows(FxRobot robot, String id) {
        return robot.lookup(id).tryQuery().isPresent();
    }

    @Test
    void aMachineIsBegunAskedForJudgedAndSaved(FxRobot robot) throws Exception {
        robot.type(KeyCode.ENTER);
        waitFor(() -> shows(robot, "#ask-answer"));
        TextField answer = robot.lookup("#ask-answer").query();
        for (int i = 0; i < DRUM.size(); i++) {
            assertThat(words(robot, "#ask-number")).startsWith((i + 1) + " of ");
            if (i == 2) {
                answer(robot, answer, "rund");
                assertThat(words(robot, "#ask-wrong")).contains("did you mean 'round'?");
                assertThat(new Remembered(folder).textSize(1)).isEqualTo(1);
                robot.clickOn("#ask-back");
                answer(robot, answer, DRUM.get(1));
            }
            answer(robot, answer, DRUM.get(i));
        }
        waitFor(() -> shows(robot, "#waits") || shows(robot, "#item-push"));
        waitFor(() -> words(robot, "#verdict").startsWith("PASSES")
                || words(robot, "#verdict").startsWith("CLOSE"));
        assertThat(words(robot, "#name")).contains("Slip drum").contains("not saved");
        assertThat(words(robot, "#headline")).startsWith("Worst pull ").contains("lbf of 1100 lbf");
        assertThat(robot.lookup("#five-numbers .label").queryAll()).hasSize(12);
        assertEverybodyCanUseIt(robot);
        Path file = folder.resolve("slip-drum.yaml");
        robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
        waitFor(() -> shows(robot, "#save-to"));
        TextField to = robot.lookup("#save-to").query();
        assertThat(to.getText()).endsWith("slip-drum.yaml");
        answer(robot, to, file.toString());
        waitFor(() -> Files.exists(file));
        waitFor(() -> !words(robot, "#name").contains("not saved"));
        Reading reading = DesignFile.read(file);
        assertThat(reading).isInstanceOf(Reading.Good.class);
        assertThat(Checker.check(((Reading.Good) reading).design()).verdict()).isIn(Verdict.PASS, Verdict.CLOSE);
        robot.press(KeyCode.CONTROL).type(KeyCode.O).release(KeyCode.CONTROL);
        waitFor(() -> shows(robot, "#recent-0"));
        assertThat(words(robot, "#recent-0")).isEqualTo("slip-drum.yaml");
        waitFor(() -> words(robot, "#example-yard-tub").startsWith("Yard"));
        assertTargets(32);
        assertContrast();
    }

    private static void answer(FxRobot robot, TextField field, String text) {
        WaitForAsyncUtils.asyncFx(() -> {
            field.requestFocus();
            field.setText(text);
        });
        WaitForAsyncUtils.waitForFxEvents();
        robot.type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void assertEverybodyCanUseIt(FxRobot robot) {
        assertTargets(32);
        assertContrast();
        assertNames();
        robot.type(KeyCode.T);
        WaitForAsyncUtils.waitForFxEvents();
        assertContrast();
        for (int i = 0; i < 5; i++) {
            robot.press(KeyCode.CONTROL).type(KeyCode.PLUS).release(KeyCode.CONTROL);
        }
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(new Remembered(folder).textSize(1)).isEqualTo(1.5);
        assertTargets(48);
        assertNothingCutOff();
        robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT0).release(KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(new Remembered(folder).textSize(1)).isEqualTo(1);
        robot.type(KeyCode.F1);
        assertThat(robot.lookup("#keys-pane").query().isVisible()).isTrue();
        robot.clickOn("#part-tank");
        waitFor(() -> shows(robot, "#card-tank"));
        robot.type(KeyCode.ESCAPE);
        waitFor(() -> !shows(robot, "#card-tank"));
        assertThat(robot.lookup("#keys-pane").query().isVisible()).isTrue();
        robot.type(KeyCode.ESCAPE);
        assertThat(robot.lookup("#keys-pane").query().isVisible()).isFalse();
    }

    private List<Node> seen() {
        List<Node> all = new ArrayList<>();
        walk(stage.getScene().getRoot(), all);
        return all;
    }

    private static void walk(Node node, List<Node> all) {
        if (node.isVisible()) {
            all.add(node);
            if (node instanceof Parent parent) {
                parent.getChildrenUnmodifiable().forEach(child -> walk(child, all));
            }
        }
    }

    /** Whatever is pressed or typed into is so many pixels high and wide. */
    private void assertTargets(double least) {
        List<String> small = new ArrayList<>();
        for (Node node : seen()) {
            boolean target = node instanceof ButtonBase || node instanceof TextField || node instanceof ChoiceBox;
            if (target && (((Region) node).getHeight() < least || ((Region) node).getWidth() < least)) {
                small.add(node + " " + ((Region) node).getWidth() + " x " + ((Region) node).getHeight());
            }
        }
        assertThat(small).isEmpty();
    }

    /** Text against what is behind it. Source: WCAG 2.2, success criterion 1.4.3, 4.5 to 1. */
    private void assertContrast() {
        List<String> weak = new ArrayList<>();
        for (Node node : seen()) {
            if (node instanceof Labeled label
                    && label.getText() != null
                    && !label.getText().isEmpty()
                    && !label.isDisabled()
                    && label.getTextFill() instanceof Color ink) {
                Color behind = behind(label);
                double ratio = contrast(ink, behind);
                if (ratio < 4.5) {
                    weak.add(label.getText() + ": " + ink + " on " + behind + " " + ratio);
                }
            }
        }
        assertThat(weak).isEmpty();
    }

    private static Color behind(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at instanceof Region region && region.getBackground() != null) {
                for (var fill : region.getBackground().getFills()) {
                    if (fill.getFill() instanceof Color c && c.getOpacity() == 1) {
                        return c;
                    }
                }
            }
        }
        return Color.TRANSPARENT;
    }

    /** Source: WCAG 2.2, contrast ratio and relative luminance. */
    private static double contrast(Color a, Color b) {
        double light = Math.max(luminance(a), luminance(b));
        double dark = Math.min(luminance(a), luminance(b));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double luminance(Color c) {
        return 0.2126 * linear(c.getRed()) + 0.7152 * linear(c.getGreen()) + 0.0722 * linear(c.getBlue());
    }

    private static double linear(double v) {
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }

    /** Whatever takes the keys says what it is. */
    private void assertNames() {
        List<String> nameless = new ArrayList<>();
        for (Node node : seen()) {
            String text = node instanceof Labeled label ? label.getText() : "";
            String said = node.getAccessibleText();
            boolean named = (text != null && !text.isEmpty()) || (said != null && !said.isEmpty());
            if (node.isFocusTraversable() && !named && !(node instanceof ScrollPane) && node.getId() != null) {
                nameless.add(node.toString());
            }
        }
        assertThat(nameless).isEmpty();
    }

    /** At one and a half times the size every control is still whole, as wide as it wants to be, or lies in something that scrolls. */
    private void assertNothingCutOff() {
        List<String> cut = new ArrayList<>();
        for (Node node : seen()) {
            if (node instanceof ButtonBase button) {
                var at = button.localToScene(button.getLayoutBounds());
                boolean scrolls = false;
                for (Node up = button; up != null; up = up.getParent()) {
                    scrolls |= up instanceof ScrollPane;
                }
                boolean outside = at.getMaxX() > stage.getScene().getWidth() + 1
                        || at.getMaxY() > stage.getScene().getHeight() + 1
                        || at.getMinX() < 0;
                boolean narrow = button.getWidth() < button.prefWidth(-1) - 1 && !button.isWrapText();
                if (!scrolls && (outside || narrow)) {
                    cut.add(button.getText() + " " + at);
                }
            }
        }
        assertThat(cut).isEmpty();
    }
}
