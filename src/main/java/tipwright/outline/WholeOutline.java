// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.HashMap;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import tipwright.geometry.Mesh;

/**
 * The outline of a whole convex body in the side view, and where along the pivot axis the body has each of its corners: a slice that has a
 * part of every corner shows the same outline.
 *
 * @param area that it covers, m
 * @param corners each with where along the pivot axis the body has it, m
 */
record WholeOutline(Geometry area, Map<Coordinate, ZRange> corners) {
    private static final ZRange NOWHERE = new ZRange(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

    static WholeOutline of(Mesh mesh) {
        Geometry area = OutlineGeometry.silhouette(mesh, ZRange.ALL, true);
        Map<Coordinate, ZRange> corners = new HashMap<>();
        for (Coordinate corner : area.getCoordinates()) {
            corners.put(corner, NOWHERE);
        }
        double[] xyz = mesh.xyz();
        Coordinate at = new Coordinate();
        for (int i = 0; i < xyz.length; i += 3) {
            at.x = xyz[i];
            at.y = xyz[i + 1];
            ZRange known = corners.get(at);
            if (known != null) {
                corners.put(at, known.with(new ZRange(xyz[i + 2], xyz[i + 2])));
            }
        }
        return new WholeOutline(area, corners);
    }

    /** Whether a slice shows it whole. */
    boolean isIn(ZRange slice) {
        return corners.values().stream().allMatch(slice::overlaps);
    }
}
