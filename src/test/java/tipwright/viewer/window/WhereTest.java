// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import javafx.scene.control.Labeled;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
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
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.placement.Pin;
import tipwright.placement.PlacementMap;
import tipwright.sheet.MapShades;
import tipwright.viewer.OneScreen;
import tipwright.viewer.Patience;
import tipwright.viewer.Trial;
import tipwright.viewer.scene.Picture;

/** The map of where a pin may go, in the window. */
@ExtendWith({OneScreen.class, ApplicationExtension.class})
@EnabledIfEnvironmentVariable(
        named = "DISPLAY",
        matches = ".+",
        disabledReason = "a window needs a display; .ci/test has one")
class WhereTest {
    @TempDir
    static Path folder;

    private MainWindow window;

    @Start
    void start(Stage on) throws IOException {
        window = TrialWindow.on(on, folder.resolve("zoned.yaml"), Trial.zonedText());
    }

    private static void waitFor(BooleanSupplier met) {
        Patience.waitFor(90, met);
    }

    private boolean finished() {
        return window.picture().where().finished();
    }

    private PlacementMap map() {
        return window.picture().where().map();
    }

    /** Middle of the largest cell block that fits, far from any border. */
    private static Vec2 spot(PlacementMap map, boolean fitting) {
        int around = 3;
        for (int r = around; r < map.utilisation().length - around; r++) {
            for (int c = around; c < map.utilisation()[0].length - around; c++) {
                if (same(map, r, c, around) && fitting == (MapShades.kind(map, r, c) == 0)) {
                    return map.low().plus(new Vec2((c + 0.5) * map.cell(), (r + 0.5) * map.cell()));
                }
            }
        }
        throw new AssertionError("the trial has no such spot");
    }

    private static boolean same(PlacementMap map, int row, int column, int around) {
        for (int r = row - around; r <= row + around; r++) {
            for (int c = column - around; c <= column + around; c++) {
                boolean other = MapShades.kind(map, r, c) < 0
                        || MapShades.kind(map, r, c) != MapShades.kind(map, row, column)
                        || MapShades.band(map.utilisation()[r][c]) != MapShades.band(map.utilisation()[row][column]);
                if (other) {
                    return false;
                }
            }
        }
        return true;
    }

    private Color pixel(WritableImage image, Vec2 stowed) {
        Picture picture = window.picture().picture();
        double z = window.shown().dump().design().drive().actuators().get(0).z();
        Vec2 p = picture.camera().project(new Vec3(stowed.x(), stowed.y(), z), picture.getWidth(), picture.getHeight());
        return image.getPixelReader().getColor((int) p.x(), (int) p.y());
    }

    private static double apart(Color a, Color b) {
        return Math.max(
                Math.abs(a.getRed() - b.getRed()),
                Math.max(Math.abs(a.getGreen() - b.getGreen()), Math.abs(a.getBlue() - b.getBlue())));
    }

    @Test
    void showsTheFramePinsZoneInTheColoursOfTheUtilisation(FxRobot robot) throws Exception {
        robot.type(KeyCode.M);
        waitFor(this::finished);
        assertThat(window.picture().picture().camera().yaw()).isZero();
        PlacementMap expected = PlacementMap.of(Trial.zonedDesign(), Pin.FRAME, 120);
        WritableImage image = WaitForAsyncUtils.asyncFx(() -> {
                    window.picture().picture().lettering().setVisible(false);
                    return window.picture().picture().snapshot(null, null);
                })
                .get();
        Vec2 fits = spot(expected, true);
        int row = (int) ((fits.y() - expected.low().y()) / expected.cell());
        int column = (int) ((fits.x() - expected.low().x()) / expected.cell());
        int rgb = MapShades.colour(MapShades.band(expected.utilisation()[row][column]));
        Color ramp = Color.rgb(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff);
        assertThat(apart(pixel(image, fits), ramp)).isLessThan(0.1);
        Vec2 not = spot(expected, false);
        for (int band = 0; band < MapShades.WORDS.size() - 1; band++) {
            int other = MapShades.colour(band);
            assertThat(apart(pixel(image, not), Color.rgb(other >> 16, other >> 8 & 0xff, other & 0xff)))
                    .isGreaterThan(0.1);
        }
        assertThat(robot.lookup("#map-legend").lookup("not: stroke too short").tryQuery())
                .isPresent();
        robot.clickOn("#where");
        waitFor(() -> !robot.lookup("#map-legend").query().isVisible());
    }

    /** One that knows of gaps may have come in its place meanwhile, but none for another place of the pin. */
    private static void sameQuestion(PlacementMap now, PlacementMap before) {
        assertThat(now.pin()).isEqualTo(before.pin());
        assertThat(now.drawn()).isEqualTo(before.drawn());
        assertThat(now.other()).isEqualTo(before.other());
        assertThat(now.pivot()).isEqualTo(before.pivot());
    }

    @Test
    void staysFixedUnderTheFramePinAndIsRenewedWhenSomethingElseMoves(FxRobot robot) {
        robot.clickOn("#where");
        waitFor(this::finished);
        PlacementMap before = map();
        assertThat(before.pin()).isEqualTo(Pin.FRAME);
        robot.moveTo("#handle-frame-pin").press(MouseButton.PRIMARY);
        for (int i = 0; i < 6; i++) {
            robot.moveBy(4, 2);
        }
        robot.release(MouseButton.PRIMARY);
        waitFor(() -> window.shown().editor().unsaved());
        assertThat(finished()).isTrue();
        sameQuestion(map(), before);
        robot.moveTo("#handle-tank-pin").press(MouseButton.PRIMARY);
        waitFor(() -> finished() && map().pin() == Pin.TANK);
        PlacementMap tank = map();
        for (int i = 0; i < 6; i++) {
            robot.moveBy(3, 0);
        }
        robot.release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();
        sameQuestion(map(), tank);
        // the pivot is chosen next: the frame pin's map for the tank pin's new place
        robot.type(KeyCode.P);
        waitFor(() -> finished() && map().pin() == Pin.FRAME);
        PlacementMap moved = map();
        assertThat(moved.other()).isNotEqualTo(before.other());
        robot.press(KeyCode.ALT).type(KeyCode.UP).release(KeyCode.ALT);
        waitFor(() -> finished() && map() != moved);
        assertThat(map().pivot().y()).isGreaterThan(moved.pivot().y());
    }

    @Test
    void isOfferedOnlyWhereThereAreZones(FxRobot robot) {
        assertThat(robot.lookup("#where").query().getParent().isVisible()).isTrue();
        assertThat(robot.lookup("#cautions").<Labeled>tryQuery()).isPresent();
        WaitForAsyncUtils.asyncFx(() -> {
            window.shown().editor().change(Trial.text());
            window.shown().renew();
        });
        waitFor(() -> !robot.lookup("#where").query().getParent().isVisible());
        robot.type(KeyCode.M);
        assertThat(robot.lookup("#map-legend").query().isVisible()).isFalse();
    }
}
