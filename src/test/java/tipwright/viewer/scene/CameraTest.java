// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

class CameraTest {
    private static final Vec3 LOW = new Vec3(-1, -0.5, -0.6);
    private static final Vec3 HIGH = new Vec3(2, 1.7, 0.6);

    @ParameterizedTest
    @EnumSource(Camera.Place.class)
    void fitsABoxIntoThePictureAndFillsMostOfIt(Camera.Place place) {
        Camera camera = Camera.fitting(place, LOW, HIGH, 1.6);
        double west = 1e9;
        double east = -1e9;
        double north = 1e9;
        double south = -1e9;
        for (double x : new double[] {LOW.x(), HIGH.x()}) {
            for (double y : new double[] {LOW.y(), HIGH.y()}) {
                for (double z : new double[] {LOW.z(), HIGH.z()}) {
                    Vec2 p = camera.project(new Vec3(x, y, z), 1600, 1000);
                    west = Math.min(west, p.x());
                    east = Math.max(east, p.x());
                    north = Math.min(north, p.y());
                    south = Math.max(south, p.y());
                }
            }
        }
        assertThat(west).isGreaterThan(0);
        assertThat(north).isGreaterThan(0);
        assertThat(east).isLessThan(1600);
        assertThat(south).isLessThan(1000);
        assertThat(Math.max((east - west) / 1600, (south - north) / 1000)).isBetween(0.8, 0.9);
    }

    @Test
    void fromTheSideXGoesRightAndYGoesUp() {
        Camera camera = Camera.fitting(Camera.Place.SIDE, LOW, HIGH, 1.6);
        Vec2 origin = camera.project(Vec3.ZERO, 800, 500);
        Vec2 along = camera.project(new Vec3(0.1, 0, 0), 800, 500);
        Vec2 above = camera.project(new Vec3(0, 0.1, 0), 800, 500);
        assertThat(along.x()).isGreaterThan(origin.x());
        assertThat(along.y()).isCloseTo(origin.y(), within(1e-9));
        assertThat(above.y()).isLessThan(origin.y());
    }

    @ParameterizedTest
    @EnumSource(
            value = Camera.Place.class,
            names = {"CORNER", "SIDE"})
    void findsThePointUnderTheMouseAgain(Camera.Place place) {
        Camera camera = Camera.fitting(place, LOW, HIGH, 1.6).turned(0.1, 0.05).moved(0.1, -0.07);
        Vec2 pixel = camera.project(new Vec3(0.43, 0.21, 0.35), 800, 500);
        Vec2 back = camera.onPlane(pixel, 0.35, 800, 500);
        assertThat(back.x()).isCloseTo(0.43, within(1e-9));
        assertThat(back.y()).isCloseTo(0.21, within(1e-9));
    }

    @Test
    void hidesWhatIsBehindTheEye() {
        Camera camera = new Camera(Vec3.ZERO, 0, 0, 2);
        assertThat(camera.project(new Vec3(0, 0, 3), 100, 100).x()).isNaN();
    }
}
