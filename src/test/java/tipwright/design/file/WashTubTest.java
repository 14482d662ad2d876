// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tipwright.geometry.Mesh;
import tipwright.geometry.Stl;

/**
 * The mesh of the wash tub is drawn here: two rounded rectangles, joined. To write it anew: {@code mvn -q -B test -Dtest=WashTubTest
 * -Dtest.write.mesh=true}.
 */
class WashTubTest {
    private static final Path FILE = Path.of("geometry", "wash-tub.stl");
    private static final int CORNER_POINTS = 7;
    private static final int RING = 4 * CORNER_POINTS;

    @Test
    void isTheOneDrawnHere() throws IOException {
        byte[] drawn = Stl.binary(tub());
        if (Boolean.getBoolean("test.write.mesh")) {
            Files.write(FILE, drawn);
        }
        assertThat(FILE).hasBinaryContent(drawn);
    }

    /** Millimetres; the origin is under the middle of the rim, at the height of the bottom; x towards the lip, y up. */
    static Mesh tub() {
        double[] xyz = new double[3 * 2 * RING];
        ring(xyz, 0, 600, 440, 90, -160, 0);
        ring(xyz, 3 * RING, 1100, 640, 150, 0, 420);
        int[] corners = new int[3 * (2 * RING + 2 * (RING - 2))];
        int at = 0;
        for (int i = 0; i < RING; i++) {
            int j = (i + 1) % RING;
            at = triangle(corners, at, i, i + RING, j);
            at = triangle(corners, at, j, i + RING, j + RING);
        }
        for (int i = 1; i < RING - 1; i++) {
            at = triangle(corners, at, 0, i, i + 1);
            at = triangle(corners, at, RING, RING + i + 1, RING + i);
        }
        return new Mesh(xyz, corners);
    }

    /** Points round a rectangle with rounded corners in the plane of height y, from +x towards +z. */
    private static void ring(double[] xyz, int start, double length, double width, double radius, double x, double y) {
        int at = start;
        for (int corner = 0; corner < 4; corner++) {
            double cx = (corner == 0 || corner == 3 ? 1 : -1) * (length / 2 - radius);
            double cz = (corner < 2 ? 1 : -1) * (width / 2 - radius);
            for (int i = 0; i < CORNER_POINTS; i++) {
                double angle = Math.PI / 2 * (corner + i / (CORNER_POINTS - 1.0));
                xyz[at++] = x + cx + radius * Math.cos(angle);
                xyz[at++] = y;
                xyz[at++] = cz + radius * Math.sin(angle);
            }
        }
    }

    private static int triangle(int[] corners, int at, int a, int b, int c) {
        corners[at] = a;
        corners[at + 1] = b;
        corners[at + 2] = c;
        return at + 3;
    }
}
