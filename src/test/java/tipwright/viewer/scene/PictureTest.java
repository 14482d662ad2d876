// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;
import tipwright.analysis.Analyser;
import tipwright.design.key.Copy;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.OneScreen;
import tipwright.viewer.Trial;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.still.StillCamera;

/** What is drawn is where it should be: pixels at projected points, seen from the side, at three tilts. */
@ExtendWith({OneScreen.class, ApplicationExtension.class})
@EnabledIfEnvironmentVariable(
        named = "DISPLAY",
        matches = ".+",
        disabledReason = "a picture needs a display; .ci/test has one")
class PictureTest {
    private static final int WIDTH = 960;
    private static final int HEIGHT = 600;
    private static final double[] TILTS = {0, Math.toRadians(20), Math.toRadians(40)};

    private record Shot(BufferedImage image, Camera camera, MachineState now) {
        Color at(Vec3 p) {
            Vec2 pixel = camera.project(p, WIDTH, HEIGHT);
            return new Color(image.getRGB((int) Math.round(pixel.x()), (int) Math.round(pixel.y())));
        }
    }

    private static List<Shot> shots(String loadCase, Theme theme) throws Exception {
        return WaitForAsyncUtils.asyncFx(() -> {
                    StillCamera shooter = new StillCamera(
                            Trial.analysis(), loadCase, theme, UnitSystem.METRIC, Camera.Place.SIDE, WIDTH, HEIGHT);
                    List<Shot> all = new ArrayList<>();
                    for (double tilt : TILTS) {
                        BufferedImage image = shooter.shoot(tilt);
                        all.add(new Shot(
                                image,
                                shooter.picture().camera(),
                                shooter.dump().at(loadCase, tilt)));
                    }
                    return all;
                })
                .get();
    }

    /** The counterweight of the shipped design is brown where its centre is, and not where it was before the tank tipped. */
    @Test
    void counterweightTurnsWithTheTank() throws Exception {
        WaitForAsyncUtils.asyncFx(() -> {
                    StillCamera shooter = new StillCamera(
                            // nothing of the frame stands before it
                            Analyser.analyse(
                                    Copy.with(Trial.shipped("twin-rams").design(), "frame", null)),
                            "held",
                            Theme.DARK,
                            UnitSystem.METRIC,
                            Camera.Place.SIDE,
                            WIDTH,
                            HEIGHT);
                    Vec3 stowed = new Vec3(0.760, 0.300, 0.06);
                    for (double tilt : TILTS) {
                        Shot shot = new Shot(
                                shooter.shoot(tilt),
                                shooter.picture().camera(),
                                shooter.dump().at("held", tilt));
                        Vec3 now = shot.now.tank().place(stowed);
                        assertThat(hue(shot.at(now))).isBetween(10.0, 28.0);
                        assertThat(saturation(shot.at(now))).isGreaterThan(0.35);
                        if (tilt > 0) {
                            assertThat(saturation(shot.at(stowed)) > 0.35
                                            && hue(shot.at(stowed)) > 10
                                            && hue(shot.at(stowed)) < 28)
                                    .isFalse();
                        }
                    }
                    return null;
                })
                .get();
    }

    private static double hue(Color c) {
        return 360 * Color.RGBtoHSB(c.getRed(), c.getGreen(), c.getBlue(), null)[0];
    }

    private static double saturation(Color c) {
        return Color.RGBtoHSB(c.getRed(), c.getGreen(), c.getBlue(), null)[1];
    }

    private static StillCamera emptyTrailer(int width, int height) throws Exception {
        return new StillCamera(
                Trial.shipped("silt-trailer"),
                "empty",
                Theme.LIGHT,
                UnitSystem.METRIC,
                Camera.Place.CORNER,
                width,
                height);
    }

