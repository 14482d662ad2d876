// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Leaving out what lies inside beforehand changes nothing: against JTS with every point. */
final class HullTest {
    @Test
    void itIsTheHullOfAllPoints() {
        Random random = new Random(11);
        for (int n = 0; n < 400; n++) {
            int count = random.nextInt(n < 100 ? 6 : 300);
            boolean net = n % 4 == 0; // many on one line, many twice
            boolean flat = n % 7 == 0;
            DoubleSupplier some = () -> net ? random.nextInt(5) * 0.25 : random.nextGaussian();
            double[] xy = new double[2 * count];
            Coordinate[] all = new Coordinate[count];
            for (int i = 0; i < count; i++) {
                xy[2 * i] = some.getAsDouble();
                xy[2 * i + 1] = flat ? 2 * xy[2 * i] : some.getAsDouble();
                all[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
            }
            Geometry expected = new ConvexHull(all, new GeometryFactory()).getConvexHull();
            Geometry found = Hull.around(xy, count);
            assertThat(found.equalsExact(expected))
                    .as("try %s: %s, not %s", n, found, expected)
                    .isTrue();
        }
    }
}
