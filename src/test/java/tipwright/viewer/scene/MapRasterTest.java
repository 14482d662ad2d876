// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.BodyPosition;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.placement.Pin;
import tipwright.placement.PlacementMap;
import tipwright.sheet.MapShades;
import tipwright.viewer.Trial;

/** Every pixel of a placement map in the picture is of the cell that lies behind it. */
class MapRasterTest {
    private static final double WIDE = 860;
    private static final double HIGH = 520;

    @ParameterizedTest
    @CsvSource({
        "FRAME, 0, 0, 6.5, 0, 0, 0",
        "FRAME, 0.62, 0.30, 4, 0, 0, 0",
        "FRAME, 0, 0, 1.1, 0, 0, 0",
        "TANK, 0, 0, 3.3, 0.4, 0.21, -0.1",
        "TANK, -0.5, 0.2, 3, 0.7, 0.3, 0.1"
    })
    void pixelsAreOfTheCellsBehindThem(
            Pin pin, double yaw, double pitch, double distance, double turn, double x, double y) throws Exception {
        PlacementMap map = PlacementMap.of(Trial.zonedDesign(), pin, 40);
        BodyPosition body = new BodyPosition("", new Vec2(x, y), turn);
        Vec2 middle = body.place(map.drawn());
        Camera camera = new Camera(new Vec3(middle.x(), middle.y(), 0), yaw, pitch, distance);
        MapInk ink = new MapInk(Theme.DARK);
        MapRaster raster = MapRaster.of(map, new PlaneView(camera, 0.05, body, WIDE, HIGH), ink);
        assertThat(raster).isNotNull();
        assertThat(raster.x() + raster.width() * raster.step()).isLessThanOrEqualTo((int) WIDE + 1);
        Random random = new Random(11);
        Set<Integer> kinds = new HashSet<>();
        for (int n = 0; n < 2000; n++) {
            int i = random.nextInt(raster.width());
            int j = random.nextInt(raster.height());
            int argb = raster.argb()[j * raster.width() + i];
            Vec2 pixel = new Vec2(raster.x() + (i + 0.5) * raster.step(), raster.y() + (j + 0.5) * raster.step());
            // the camera's own way back from the picture, which the raster does not use
            Vec2 stowed =
                    camera.onPlane(pixel, 0.05, WIDE, HIGH).minus(body.origin()).tilted(-turn);
            int row = (int) Math.floor((stowed.y() - map.low().y()) / map.cell());
            int column = (int) Math.floor((stowed.x() - map.low().x()) / map.cell());
            int kind = MapShades.kind(map, row, column);
            kinds.add(kind);
            if (argb != ink.line()) {
                int expected = kind < 0
                        ? 0
                        : kind == 0
                                ? ink.band(MapShades.band(map.utilisation()[row][column]))
                                : ink.hatched(kind - 1, raster.x() + i, raster.y() + j);
                assertThat(argb).as("pixel %s of %s", pixel, stowed).isEqualTo(expected);
            }
        }
        assertThat(kinds).as("what was looked at").contains(0).hasSizeGreaterThan(1);
    }
}
