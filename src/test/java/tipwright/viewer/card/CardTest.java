// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.image.Image;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import tipwright.viewer.OneScreen;
import tipwright.viewer.Patience;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.PartOfMachine;

/** The cards, used as a person would. */
@ExtendWith({OneScreen.class, ApplicationExtension.class})
@EnabledIfEnvironmentVariable(
        named = "DISPLAY",
        matches = ".+",
        disabledReason = "a window needs a display; .ci/test has one")
class CardTest implements CardHost {
    private final List<String> said = new ArrayList<>();
    private DesignEditor editor;
    private int changes;
    private StackPane root;
    private PartCard card;

    @Start
    void start(Stage stage) throws IOException {
        open("silt-trailer");
        root = new StackPane();
        root.setStyle("-fx-font-size: 14px;");
        stage.setScene(new Scene(root, 430, 760));
        put(PartOfMachine.TANK);
        stage.show();
    }

    private void open(String name) throws IOException {
        Path file = Path.of("geometry", name + ".yaml");
        editor = new DesignEditor(name, file, Files.readString(file), null);
    }

    private void put(PartOfMachine part) {
        card = new PartCard(part, this);
        root.getChildren().setAll(card);
    }

    private void show(PartOfMachine part) {
        onScreen(() -> put(part));
    }

