// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** The convex outline around points. */
public final class Hull {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Counter-clockwise. */
    private static final double[] X = {1, 1, 0, -1, -1, -1, 0, 1};

    private static final double[] Y = {0, 1, 1, 1, 0, -1, -1, -1};

    /** Nearer than this to a side, m, a point is left to the library. */
    private static final double SAFE = 1e-9;

    private Hull() {}

    /** The corners, counter-clockwise, none on a straight side; both ends of a line, and a point, where it is only that. */
    public static List<Vec2> around(List<Vec2> points) {
        double[] xy = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = points.get(i).x();
            xy[2 * i + 1] = points.get(i).y();
        }
        Geometry hull = around(xy, points.size());
        Coordinate[] ring = hull.getCoordinates();
        List<Vec2> corners = new ArrayList<>(ring.length);
        // the ring runs clockwise and ends where it begins
        for (int i = ring.length - 1; i >= (hull.getDimension() == 2 ? 1 : 0); i--) {
            corners.add(new Vec2(ring[i].x, ring[i].y));
        }
        return corners;
    }

    /**
     * The same as a library's geometry: an area, a line or a point.
     *
     * @param xy of each point x and y, m
     * @param count of the points
     */
    public static Geometry around(double[] xy, int count) {
        return new ConvexHull(outer(xy, count), FACTORY).getConvexHull();
    }

    /** The points without those inside the eight-sided outline of the outermost in eight directions, which are no corners. */
    private static Coordinate[] outer(double[] xy, int count) {
        int[] corner = new int[8];
        double[] most = new double[8];
        Arrays.fill(most, Double.NEGATIVE_INFINITY);
        for (int i = 0; i < count; i++) {
            for (int k = 0; k < 8; k++) {
                double far = X[k] * xy[2 * i] + Y[k] * xy[2 * i + 1];
                if (far > most[k]) {
                    most[k] = far;
                    corner[k] = i;
                }
            }
        }
        List<Coordinate> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            if (!inside(xy, corner, i)) {
                all.add(new Coordinate(xy[2 * i], xy[2 * i + 1]));
            }
        }
        return all.toArray(new Coordinate[0]);
    }

    private static boolean inside(double[] xy, int[] corner, int point) {
        double px = xy[2 * point];
        double py = xy[2 * point + 1];
        boolean any = false;
        for (int k = 0; k < 8; k++) {
            int a = 2 * corner[k];
            int b = 2 * corner[(k + 1) % 8];
            if (a != b) {
                any = true;
                double left = (xy[b] - xy[a]) * (py - xy[a + 1]) - (xy[b + 1] - xy[a + 1]) * (px - xy[a]);
                if (!(left > SAFE * (Math.abs(xy[b] - xy[a]) + Math.abs(xy[b + 1] - xy[a + 1])))) {
                    return false;
                }
            }
        }
        return any;
    }
}
