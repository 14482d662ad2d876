// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.image.ImageView;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.OneScreen;
import tipwright.viewer.Trial;
import tipwright.viewer.card.CardHost;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.Handle;
import tipwright.viewer.scene.Camera;
import tipwright.viewer.scene.Theme;
import tipwright.viewer.still.StillCamera;

/** A picture of the demo out of our own scene, taken for a photo: four corners and three pins tapped with the mouse. */
@ExtendWith({OneScreen.class, ApplicationExtension.class})
@EnabledIfEnvironmentVariable(
        named = "DISPLAY",
        matches = ".+",
        disabledReason = "a window needs a display; .ci/test has one")
class PhotoPaneTest implements CardHost {
    // as wide for its height as makes the scene's lens a phone's
    private static final int WIDTH = 1500;
    private static final int HEIGHT = 500;
    private static final KnownSheet PLYWOOD = new KnownSheet(new Vec2(-1.25, -0.65), 2.44, 1.22);

    @TempDir
    Path folder;

    private final List<String> said = new ArrayList<>();
    private DesignEditor editor;
    private int changes;
    private PhotoPane pane;

    @Start
    void start(Stage stage) throws Exception {
        Path file = Path.of("geometry", "silt-trailer.yaml");
        editor = new DesignEditor("silt-trailer", file, Files.readString(file), null);
        pane = new PhotoPane(this, Theme.LIGHT);
        stage.setScene(new Scene(pane, 1260, 600));
        stage.show();
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

    /** What stands in the fields at first is in the design's units. */
    @Test
    void aDesignInInchesIsAskedAboutInInches(FxRobot robot) throws Exception {
        editor = new DesignEditor("yard-tub", null, Files.readString(Path.of("geometry", "yard-tub.yaml")), null);
        WaitForAsyncUtils.asyncFx(() -> {
                    Scene scene = pane.getScene();
                    scene.setRoot(new PhotoPane(this, Theme.LIGHT));
                    scene.getRoot().applyCss();
                    scene.getRoot().layout();
                    return scene;
                })
                .get();
        for (String field :
                List.of("#photo-width", "#photo-height", "#photo-corner-x", "#photo-before", "#photo-sure")) {
            TextField shown = robot.lookup(field).query();
            assertThat(shown.getText()).as(field).endsWith(" in");
        }
    }

    private Camera photo(Path to) throws Exception {
        return WaitForAsyncUtils.asyncFx(() -> {
                    StillCamera still = new StillCamera(
                            Trial.shipped("silt-trailer"),
                            "empty",
                            Theme.LIGHT,
                            UnitSystem.METRIC,
                            Camera.Place.SIDE,
                            WIDTH,
                            HEIGHT);
                    still.picture().setCamera(still.picture().camera().turned(0.28, 0.16));
                    ImageIO.write(still.shoot(0), "png", to.toFile());
                    return still.picture().camera();
                })
                .get();
    }

    private static void tap(FxRobot robot, Vec2 pixel) {
        ImageView photo = robot.lookup("#photo").query();
        Bounds shown = photo.getBoundsInLocal();
        double scale = shown.getWidth() / WIDTH;
        Point2D at = photo.localToScreen(pixel.x() * scale, pixel.y() * scale);
        robot.clickOn(at);
    }

    @Test
    void pinsOfAPictureAreFoundAndWrittenDownInOneStep(FxRobot robot) throws Exception {
        Path picture = folder.resolve("side.png");
        Camera camera = photo(picture);
        String before = editor.sheet().text();
        robot.interact(() -> {
            ((TextField) robot.lookup("#photo-corner-x").query()).setText("-1250 mm");
            ((TextField) robot.lookup("#photo-corner-y").query()).setText("-650 mm");
            pane.open(picture);
        });
        assertThat(next(robot)).contains("lower corner away from the dump side");
        for (Vec2 corner : PLYWOOD.corners()) {
            tap(robot, camera.project(new Vec3(corner.x(), corner.y(), 0), WIDTH, HEIGHT));
        }
        assertThat(next(robot)).contains("middle of the pin");
        Map<String, Double> stand = Map.of("pivot", 0.45, "frame pin", 0.0, "tank pin", 0.0);
        List<Handle> handles = editor.handles();
        for (Handle handle : handles) {
            double z = stand.get(handle.label());
            robot.interact(() -> ((TextField) robot.lookup("#photo-before").query()).setText(z + " m"));
            tap(robot, camera.project(new Vec3(handle.at().x(), handle.at().y(), z), WIDTH, HEIGHT));
        }
        String shot = System.getProperty("test.pictures");
        if (shot != null) {
            ImageIO.write(robot.capture(pane).getImage() == null ? null : java(robot), "png", new File(shot));
        }
        assertThat(((Label) robot.lookup("#photo-results").query()).getText())
                .contains("pivot: x", "frame pin: x", "tank pin: x", " mm +- ");
        robot.clickOn("#photo-write");
        assertThat(said).last().asString().contains("undo");
        assertThat(changes).isEqualTo(1);
        assertThat(editor.sheet().text()).contains(" mm +- ");
        for (Handle handle : handles) {
            Handle now = editor.handles().stream()
                    .filter(h -> h.label().equals(handle.label()))
                    .findFirst()
                    .orElseThrow();
            assertThat(now.at().minus(handle.at()).norm()).as(handle.label()).isLessThan(0.02);
        }
        robot.interact(editor::undo);
        assertThat(editor.sheet().text()).isEqualTo(before);
        // what is no picture is said
        robot.interact(() -> pane.open(Path.of("geometry", "silt-trailer.yaml")));
        assertThat(said).last().asString().contains("cannot be read as a picture");
    }

    private static java.awt.image.BufferedImage java(FxRobot robot) {
        var image = robot.capture(robot.lookup("#photo-pane").queryParent()).getImage();
        int w = (int) image.getWidth();
        int h = (int) image.getHeight();
        int[] pixels = new int[w * h];
        image.getPixelReader().getPixels(0, 0, w, h, javafx.scene.image.PixelFormat.getIntArgbInstance(), pixels, 0, w);
        java.awt.image.BufferedImage out = new java.awt.image.BufferedImage(w, h, 1);
        out.setRGB(0, 0, w, h, pixels, 0, w);
        return out;
    }

    private static String next(FxRobot robot) {
        return ((Label) robot.lookup("#photo-next").query()).getText();
    }
}