    /** The cable shows, is told as made up, and goes when it is not wanted. */
    @Test
    void cableIsShownOrNot() throws Exception {
        WaitForAsyncUtils.asyncFx(() -> {
                    StillCamera shooter = emptyTrailer(WIDTH, HEIGHT);
                    shooter.shoot(0);
                    assertThat(madeUp(shooter.picture())).contains("way of the cable");
                    shooter.picture().setHoses(false);
                    shooter.shoot(0);
                    assertThat(madeUp(shooter.picture())).doesNotContain("way of the cable");
                    shooter.picture().lettering().setVisible(false);
                    int[] bare = shooter.shoot(0).getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH);
                    shooter.picture().setHoses(true);
                    int[] cable = shooter.shoot(0).getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH);
                    assertThat(java.util.stream.IntStream.range(0, bare.length)
                                    .filter(i -> bare[i] != cable[i])
                                    .count())
                            .isBetween(20L, 5000L);
                    return null;
                })
                .get();
    }

    /** In a small picture the legend would cover the machine: what is left of it is what nobody may take for given. */
    @Test
    void legendOfASmallPictureTellsOnlyWhatIsMadeUp() throws Exception {
        WaitForAsyncUtils.asyncFx(() -> {
                    for (int height : List.of(240, 720)) {
                        StillCamera shooter = emptyTrailer(height * 4 / 3, height);
                        shooter.shoot(0);
                        String told = madeUp(shooter.picture());
                        assertThat(told.contains("centre of mass")).isEqualTo(height == 720);
                        assertThat(told.contains("actuator on tank")).isEqualTo(height == 720);
                    }
                    return null;
                })
                .get();
    }

    /** What the legend tells as made up, in one line or in two. */
    private static String madeUp(Picture picture) {
        List<String> all = picture.lettering().lookupAll("Text").stream()
                .map(n -> ((javafx.scene.text.Text) n).getText())
                .toList();
        assertThat(all).anyMatch(t -> t.contains("only drawn, not in the file"));
        return String.join("\n", all);
    }

    /** The slurry is brown, 25 to 55 degrees round the colour wheel; where there is none the see-through wall is bluish. */
    @Test
    void slurryFillsTheTankUpToItsSurface() throws Exception {
        for (Shot shot : shots("held", Theme.DARK)) {
            Vec3 normal = shot.now.fill().surface().normal();
            Vec3 middle = new Vec3(0, 640e-3, 0.2); // close behind the wall, where the camera looks along the surface
            Vec3 surface = middle.minus(normal.times(shot.now.fill().surface().height(middle)));
            Color under = shot.at(shot.now.tank().place(surface.minus(normal.times(0.08))));
            Color over = shot.at(shot.now.tank().place(surface.plus(normal.times(0.03))));
            assertThat(hue(under)).as("below the surface").isBetween(25.0, 55.0);
            assertThat(saturation(under)).isGreaterThan(0.12);
            assertThat(hue(over) > 60 || saturation(over) < 0.12)
                    .as("above the surface: " + over)
                    .isTrue();
        }
    }

    @Test
    void actuatorIsOnTheLineBetweenItsPins() throws Exception {
        for (Shot shot : shots("empty", Theme.DARK)) {
            Vec2 line = shot.now.tankPin().minus(shot.now.framePin()).unit();
            Vec2 tube = shot.now.framePin().plus(line.times(0.30));
            Color c = shot.at(new Vec3(tube.x(), tube.y(), 0));
            assertThat(hue(c)).as("tube").isBetween(30.0, 50.0);
            assertThat(saturation(c)).isGreaterThan(0.5);
        }
    }

    @Test
    void tankStandsOutFromTheGroundBehindIt() throws Exception {
        for (Theme theme : Theme.values()) {
            for (Shot shot : shots("empty", theme)) {
                Vec3 inside = shot.now.tank().place(new Vec3(-0.3, 0.85, 0));
                Vec3 outside = shot.now.tank().place(new Vec3(-0.3, 1.15, 0));
                Color wall = shot.at(inside);
                Color back = shot.at(outside);
                int apart = Math.abs(wall.getRed() - back.getRed())
                        + Math.abs(wall.getGreen() - back.getGreen())
                        + Math.abs(wall.getBlue() - back.getBlue());
                assertThat(apart).as(theme + " wall " + wall + " back " + back).isGreaterThan(24);
            }
        }
    }

    @Test
    void picturesDifferFromTiltToTilt() throws Exception {
        List<Shot> all = shots("draining", Theme.LIGHT);
        for (int i = 1; i < all.size(); i++) {
            int different = 0;
            for (int x = 0; x < WIDTH; x += 3) {
                for (int y = 0; y < HEIGHT; y += 3) {
                    different += all.get(i).image.getRGB(x, y)
                                    == all.get(i - 1).image.getRGB(x, y)
                            ? 0
                            : 1;
                }
            }
            assertThat(different).isGreaterThan(WIDTH * HEIGHT / 9 / 50);
        }
    }
}