    private static void onScreen(Runnable does) {
        Platform.runLater(does);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Override
    public DesignEditor editor() {
        return editor;
    }

    @Override
    public void changed() {
        changes++;
    }

    @Override
    public void measureFrom(String point) {
        said.add(point);
    }

    @Override
    public void say(String message) {
        said.add(message);
    }

    private static void waitFor(BooleanSupplier met) {
        Patience.waitFor(15, met);
    }

    private static void toView(FxRobot robot, String id) {
        Node node = robot.lookup(id).query();
        onScreen(() -> {
            for (Node up = node; up != null; up = up.getParent()) {
                if (up instanceof ScrollPane scroll) {
                    double all = scroll.getContent().getBoundsInLocal().getHeight();
                    double seen = scroll.getViewportBounds().getHeight();
                    double at = scroll.getContent()
                            .sceneToLocal(node.localToScene(node.getBoundsInLocal()))
                            .getMinY();
                    scroll.setVvalue(all <= seen ? 0 : Math.max(0, Math.min(1, (at - seen / 3) / (all - seen))));
                }
            }
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static void type(FxRobot robot, String id, String text) {
        toView(robot, id);
        robot.clickOn(id);
        robot.push(KeyCode.CONTROL, KeyCode.A);
        robot.write(text, 0);
        robot.push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static String text(FxRobot robot, String id) {
        return robot.lookup(id).<TextField>query().getText();
    }

    private static void shoot(FxRobot robot, String name) {
        String folder = System.getProperty("test.shots", "");
        if (folder.isEmpty()) {
            return;
        }
        Image seen = robot.capture(robot.window(0).getScene().getRoot()).getImage();
        int wide = (int) seen.getWidth();
        int high = (int) seen.getHeight();
        BufferedImage copy = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < wide * high; i++) {
            copy.setRGB(i % wide, i / wide, seen.getPixelReader().getArgb(i % wide, i / wide));
        }
        try {
            ImageIO.write(copy, "png", Path.of(folder, name + ".png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aTankIsChangedByItsCard(FxRobot robot) {
        shoot(robot, "tank");
        type(robot, "#field-tank-interior-diameter", "800 mm");
        assertThat(editor.solved().design().tank().interior().toString()).contains("diameter=0.8");
        assertThat(changes).isEqualTo(1);
        type(robot, "#field-tank-interior-diameter", "800 bananas");
        assertThat(changes).isEqualTo(1);
        assertThat(text(robot, "#field-tank-interior-diameter")).isEqualTo("800 bananas");
        Label wrong = robot.lookup("#wrong-tank-interior-diameter").query();
        assertThat(wrong.isVisible()).isTrue();
        assertThat(wrong.getText()).contains("bananas");
        assertThat(said).anyMatch(s -> s.contains("bananas"));
        shoot(robot, "refused");
        robot.push(KeyCode.ESCAPE);
        assertThat(text(robot, "#field-tank-interior-diameter")).isEqualTo("800 mm");
        assertThat(wrong.isVisible()).isFalse();
        robot.push(KeyCode.CONTROL, KeyCode.A);
        robot.write("820 mm", 0);
        // one Tab whatever the machine has to do besides: a robot's key is held, and would repeat
        onScreen(() -> Event.fireEvent(
                root.getScene().getFocusOwner(),
                new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, false, false, false, false)));
        waitFor(() -> changes == 2);
        waitFor(() -> "field-tank-interior-length"
                .equals(root.getScene().getFocusOwner().getId()));
        editor.undo();
        onScreen(card::refresh);
        assertThat(text(robot, "#field-tank-interior-diameter")).isEqualTo("800 mm");
        toView(robot, "#kind-tank-interior-box");
        robot.clickOn("#kind-tank-interior-box");
        assertThat(editor.sheet().text()).contains("shape: box, centre");
        assertThat(editor.lastGood()).isNotNull();
        shoot(robot, "box");
        type(robot, "#field-tank-interior-size-x", "1200 mm");
        type(robot, "#field-tank-interior-size-y", "700 mm");
        type(robot, "#field-tank-interior-size-z", "700 mm");
        shoot(robot, "boxed");
        assertThat(editor.wrong().keySet()).containsExactly("tank.openings[1].centre");
        everythingIsNamedAndLargeEnough(robot);
    }

    private static void everythingIsNamedAndLargeEnough(FxRobot robot) {
        for (Node node :
                robot.lookup(n -> n.isVisible() && n.getScene() != null).queryAll()) {
            boolean field = node instanceof TextField && !(node.getParent() instanceof ComboBoxBase);
            if (field || node instanceof ComboBoxBase || node instanceof ButtonBase) {
                boolean bar =
                        node.getStyleClass().stream().anyMatch(c -> c.contains("arrow") || c.contains("increment"));
                assertThat(bar || node.getBoundsInLocal().getHeight() >= 32)
                        .as(node + " is high enough")
                        .isTrue();
                boolean named = node.getAccessibleText() != null
                        || (node instanceof ButtonBase b && !b.getText().isEmpty());
                assertThat(named).as(node + " has a name").isTrue();
            }
        }
    }

    @Test
    void everyPartHasACardAndSomeAreUsed(FxRobot robot) throws IOException {
        for (PartOfMachine part : PartOfMachine.values()) {
            show(part);
            shoot(robot, "card-" + part.name().toLowerCase(java.util.Locale.ROOT));
            assertThat(robot.lookup(".fold").queryAll()).isNotEmpty();
            everythingIsNamedAndLargeEnough(robot);
        }
        show(PartOfMachine.FRAME);
        onScreen(() -> assertThat(card.goTo("frame.members[3].outline[1].x")).isTrue());
        shoot(robot, "goto");
        assertThat(robot.lookup("#field-frame-members-3-outline-1-x").query().isFocused())
                .isTrue();
        toView(robot, "#outline-frame-members-3-outline");
        shoot(robot, "outline");
        String before = editor.sheet().text();
        robot.moveTo("#corner-frame-members-3-outline-2").press(MouseButton.PRIMARY);
        for (int i = 0; i < 4; i++) {
            robot.moveBy(5, 0);
        }
        robot.release(MouseButton.PRIMARY);
        waitFor(() -> !editor.sheet().text().equals(before));
        assertThat(editor.sheet().text().lines().count())
                .isEqualTo(before.lines().count());
        toView(robot, "#outline-frame-members-3-outline");
        robot.clickOn("#corner-frame-members-3-outline");
        waitFor(() -> editor.fields().find("frame.members[3].outline").inner().size() == 5);
        toView(robot, "#outline-frame-members-3-outline");
        robot.clickOn("#corner-frame-members-3-outline-5");
        shoot(robot, "corner");
        robot.push(KeyCode.DELETE);
        waitFor(() -> editor.fields().find("frame.members[3].outline").inner().size() == 4);
        onScreen(() -> {
            editor.undo();
            editor.undo();
            editor.undo();
        });
        assertThat(editor.sheet().text()).isEqualTo(before);
        measured(robot);
        show(PartOfMachine.ACTUATOR);
        onScreen(() -> card.goTo("drive.straight.actuators[1].actuator"));
        toView(robot, "#which-drive-straight-actuators-1-actuator");
        robot.clickOn("#which-drive-straight-actuators-1-actuator");
        waitFor(() -> robot.lookup("#take-mid-12").tryQuery().isPresent());
        toView(robot, "#take-mid-12");
        shoot(robot, "parts");
        robot.clickOn("#take-mid-12");
        waitFor(() -> editor.sheet().text().contains("actuator: mid-12}"));
    }

    /** A dimension line from pivot to tank pin, whose number is typed. */
    private void measured(FxRobot robot) {
        onScreen(() -> {
            DimensionOverlay overlay =
                    new DimensionOverlay(this, p -> new Point2D(300 + 250 * p.x(), 400 - 250 * p.y()));
            DimensionPicker picker = new DimensionPicker(this, overlay);
            root.getChildren().setAll(overlay, new VBox(picker));
            root.getChildren().get(1).setPickOnBounds(false);
            picker.lookupAll(".combo-box").stream().map(n -> (ComboBox<?>) n).forEach(box -> box.getSelectionModel()
                    .select(box.getId().equals("measure-from") ? 1 : 3));
        });
        robot.clickOn("#measure");
        waitFor(() -> robot.lookup("#dimension-pivot-tank-pin").tryQuery().isPresent());
        assertThat(text(robot, "#dimension-pivot-tank-pin")).startsWith("682").endsWith("mm");
        robot.clickOn("#dimension-pivot-tank-pin").push(KeyCode.CONTROL, KeyCode.A);
        robot.write("690 mm", 0);
        shoot(robot, "dimension");
        robot.push(KeyCode.ENTER);
        waitFor(() -> !editor.sheet().text().contains("tank-pin: [-70 mm"));
        assertThat(text(robot, "#dimension-pivot-tank-pin")).isEqualTo("690 mm");
        onScreen(() -> editor.undo());
        assertThat(editor.sheet().text()).contains("tank-pin: [-70 mm, 250 mm]");
    }
}
