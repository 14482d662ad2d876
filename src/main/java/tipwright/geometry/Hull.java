// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** The convex outline around points. */
public final class Hull {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Hull() {}

    /** The corners, counter-clockwise, none on a straight side; both ends of a line, and a point, where it is only that. */
    public static List<Vec2> around(List<Vec2> points) {
        Coordinate[] all =
                points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
        Geometry hull = new ConvexHull(all, FACTORY).getConvexHull();
        Coordinate[] ring = hull.getCoordinates();
        List<Vec2> corners = new ArrayList<>(ring.length);
        // the ring runs clockwise and ends where it begins
        for (int i = ring.length - 1; i >= (hull.getDimension() == 2 ? 1 : 0); i--) {
            corners.add(new Vec2(ring[i].x, ring[i].y));
        }
        return corners;
    }
}
